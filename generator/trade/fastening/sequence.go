package fastening

// Star is the order in which n fasteners, equally spaced round a circle, are
// tightened across it: places counted from 0 in the direction of the clock.
//
// An even number goes in opposite pairs, and the pairs in the star of half as
// many; an odd number steps by just under half a turn. Five go 0 2 4 1 3, eight
// 0 4 2 6 1 5 3 7. Each comes once, and from five on none is beside the one
// before. Source: star or criss-cross and never a circle, and the pairs of four
// and six nuts, by three owners' manuals; the numbered order is derived.
func Star(n int) []int {
	if n <= 0 {
		return nil
	}
	if n%2 == 1 {
		return steps(n, max(1, (n-1)/2))
	}
	order := make([]int, 0, n)
	for _, place := range Star(n / 2) {
		order = append(order, place, place+n/2)
	}
	return order
}

// steps goes round n places by a step that has no divisor in common with n.
func steps(n, step int) []int {
	order := make([]int, n)
	for i := range order {
		order[i] = i * step % n
	}
	return order
}

// Spiral is the order in which fasteners in rows and columns, as on a cylinder
// head, are tightened from the middle outwards: places counted from 0 along
// the rows, so that place r·columns + c is in row r and column c.
//
// Each comes once, and none before all that are nearer to the middle by a whole
// ring. Source: common practice for heads, no source; where the maker numbers
// the order, that order is written out and this one is not used.
func Spiral(rows, columns int) []int {
	if rows <= 0 || columns <= 0 {
		return nil
	}
	s := spiral{rows: rows, columns: columns, r: (rows - 1) / 2, c: (columns - 1) / 2, right: 1}
	s.visit()
	for arm := 1; len(s.order) < rows*columns; arm++ {
		s.run(arm)
		s.run(arm)
	}
	return s.order
}

// spiral walks a square spiral, and notes the places that are on the grid.
type spiral struct {
	rows, columns int
	r, c          int
	down, right   int // the direction
	order         []int
}

func (s *spiral) visit() {
	if s.r >= 0 && s.r < s.rows && s.c >= 0 && s.c < s.columns {
		s.order = append(s.order, s.r*s.columns+s.c)
	}
}

// run goes a number of places straight on, and turns.
func (s *spiral) run(places int) {
	for range places {
		s.r, s.c = s.r+s.down, s.c+s.right
		s.visit()
	}
	s.down, s.right = s.right, -s.down
}
