package walk

// The states of things. 0 is the normal one of every sort.
const (
	live     fn = 0 // energies and points
	isolated fn = 1
	locked   fn = 2
	released fn = 3
	dead     fn = 4
	early    fn = 5 // live, and the release is done already
	blocked  fn = 6 // isolated, not yet locked, and the release is done already

	on     fn = 0 // parts
	off    fn = 1
	capped fn = 2

	tight fn = 0 // fasteners
	loose fn = 1

	full    fn = 0 // fluids
	low     fn = 1
	unbled  fn = 2
	drained fn = 3 // low, and its whole amount is missing

	idle fn = 0 // groups unmarked, spills dry, gaps closed, tools cleared, settings as set
	set  fn = 1

	unknown fn = 7 // of every sort: what led here could not be read
)

// among is a set of states.
type among uint8

func states(of ...fn) among {
	var s among
	for _, f := range of {
		s |= 1 << f
	}
	return s
}

func (s among) has(f fn) bool { return s>>f&1 == 1 }

// is says yes where a state is one of the set.
func (t *table) is(f fn, s among) fn {
	return t.apply(f, func(f fn) fn {
		if s.has(f) {
			return yes
		}
		return no
	})
}

// moves maps states to the states that an act takes them to.
type moves [maxKids]fn

// move is the map that takes what is in the set to a state and leaves the rest.
func move(to fn, from ...fn) moves {
	m := moves{0, 1, 2, 3, 4, 5, 6, 7}
	for _, f := range from {
		m[f] = to
	}
	return m
}

func (m moves) and(to fn, from ...fn) moves {
	for _, f := range from {
		m[f] = to
	}
	return m
}

// after is a state after an act.
func (t *table) after(f fn, m moves) fn {
	return t.apply(f, func(f fn) fn { return m[f] })
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
