// Package register works out the pages of what the registers and the machine files hold: tools, supplies,
// hazards, holds, roles, machines with their cards, fault codes, labels for the shelves.
package register

import (
	"fmt"
	"path"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page"
	"baybinder/generator/trade/signal"
	"baybinder/generator/trade/working"
)

// Pages makes the pages of the registers and of machines.
type Pages struct{ *jobs.Pages }

// Of makes them with what was recorded of jobs.
func Of(j *jobs.Pages) *Pages { return &Pages{j} }

// Entry is the page of one entry of a register.
type Entry struct {
	page.Frame
	Name     string
	Sort     string // what it is: "Tools"
	Facts    []Fact
	Box      *page.Box // of a hazard: as the steps show it
	Hold     *page.Hold
	Label    *page.Chemical // of a supply
	Picture  page.HTML
	Note     string
	Computed []page.Computed
	Uses     []Used
	Parts    []page.Part // where more procedures use it than one page lists
}

// Fact is one line about a thing.
type Fact struct {
	Name     string
	Text     string
	Links    []page.Link
	Computed []page.Computed
}

// Used is a procedure that uses an entry, with the steps where it does.
type Used struct {
	page.Link
	Amount string // of a supply: what the procedure's own steps use up
	Steps  []page.Link
}

// facts gathers lines, leaving empty ones out.
type facts []Fact

func (f *facts) text(name, text string) {
	if text != "" {
		*f = append(*f, Fact{Name: name, Text: text})
	}
}

func (f *facts) links(name string, links []page.Link) {
	if len(links) > 0 {
		*f = append(*f, Fact{Name: name, Links: links})
	}
}

func (s *Pages) entry(n model.Named, c *model.Common, sort string) *Entry {
	v := &Entry{Frame: s.Frame(page.PageOf(n), c.Label()), Name: c.Label(), Sort: sort, Note: c.Note}
	if c.Picture != "" {
		v.Picture = s.PictureOf(v.Up, path.Clean(c.Picture), c.Label())
	}
	uses := s.UsersOf(n)
	v.Uses, v.Parts = used(v.Up, uses[:min(onUses, len(uses))]), usesParts(n, 0, len(uses))
	return v
}

// onUses is how many procedures a page lists that use an entry: one with its
// steps takes about 200 bytes.
const onUses = 350

// usesParts leads to the pages that list what uses an entry: the first is the
// entry's own.
func usesParts(n model.Named, here, uses int) []page.Part {
	list := strings.TrimSuffix(page.PageOf(n), ".html") + ".uses.html"
	out := page.PartsOf(list, here, (uses+onUses-1)/onUses)
	if len(out) > 0 {
		out[0].Address = path.Base(page.PageOf(n))
	}
	return out
}

// Rest is a further page of what uses an entry, and where it stands.
type Rest struct {
	At   string
	Of   model.Named
	sort string
	n    int // from 1
}

// Rests are those pages of all entries that are used so much.
func (s *Pages) Rests() []Rest {
	var out []Rest
	add := func(n model.Named, sort string) {
		for i, p := range usesParts(n, 0, len(s.UsersOf(n))) {
			if i > 0 {
				out = append(out, Rest{path.Join(path.Dir(page.PageOf(n)), p.Address), n, sort, i})
			}
		}
	}
	addAll(add, s.Manual.Tools, s.Words.Tools)
	addAll(add, s.Manual.Supplies, s.Words.Supplies)
	addAll(add, s.Manual.Hazards, s.Words.Hazards)
	addAll(add, s.Manual.Holds, s.Words.Holds)
	addAll(add, s.Manual.Roles, s.Words.Roles)
	return out
}

func addAll[T any, P interface {
	*T
	model.Named
}](add func(model.Named, string), list []P, sort string) {
	for _, n := range list {
		add(n, sort)
	}
}

// Rest makes a further page of what uses an entry.
func (s *Pages) Rest(r Rest) *Entry {
	uses := s.UsersOf(r.Of)
	v := &Entry{Frame: s.Frame(r.At, r.Of.Label()), Name: r.Of.Label(), Sort: r.sort, Parts: usesParts(r.Of, r.n, len(uses))}
	v.Uses = used(v.Up, uses[r.n*onUses:min((r.n+1)*onUses, len(uses))])
	return v
}

func used(up string, uses []page.UsedBy) []Used {
	out := make([]Used, len(uses))
	for i, u := range uses {
		line := Used{Link: u.Sheet.At(up).Link, Amount: u.Amount, Steps: make([]page.Link, len(u.Steps))}
		for k, st := range u.Steps {
			line.Steps[k] = page.Link{Name: st.Number, Address: line.Address + "#" + st.Anchor}
		}
		out[i] = line
	}
	return out
}

func links[T any, P interface {
	*T
	model.Named
}](s *Pages, up string, refs []model.Ref[T]) []page.Link {
	var out []page.Link
	for _, r := range refs {
		if r.To != nil {
			out = append(out, s.Link(up, P(r.To)))
		}
	}
	return out
}

