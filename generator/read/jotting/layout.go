package jotting

import (
	"slices"
	"strings"

	"baybinder/generator/read/syntax"
)

// Lay parts a text, and reads its steps. r may be nil: then no words are links.
func Lay(text string, r *Reader) *Document {
	l := &layout{reader: r, lines: classify(text), out: &Document{}}
	l.marked = slices.ContainsFunc(l.lines, func(x row) bool { return x.kind == numbered || x.kind == bullet && !x.boxed })
	l.title()
	for l.i < len(l.lines) {
		l.line(l.lines[l.i])
		l.i++
	}
	l.settleSignals()
	l.read()
	return l.out
}

// layout is a text on its way to a document.
type layout struct {
	reader  *Reader
	lines   []row
	i       int
	marked  bool // it has a list: lines without a marker are no steps
	out     *Document
	phase   *Phase
	step    *Step
	depth   int     // of the step
	apart   bool    // an empty line stands in front
	signals []Piece // that belong to the next step
	open    bool    // the last of them goes on
}

// title takes the first line, where it is one.
func (l *layout) title() {
	for l.i < len(l.lines) && l.lines[l.i].kind == blank {
		l.i++
	}
	if l.i == len(l.lines) {
		return
	}
	first := l.lines[l.i]
	alone := l.i+1 < len(l.lines) && l.lines[l.i+1].kind == blank
	switch {
	case first.kind == heading && !isToolbox(first.text):
		if !first.hash && !alone && !strings.HasSuffix(first.text, ":") && l.i+1 < len(l.lines) && l.lines[l.i+1].kind == numbered {
			return // it is the heading of those steps
		}
	case first.kind != words, len(strings.Fields(first.text)) > 12:
		return
	case !alone && (l.ordersSomething(first.text) || strings.HasSuffix(first.text, ".")):
		return
	}
	l.out.Title = strings.TrimRight(first.text, ".: ")
	l.i++
}

// ordersSomething says that a line has an act; nothing is remembered of it.
func (l *layout) ordersSomething(text string) bool {
	if l.reader == nil {
		return false
	}
	r := *l.reader
	return slices.ContainsFunc(r.Step(text, nil).Links, func(x Link) bool { return x.Act })
}

func (l *layout) line(x row) {
	switch {
	case x.kind == blank:
		l.apart, l.open = true, false
		return
	case x.kind == heading:
		l.begin(x)
	case x.boxed || x.kind == cells:
		l.prose(x)
	case x.kind == signal:
		l.signal(x)
	case x.kind == numbered, x.kind == bullet && l.isStep(x), x.kind == words && !l.marked && !l.open:
		l.newStep(x)
	default:
		l.more(x)
	}
	l.apart = false
}

// begin begins a phase. A heading that leads to no step is words.
func (l *layout) begin(x row) {
	l.open = false
	title := strings.TrimRight(x.text, ": ")
	if isToolbox(x.text) || !l.leadsToStep() {
		x.kind = words
		if l.phase == nil {
			l.out.Intro = append(l.out.Intro, Piece{Text: x.text, Line: x.n, Apart: true})
			return
		}
	}
	l.phase, l.step = &Phase{Title: title, Line: x.n}, nil
	l.out.Phases = append(l.out.Phases, l.phase)
}

// leadsToStep says that a step stands before the next heading.
func (l *layout) leadsToStep() bool {
	for _, x := range l.lines[l.i+1:] {
		switch {
		case x.kind == heading:
			return false
		case x.kind == numbered, x.kind == bullet && !x.boxed, x.kind == words && !l.marked:
			return true
		}
	}
	return false
}

// isStep says that a bullet is a step and no part of one.
func (l *layout) isStep(x row) bool {
	return l.step == nil || l.depth == 0 && x.indent == 0
}

func (l *layout) newStep(x row) {
	if l.phase == nil {
		l.phase = &Phase{}
		l.out.Phases = append(l.out.Phases, l.phase)
	}
	for _, text := range l.parts(x) {
		s := &Step{Pieces: append(l.signals, Piece{Text: text, Line: x.n})}
		l.signals, l.open = nil, false
		if parent := l.parent(x); parent != nil {
			parent.Subs = append(parent.Subs, s)
		} else {
			l.phase.Steps = append(l.phase.Steps, s)
			l.depth = x.depth
		}
		l.step = s
	}
}

