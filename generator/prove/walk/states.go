package walk

import "baybinder/generator/prove/diagram"

// The states of things. 0 is the normal one of every sort.
const (
	live     diagram.Func = 0 // energies and points
	isolated diagram.Func = 1
	locked   diagram.Func = 2
	released diagram.Func = 3
	dead     diagram.Func = 4
	early    diagram.Func = 5 // live, and the release is done already
	blocked  diagram.Func = 6 // isolated, not yet locked, and the release is done already

	on     diagram.Func = 0 // parts
	off    diagram.Func = 1
	capped diagram.Func = 2

	tight diagram.Func = 0 // fasteners
	loose diagram.Func = 1

	full    diagram.Func = 0 // fluids
	low     diagram.Func = 1
	unbled  diagram.Func = 2
	drained diagram.Func = 3 // low, and its whole amount is missing

	idle diagram.Func = 0 // groups unmarked, spills dry, gaps closed, tools cleared, settings as set
	set  diagram.Func = 1

	unknown diagram.Func = 7 // of every sort: what led here could not be read
)

func states(of ...diagram.Func) diagram.Set {
	var s diagram.Set
	for _, f := range of {
		s |= 1 << f
	}
	return s
}

// move is the map that takes what is in the set to a state and leaves the rest.
func move(to diagram.Func, from ...diagram.Func) diagram.Map {
	m := diagram.Map{0, 1, 2, 3, 4, 5, 6, 7}
	for _, f := range from {
		m[f] = to
	}
	return m
}

var (
	lowStates    = states(low, drained)
	offStates    = states(off, capped)
	notLive      = states(isolated, locked, released, dead, blocked)
	notDead      = states(live, isolated, locked, released, early, blocked)
	notLocked    = states(live, isolated, early, blocked)
	liveStates   = states(live, early)
	lockedStates = states(locked)
)
