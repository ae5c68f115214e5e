package readings

import (
	"bytes"
	"crypto/sha256"
	"fmt"
	"html"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/show/page"
	"baybinder/generator/show/procedure"
	"baybinder/generator/trade/fastening"
)

// Exercise is a procedure with its order, torques and signal words left out, or
// the same sheet with them filled in: the answers stand where the blanks are.
type Exercise struct {
	page.Frame
	Training  *words.Readings
	Answers   bool
	Mark      string // what stands on each printed page
	Procedure page.Link
	Other     page.Link // the answers, or the sheet
	Plate     []string
	Code      page.Code
	Phases    []ExercisePhase
}

// ExercisePhase is a phase with its steps in a wrong order.
type ExercisePhase struct {
	Title page.HTML
	When  string
	Lead  page.HTML
	Words []WordAsked
	Steps []ExerciseStep
}

// ExerciseStep is a step of the sheet.
type ExerciseStep struct {
	Ordered bool   // its place in the order is asked for
	Place   string // the answer; "" on the sheet
	When    []string
	Words   []WordAsked
	Text    []page.HTML
	Facts   []page.HTML
	Subs    []ExerciseStep
}

// WordAsked asks for the signal word of the caution before a step.
type WordAsked struct {
	Hazards string
	Word    string // the answer; "" on the sheet
}

// ExercisePage is the path of a procedure's blank-out sheet.
func ExercisePage(p *model.Procedure) string { return "exercises/" + p.ID + ".html" }

// AnswersPage is the path of its answers. An id holds no dot, so no sheet has
// that name.
func AnswersPage(p *model.Procedure) string { return "exercises/" + p.ID + ".answers.html" }

// Exercise makes the blank-out sheet of a procedure, or its answers.
func (r *Readings) Exercise(p *model.Procedure, answers bool) *Exercise {
	w := r.words
	here, title, mark, other := ExercisePage(p), w.ExerciseTitle, w.ExerciseMark, page.Link{Name: w.Answers, Address: AnswersPage(p)}
	if answers {
		here, title, mark, other = AnswersPage(p), w.AnswersTitle, w.AnswersMark, page.Link{Name: w.Exercise, Address: ExercisePage(p)}
	}
	v := &Exercise{
		Frame: r.frame(here, fmt.Sprintf(title, p.Label())), Training: w, Answers: answers, Mark: mark, Plate: r.Plate(p), Code: r.Code(p),
	}
	other.Address = v.Up + other.Address
	v.Other, v.Procedure = other, r.Link(v.Up, p)
	x := exercise{r.Pages, p, answers, r.TightAlready(p)}
	for _, phase := range p.Phases {
		if len(phase.Steps) > 0 {
			v.Phases = append(v.Phases, x.phase(phase))
		}
	}
	return v
}

// exercise makes the parts of one sheet.
type exercise struct {
	*procedure.Pages
	p       *model.Procedure
	answers bool
	again   map[*model.Link]bool // links that tighten what is tight already
}

func (x *exercise) phase(phase *model.Phase) ExercisePhase {
	v := ExercisePhase{Title: x.text(&phase.Title, nil)}
	if phase.Lead != nil {
		v.Lead = x.text(phase.Lead, []quantity.Dimension{quantity.Torque})
		v.When = page.Joined(x.Conditions(x.p, phase.Lead.Links))
		v.Words = x.asked(procedure.HazardsOf(x.p, phase.Lead.Links))
	}
	var steps []ExerciseStep
	for i, st := range phase.Steps {
		steps = append(steps, x.placed(x.step(st), i, len(phase.Steps)))
	}
	v.Steps = shuffled(steps, x.p.ID+"\n"+phase.ID)
	return v
}

// placed asks for a step's place, where there is more than one.
func (x *exercise) placed(st ExerciseStep, i, n int) ExerciseStep {
	st.Ordered = n > 1
	if x.answers {
		st.Place = strconv.Itoa(i + 1)
	}
	return st
}

func (x *exercise) step(st *model.Step) ExerciseStep {
	v := ExerciseStep{When: x.Conditions(x.p, st.Links), Words: x.asked(procedure.HazardsBefore(st))}
	left := leftOut(st)
	for i := range st.Blocks {
		b := &st.Blocks[i]
		text := x.text(b, left)
		if b.Role != model.Said || page.Blank(text) {
			continue
		}
		if b.Para {
			text = "<p>" + text + "</p>"
		}
		v.Text = append(v.Text, text)
	}
	for _, l := range st.Links {
		x.link(&v, st, l)
	}
	for _, sub := range st.Subs {
		v.Subs = append(v.Subs, x.step(sub))
	}
	return v
}

// leftOut is what is left out of a step's words: torques, and the angles of a
// fastener that is tightened by stages.
func leftOut(st *model.Step) []quantity.Dimension {
	out := []quantity.Dimension{quantity.Torque}
	for _, l := range st.Links {
		if f, is := l.To.(*model.Fastener); is && len(f.Stages) > 0 {
			return append(out, quantity.Angle)
		}
	}
	return out
}