// Tool makes the page of a tool.
func (s *Pages) Tool(t *model.Tool) *Entry {
	w := s.Words
	v := s.entry(t, &t.Common, w.Tools)
	f := (*facts)(&v.Facts)
	f.text(w.KindOf, w.Kind(t.Kind))
	f.text(w.Kept, t.Kept)
	if t.Owned > 0 {
		f.text(w.Owned, strconv.Itoa(t.Owned))
	}
	if !t.Range.IsZero() {
		f.text(w.Range, s.BothLimit(t.Range))
	}
	f.text(w.Fits, page.Joined(t.Fits))
	f.text(w.Rated, t.Rated)
	f.text(s.dueOf(t), page.Joined(s.dues(t)))
	f.links(w.Substitutes, links(s, v.Up, t.Or))
	f.links(w.MayBeUsedBy, links(s, v.Up, t.Needs))
	f.text(w.Number, t.Number)
	return v
}

// calibrated says that a tool measures: it is calibrated, and nothing else is.
// What is kept beside a harness or a jack is when it was inspected.
func calibrated(t *model.Tool) bool {
	return slices.Contains([]string{"torque-wrench", "angle-gauge", "tester"}, t.Kind) || !t.Range.IsZero()
}

func (s *Pages) dueOf(t *model.Tool) string {
	if calibrated(t) {
		return s.Words.Calibration
	}
	return s.Speaks.Front.Inspection
}

// dues says when a tool's calibration or inspection runs out, as one or by
// individual.
func (s *Pages) dues(t *model.Tool) []string {
	if t.Calibration == nil {
		return nil
	}
	span, ok := t.Calibration.Every.Span()
	if !ok {
		return nil
	}
	whole, of := s.Words.Calibrated, s.Words.CalibratedUnit
	if !calibrated(t) {
		whole, of = s.Speaks.Front.Inspected, s.Speaks.Front.InspectedUnit
	}
	due := func(name string, last model.Date, text func(day string) string) string {
		until := model.DateOf(span.AddTo(last.Time()))
		w := &s.Speaks.Worked
		return page.Worked(text(until.String()), page.Computed{Title: fmt.Sprintf(w.Calibration, name, until), Working: working.Working{
			Formula: w.Sums.Until, Put: last.String() + " + " + s.Amount(t.Calibration.Every), Result: until.String(), Source: w.Sums.Shop,
		}})
	}
	if len(t.Calibration.Units) == 0 && !t.Calibration.Last.IsZero() {
		return []string{due(t.Label(), t.Calibration.Last, func(day string) string { return fmt.Sprintf(whole, day) })}
	}
	var out []string
	for _, u := range t.Calibration.Units {
		out = append(out, due(t.Label()+", "+u.Name, u.Last, func(day string) string { return fmt.Sprintf(of, u.Name, day) }))
	}
	return out
}

// Hazard makes the page of a hazard.
func (s *Pages) Hazard(h *model.Hazard) *Entry {
	w := s.Words
	v := s.entry(h, &h.Common, w.Hazards)
	v.FirstAid = s.FirstAid([]*model.Hazard{h})
	if boxes := s.Boxes(v.Up, []*model.Hazard{h}); len(boxes) > 0 {
		v.Box = &boxes[0]
	}
	f := (*facts)(&v.Facts)
	f.text(w.FirstAid, h.FirstAid)
	f.text(w.Of, s.of(h.Of.ID))
	f.text(w.Number, h.Number)
	if v.Box != nil {
		v.Computed = []page.Computed{{Title: s.Speaks.Worked.Signal, Working: signal.Explain(&s.Speaks.Worked.Safety, h.Harm, h.Happens, v.Box.Word)}}
	}
	return v
}

// of names the energy or fluid that an entry comes from, on each machine that
// has it.
func (s *Pages) of(id string) string {
	var out []string
	for _, m := range s.Manual.Machines {
		if n := m.Find(id); id != "" && n != nil {
			out = append(out, n.Label()+" ("+m.Label()+")")
		}
	}
	return page.Joined(out)
}

// Hold makes the page of a hold.
func (s *Pages) Hold(h *model.Hold) *Entry {
	w := s.Words
	v := s.entry(h, &h.Common, w.Holds)
	hold := s.HoldView(h)
	v.Hold = &hold
	f := (*facts)(&v.Facts)
	f.text(w.Of, s.of(h.Of.ID))
	f.text(w.Number, h.Number)
	for _, m := range s.Manual.Machines {
		if least, working := s.LeastWait(m, h); least != "" {
			v.Computed = append(v.Computed, page.Computed{Title: m.Label() + ": " + words.Fill(w.Computed, least), Working: working})
		}
	}
	return v
}

// Supply makes the page of a supply.
func (s *Pages) Supply(u *model.Supply) *Entry {
	w := s.Words
	v := s.entry(u, &u.Common, w.Supplies)
	v.Label = s.Chemical(u)
	f := (*facts)(&v.Facts)
	f.text(w.Unit, u.Unit)
	f.text(w.Kept, u.Kept)
	f.links(w.Hazards, links(s, v.Up, u.Hazards))
	f.text(w.Waste, u.Waste)
	f.text(w.Number, u.Number)
	return v
}

// Role makes the page of a role.
func (s *Pages) Role(r *model.Role) *Entry {
	w := s.Words
	v := s.entry(r, &r.Common, w.Roles)
	f := (*facts)(&v.Facts)
	if !r.RenewEvery.IsZero() {
		f.text(w.RenewEvery, s.Amount(r.RenewEvery))
	}
	f.text(w.Number, r.Number)
	return v
}
