package jotting

// Document is a text parted into what a procedure has.
type Document struct {
	Title  string
	Intro  []Piece // a toolbox among them
	Phases []*Phase
}

// Phase is a heading with its steps.
type Phase struct {
	Title string // "" where the text has no heading
	Line  int
	Prose []Piece
	Steps []*Step
}

// Step is one item of a list, or a line of a text that has none.
type Step struct {
	Pieces []Piece
	Subs   []*Step
}

// Piece is a line of the text without its marker.
type Piece struct {
	Text    string
	Line    int // from 0
	Bullet  bool
	Toolbox bool   // an entry of a list of tools
	Apart   bool   // a paragraph of its own
	Signal  string // the signal word that stood in front of it
	Reading
}

// Pieces are all lines that the document has, in reading order.
func (d *Document) Pieces(yield func(*Piece) bool) {
	each := func(list []Piece) bool {
		for i := range list {
			if !yield(&list[i]) {
				return false
			}
		}
		return true
	}
	var steps func([]*Step) bool
	steps = func(list []*Step) bool {
		for _, s := range list {
			if !each(s.Pieces) || !steps(s.Subs) {
				return false
			}
		}
		return true
	}
	if !each(d.Intro) {
		return
	}
	for _, ph := range d.Phases {
		if !each(ph.Prose) || !steps(ph.Steps) {
			return
		}
	}
}
