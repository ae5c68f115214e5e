package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// effect is what the walk does with an act.
type effect struct {
	does  func(w *walk, l *model.Link, g diagram.Func) // follows the act, where its link and conditions could be read
	moves []sort                                       // what it may have moved where they could not
}

// What acts may move.
var (
	movesEnergy   = []sort{anEnergy, aPoint}
	movesPart     = []sort{aPart, aFastening, aFluid, aSpill, aGap, anAsked}
	movesFastener = []sort{aFastening, aFastener, anAsked}
	movesTool     = []sort{aTool, anEnergy}
	movesSetting  = []sort{aSetting}
	movesFluid    = []sort{aFluid, aSpill}
	movesRefit    = []sort{aPart, aFastening, aFastener, aTool, anEnergy, aSetting, aGap}
)

// effectOf is the table of effects: a row an act. An act without a row moves
// everything, is not counted as checked, and fails a test. (A call is followed
// with its conditions: see walk.call.)
func effectOf(a model.Act) effect {
	switch a {
	case model.Isolate:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.isolate(w.aimed(l, g)) }, movesEnergy}
	case model.Lock:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.lock(w.aimed(l, g)); w.notices() }, movesEnergy}
	case model.Release:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.release(w.aimed(l, g).energy, g) }, movesEnergy}
	case model.Prove:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.prove(w.aimed(l, g).energy, g, w.here.step) }, movesEnergy}
	case model.Unlock:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.unlock(w.aimed(l, g)) }, movesEnergy}
	case model.Restore:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.restore(w.aimed(l, g)) }, movesEnergy}
	case model.TestLive:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.testLive(w.aimed(l, g)) }, movesEnergy}
	case model.Remove:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.remove(l.To.(*model.Part), g, false) }, movesPart}
	case model.Renew:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.remove(l.To.(*model.Part), g, true) }, movesPart}
	case model.Refit:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.refit(l.To.(*model.Part), g, nil, nil) }, movesPart}
	case model.Cap:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.capLine(l.To.(*model.Part), g) }, movesPart}
	case model.Loosen:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.loosen(l, l.To.(*model.Fastener), g) }, movesFastener}
	case model.Tighten:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.tighten(l, l.To.(*model.Fastener), g) }, movesFastener}
	case model.Mark:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.mark(l.To.(*model.Group), g) }, []sort{aGroup}}
	case model.Place:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.place(l.To.(*model.Tool), g) }, movesTool}
	case model.Clear:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.clear(l.To.(*model.Tool), g) }, movesTool}
	case model.Alter:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.alter(l.To.(*model.Setting), g) }, movesSetting}
	case model.Reset:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.reset(l.To.(*model.Setting), g) }, movesSetting}
	case model.Drain:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.drain(l.To.(*model.Fluid), g) }, movesFluid}
	case model.Fill:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.fill(l.To.(*model.Fluid), g) }, movesFluid}
	case model.Bleed:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.bleed(l.To.(*model.Fluid), g) }, movesFluid}
	case model.Dry:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.dry(l.To.(*model.Fluid), g) }, movesFluid}
	case model.Reverse:
		return effect{func(w *walk, l *model.Link, g diagram.Func) { w.reverse(l, w.here.step, g) }, movesRefit}
	case model.NoAct, model.Call:
	}
	return effect{moves: everySort}
}

// aimed is what an energy act names.
func (w *walk) aimed(l *model.Link, g diagram.Func) aim { return w.aim(l.To, g) }
