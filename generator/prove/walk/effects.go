package walk

import (
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// effect is what the walk does with an act. Each has a file of its own,
// act_NAME.go, by the name of its link kind.
type effect interface {
	// does follows the act, where its link and its conditions could be read.
	does(w *walk, l *model.Link, g diagram.Func)
	// moves is what the act may have moved where they could not.
	moves() []sort
}

// effects is the table: a row an act. An act without one moves everything, is
// not counted as checked, and fails a test. (A call is followed with its
// conditions: see walk.call.)
var effects = map[model.Act]effect{
	model.Isolate:  isolating{},
	model.Lock:     locking{},
	model.Release:  releasing{},
	model.Prove:    proving{},
	model.Unlock:   unlocking{},
	model.Restore:  restoring{},
	model.TestLive: testingLive{},
	model.Remove:   removing{},
	model.Renew:    renewing{},
	model.Refit:    refitting{},
	model.Cap:      capping{},
	model.Loosen:   loosening{},
	model.Tighten:  tightening{},
	model.Mark:     marking{},
	model.Place:    placing{},
	model.Clear:    clearing{},
	model.Alter:    altering{},
	model.Reset:    resetting{},
	model.Drain:    draining{},
	model.Fill:     filling{},
	model.Bleed:    bleeding{},
	model.Dry:      drying{},
	model.Reverse:  reversing{},
}

// mayMove is what an act may have moved that could not be followed.
func mayMove(a model.Act) []sort {
	if e := effects[a]; e != nil {
		return e.moves()
	}
	return everySort
}

// What the acts on things of one sort may move.
type (
	onEnergy   struct{}
	onPart     struct{}
	onFastener struct{}
	onTool     struct{}
	onSetting  struct{}
	onFluid    struct{}
	onRefit    struct{}
)

func (onEnergy) moves() []sort   { return []sort{anEnergy, aPoint} }
func (onPart) moves() []sort     { return []sort{aPart, aFastening, aFluid, aSpill, aGap, anAsked} }
func (onFastener) moves() []sort { return []sort{aFastening, aFastener, anAsked} }
func (onTool) moves() []sort     { return []sort{aTool, anEnergy} }
func (onSetting) moves() []sort  { return []sort{aSetting} }
func (onFluid) moves() []sort    { return []sort{aFluid, aSpill} }
func (onRefit) moves() []sort {
	return []sort{aPart, aFastening, aFastener, aTool, anEnergy, aSetting, aGap}
}

// aimed is what an energy act names.
func (w *walk) aimed(l *model.Link, g diagram.Func) aim { return w.aim(l.To, g) }
