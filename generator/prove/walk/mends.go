package walk

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/diagram"
)

// mend is what to do about what was found at one link by one rule: what to
// write, where that is plain, else what the rule says.
func (w *walk) mend(group []*issue) finding.Words {
	if mend := mends[group[0].rule]; mend != nil {
		if words := mend(w, group); !words.IsZero() {
			return words
		}
	}
	return finding.Say(group[0].rule.Mend)
}

// mends are what to write about what a rule finds; none where only the writer
// knows.
var mends = map[*rule]func(*walk, []*issue) finding.Words{
	&ProofWithoutMeasure:     first((*walk).mendProof),
	&TesterNotProved:         first((*walk).mendTester),
	&NotReleased:             first((*walk).mendRelease),
	&EnergyOrder:             first((*walk).mendOrder),
	&LiveWork:                (*walk).mendLive,
	&GuardOffLive:            (*walk).mendGuard,
	&LiveTest:                first((*walk).mendTest),
	&RestoredWhileOpen:       (*walk).mendOpen,
	&RefitOverOpen:           (*walk).mendCovered,
	&NotReachable:            (*walk).mendInTheWay,
	&RemovedTwice:            first((*walk).mendTwice),
	&RefitNotRemoved:         first((*walk).mendTwice),
	&ActOrder:                (*walk).mendAct,
	&ReverseRule:             (*walk).mendReverse,
	&StateMismatch:           first((*walk).mendMismatch),
	&LeftIsolated:            (*walk).mendLeft,
	&LeftOff:                 (*walk).mendLeft,
	&LeftLoose:               (*walk).mendLeft,
	&LeftInPlace:             (*walk).mendLeft,
	&LeftAltered:             (*walk).mendLeft,
	&LeftLow:                 (*walk).mendLeft,
	&NotBled:                 (*walk).mendLeft,
	&NotMarked:               first((*walk).mendUnmarked),
	&NotCapped:               (*walk).mendUncapped,
	&LeakLookWhileWet:        first((*walk).mendWet),
	&LeakLookWithoutPressure: first((*walk).mendUnpressed),
	&BadPause:                (*walk).mendPause,
	&DeadBranch:              first((*walk).mendBranch),
	&NotAsked:                first((*walk).mendAsked),
	&WaitTooShort:            first((*walk).mendWait),
	&WaitShortOfLimit:        first((*walk).mendWait),
}

// first is a mend that looks at the first thing that was found.
func first(mend func(*walk, *issue) finding.Words) func(*walk, []*issue) finding.Words {
	return func(w *walk, group []*issue) finding.Words { return mend(w, group[0]) }
}

// writeBefore says what to write in a step before the one that was found.
func writeBefore(links ...finding.Words) finding.Words {
	if len(links) == 0 || len(links) > mostLinks {
		return finding.Words{}
	}
	return finding.Say("write %s in a step before this", finding.ListOf(" and ", links))
}

// mostLinks is how many links a mend spells out.
const mostLinks = 4

// behindStep says behind which step the one that was found belongs; nothing where
// there is none.
func behindStep(s *model.Step) finding.Words {
	if s == nil {
		return finding.Words{}
	}
	return finding.Say("move this step behind step %s", s.Number)
}

// laterStep is the first step behind an issue with a link of the procedure that
// does something; nil where none does, or where that one may be left out: nothing
// waits for a step that is not always done.
func (w *walk) laterStep(i *issue, does func(*model.Link) bool) *model.Step {
	for _, s := range w.p.Steps {
		for _, l := range s.Links {
			if l.At.Start > i.at.link.At.Start && s != i.at.step && !l.Bad && does(l) {
				return alwaysBeside(i.at.step, s)
			}
		}
	}
	return nil
}

// alwaysBeside is a step that is done wherever another one is; nil where a hold or a
// choice that the other does not hang on may leave it out.
func alwaysBeside(one, s *model.Step) *model.Step {
	shared := map[*model.Step]bool{}
	for ; one != nil; one = one.Parent {
		shared[one] = true
	}
	for at := s; at != nil && !shared[at]; at = at.Parent {
		if slices.ContainsFunc(at.Links, func(l *model.Link) bool { return l.Kind.Branches || l.Is(model.LinkOptional) }) {
			return nil
		}
	}
	return s
}

// actLater is the first step behind an issue that does something to its thing;
// nil where another act takes the thing the other way before that.
func (w *walk) actLater(i *issue, act model.Act) *model.Step {
	away := []model.Act{model.Restore, model.TestLive, model.Unlock}
	if act == model.Unlock || act == model.Restore {
		away = []model.Act{model.Isolate, model.Lock}
	}
	moves := func(l *model.Link) bool {
		if l.Kind.Act == model.Prove {
			return l.To == w.lay.things[i.thing].named
		}
		return l.To != nil && slices.Contains(w.lay.moving(l.To), i.thing)
	}
	s := w.laterStep(i, func(l *model.Link) bool {
		return (l.Kind.Act == act || slices.Contains(away, l.Kind.Act)) && moves(l)
	})
	if s == nil || !slices.ContainsFunc(s.Links, func(l *model.Link) bool { return l.Kind.Act == act && moves(l) }) {
		return nil
	}
	return s
}

// standing is how the thing of an issue stands.
func (w *walk) standing(i *issue) diagram.Func {
	return w.Value(i.state, w.Witness(w.And(i.where, w.all())))
}

// idOf is the id of a thing, as its file has it.
func (w *walk) idOf(x thing) string { return w.lay.things[x].named.Base().ID }

// stood is the format's word for how the thing of an issue stands; what is capped
// is off there.
func (w *walk) stood(i *issue) string {
	s, f := w.lay.things[i.thing].sort, w.standing(i)
	if s == aPart && f == capped {
		f = off
	}
	return word(s, f)
}

// mendMismatch says which word would be true, at expects or at leaves.
func (w *walk) mendMismatch(i *issue) finding.Words {
	if i.from != nil {
		return finding.Words{}
	}
	named := w.lay.things[i.thing].named
	is := w.stood(i)
	if named == nil || is == "" {
		return finding.Words{}
	}
	id := named.Base().ID
	if i.at.link.Kind == nil { // at a line of leaves
		if is == word(w.lay.things[i.thing].sort, 0) { // how all is that leaves does not name
			return finding.Say("bring it there with links in the steps, or take %s out of leaves", id)
		}
		return finding.Say("bring it there with links in the steps, or write %s: %s in leaves", id, is)
	}
	callee, isCall := i.at.link.To.(*model.Procedure)
	if !isCall {
		return finding.Words{}
	}
	if e, energy := named.(*model.Energy); energy && len(e.Points) > 0 && e.Points[0].To != nil && (is == "dead" || is == "released") {
		p := e.Points[0].To
		stands := "isolated"
		if p.Padlocked() {
			stands = "locked"
		}
		return finding.Say("write %s: %s in expects of %s in place of %s: its point stands so whatever was done since", p.ID, stands, callee.ID, id)
	}
	if w.standing(i) == 0 { // how a procedure finds what expects does not name
		return finding.Say("bring it there in a step before, or take %s out of expects of %s", id, callee.ID)
	}
	return finding.Say("bring it there in a step before, or write %s: %s in expects of %s", id, is, callee.ID)
}