// link brings what a link makes of its step besides words.
func (x *exercise) link(v *ExerciseStep, st *model.Step, l *model.Link) {
	switch to := l.To.(type) {
	case *model.Hold:
		if l.Kind.Stops {
			v.Facts = append(v.Facts, page.Escaped(x.HoldView(to).Title))
		}
	case *model.Fastener:
		if l.Kind.Act == model.Tighten {
			v.Facts = append(v.Facts, x.tightness(to.Label(), fastening.Asked(to, x.again[l]))...)
		}
	}
	if l.Kind.Act != model.Reverse || l.Phase() == nil {
		return
	}
	v.Facts = append(v.Facts, page.Escaped(x.Reverse(l)))
	back := x.Walks.Of(st.Of).Reversal(l)
	if back == nil {
		return
	}
	var subs []ExerciseStep
	for i := range back.Steps {
		subs = append(subs, x.placed(x.derived(&back.Steps[i]), i, len(back.Steps)))
	}
	v.Subs = append(v.Subs, shuffled(subs, x.p.ID+"\n"+st.Number)...)
}

// derived is a step of the refit that follows from the strip.
func (x *exercise) derived(d *walk.Derived) ExerciseStep {
	v := ExerciseStep{Words: x.asked(procedure.HazardsOf(x.p, d.From.Links)), Text: []page.HTML{"<p>" + page.Escaped(x.Undoing(d)) + "</p>"}}
	if d.When != "" {
		v.When = []string{d.When}
	}
	if d.Capped {
		v.Facts = append(v.Facts, page.Escaped(x.Uncap(x.p, d)))
	}
	for _, f := range d.Fasteners {
		name := f.Label()
		if f.Count > 0 {
			name = strconv.Itoa(f.Count) + " × " + name
		}
		if d.Begun {
			v.Facts = append(v.Facts, page.Escaped(name+": "+x.Words.BeginByHand))
			continue
		}
		v.Facts = append(v.Facts, x.tightness(name, f.Fastener)...)
	}
	return v
}

// tightness asks for a fastener's torque, or for each of its stages.
func (x *exercise) tightness(name string, f *model.Fastener) []page.HTML {
	var out []page.HTML
	for i, stage := range f.Stages {
		out = append(out, page.Escaped(name+", "+strconv.Itoa(i+1)+": ")+" "+x.gap(x.Both(stage)))
	}
	if len(f.Stages) == 0 && !f.Torque.IsZero() {
		out = append(out, page.Escaped(name+":")+" "+x.gap(x.BothLimit(f.Torque)))
	}
	return out
}

// gap is a blank, or what belongs there.
func (x *exercise) gap(answer string) page.HTML {
	if x.answers {
		return `<b class="answer">` + page.Escaped(answer) + `</b>`
	}
	return `<span class="blank"></span>`
}

// asked asks for the signal word of each box that the page shows.
func (x *exercise) asked(hazards []*model.Hazard) []WordAsked {
	var out []WordAsked
	for _, b := range x.Boxes("", hazards) {
		var names []string
		for i := range b.Messages {
			names = append(names, b.Messages[i].Name)
		}
		v := WordAsked{Hazards: page.Joined(names)}
		if x.answers {
			v.Word = b.Word
		}
		out = append(out, v)
	}
	return out
}

// text is a block without links and pictures, and with a gap for each amount of
// the dimensions that are left out. The name of a tool keeps its range.
func (x *exercise) text(b *model.Block, left []quantity.Dimension) page.HTML {
	var out strings.Builder
	for i, part := range b.Parts {
		out.WriteString(x.gaps(part, left))
		if i >= len(b.Links) {
			continue
		}
		l := b.Links[i]
		said := l.HTML()
		if said == "" {
			said = html.EscapeString(x.RegisterWords(l))
		}
		switch {
		case l.Kind == model.PictureLink:
		case l.Is(model.LinkTool):
			out.WriteString(said)
		default:
			out.WriteString(x.gaps(said, left))
		}
	}
	return page.HTML(strings.TrimSpace(out.String()))
}

// gaps puts gaps into the text of a piece of HTML, between its tags.
func (x *exercise) gaps(markup string, left []quantity.Dimension) string {
	var out strings.Builder
	for r := range model.Runs(markup) {
		if r.Mark {
			out.WriteString(r.Markup)
		} else {
			out.WriteString(x.gapsOf(r.Markup, left))
		}
	}
	return out.String()
}

func (x *exercise) gapsOf(text string, left []quantity.Dimension) string {
	var out strings.Builder
	from := 0
	for _, f := range quantity.Find(text) {
		if f.Start < from || !slices.Contains(left, f.Unit.Dimension()) {
			continue
		}
		out.WriteString(text[from:f.Start])
		out.WriteString(string(x.gap(html.UnescapeString(text[f.Start:f.End]))))
		from = f.End
	}
	out.WriteString(text[from:])
	return out.String()
}

// shuffled puts steps into an order that a seed gives: the same for each print,
// and never the right one.
func shuffled(steps []ExerciseStep, seed string) []ExerciseStep {
	type keyed struct {
		sum [sha256.Size]byte
		at  int
	}
	keys := make([]keyed, len(steps))
	for i := range steps {
		keys[i] = keyed{sha256.Sum256([]byte(seed + "\n" + strconv.Itoa(i))), i}
	}
	slices.SortFunc(keys, func(a, b keyed) int { return bytes.Compare(a.sum[:], b.sum[:]) })
	if slices.IsSortedFunc(keys, func(a, b keyed) int { return a.at - b.at }) && len(keys) > 1 {
		keys = append(keys[1:], keys[0])
	}
	out := make([]ExerciseStep, len(steps))
	for i, k := range keys {
		out[i] = steps[k.at]
	}
	return out
}