// parts are the sentences of a line of a text that has no list: each is a step.
func (l *layout) parts(x row) []string {
	if l.marked {
		return []string{x.text}
	}
	var out []string
	begin := 0
	for i, w := range tokens(x.text, nil) {
		if i > 0 && w.stop == sentenceEnd {
			out = append(out, strings.TrimSpace(x.text[begin:w.start]))
			begin = w.start
		}
	}
	return append(out, strings.TrimSpace(x.text[begin:]))
}

// parent is the step that a numbered line stands below.
func (l *layout) parent(x row) *Step {
	if x.kind != numbered || l.step == nil || len(l.phase.Steps) == 0 || x.depth <= l.depth {
		return nil
	}
	return l.phase.Steps[len(l.phase.Steps)-1]
}

// more adds a line to the step, or to what stands before the steps.
func (l *layout) more(x row) {
	p := Piece{Text: x.text, Line: x.n, Bullet: x.kind == bullet, Apart: l.apart}
	switch {
	case l.open:
		last := &l.signals[len(l.signals)-1]
		last.Text = strings.TrimSpace(last.Text + " " + p.Text)
	case l.step != nil:
		l.step.Pieces = append(l.step.Pieces, p)
	default:
		l.prose(x)
	}
}

func (l *layout) prose(x row) {
	p := Piece{Text: x.text, Line: x.n, Bullet: x.kind == bullet, Apart: l.apart, Toolbox: x.boxed && !ruled.MatchString(x.text)}
	if l.phase == nil {
		l.out.Intro = append(l.out.Intro, p)
		return
	}
	if l.step != nil && !x.boxed {
		l.step.Pieces = append(l.step.Pieces, p)
		return
	}
	l.phase.Prose = append(l.phase.Prose, p)
}

// signal keeps a warning for the step that it stands before; one that is
// indented stands in its step.
func (l *layout) signal(x row) {
	p := Piece{Text: x.text, Line: x.n, Apart: true, Signal: x.word}
	if l.step != nil && x.indent > 0 {
		l.step.Pieces = append(l.step.Pieces, p)
		return
	}
	l.signals, l.open = append(l.signals, p), x.text == ""
}

// settleSignals gives what stood behind the last step to that step.
func (l *layout) settleSignals() {
	switch {
	case len(l.signals) == 0:
	case l.step != nil:
		l.step.Pieces = append(l.step.Pieces, l.signals...)
	default:
		l.out.Intro = append(l.out.Intro, l.signals...)
	}
}

// read recognises what the pieces say.
func (l *layout) read() {
	if l.reader == nil {
		return
	}
	for i := range l.out.Intro {
		l.readThings(&l.out.Intro[i])
	}
	for _, ph := range l.out.Phases {
		for i := range ph.Prose {
			l.readThings(&ph.Prose[i])
		}
		l.readSteps(ph.Steps)
	}
}

// readThings recognises what a list of tools names; prose stays words.
func (l *layout) readThings(p *Piece) {
	if p.Toolbox {
		r := *l.reader
		p.Links = slices.DeleteFunc(r.Step(p.Text, nil).Links, func(x Link) bool { return x.Act })
	}
}

func (l *layout) readSteps(steps []*Step) {
	for _, s := range steps {
		l.reader.Begin()
		for i := range s.Pieces {
			if p := &s.Pieces[i]; p.Signal == "" {
				p.Reading = l.reader.Read(p.Text, Quoted(p.Text))
				l.reversal(p)
			}
		}
		l.readSteps(s.Subs)
	}
}

// reversal offers the refit of the last phase before this one that took
// anything off.
func (l *layout) reversal(p *Piece) {
	small := plain(p.Text)
	for _, phrase := range l.reader.tongue.Jotted.Reverse {
		at := strings.Index(small, plain(phrase))
		if at < 0 || len(small) != len(p.Text) {
			continue
		}
		if id := l.strips(p); id != "" {
			p.Offers = append(p.Offers, Offer{at, at + len(plain(phrase)), []string{"reverse:" + id}, Reversal})
		}
		return
	}
}

// strips is the id of the last phase in front of a piece in which parts come
// off.
func (l *layout) strips(before *Piece) string {
	id := ""
	for _, ph := range l.out.Phases {
		off := false
		done := false
		one := &Document{Phases: []*Phase{ph}}
		for p := range one.Pieces {
			done = done || p == before
			off = off || slices.ContainsFunc(p.Links, func(x Link) bool { return x.Kind == "remove" || x.Kind == "disconnect" || x.Kind == "renew" })
		}
		if done {
			return id
		}
		if off && ph.Title != "" {
			id = syntax.PhaseID(ph.Title)
		}
	}
	return id
}
