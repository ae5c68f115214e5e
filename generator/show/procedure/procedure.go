// Package procedure works out what the page of a procedure shows: its steps with the derived refit, where things
// stand, the close-out list, the time line, and what the bay's script must know.
//
// # Decided where the format is silent
//
// A hazard that was said whole before in the phase, by a step that every unit passes, is said again
// in one line; the step in hand shows it whole. The rail groups where things stand by what it is. A
// step that was ticked past something open does not fold away. Two presses within 700 ms are one.
//
// At the bay: Jobs are kept by procedure and start, each with its unit; one of the first version
// stays under its old key. A shift is taken as 12 h since a job's last change (common practice, no
// source): what is older, of another person, or one of several is asked about, and until then
// nothing is shown as done. Names that differ in dots, spaces and capitals alone are one person. A
// job is open until its record is saved with nothing left to do; such jobs make room, the oldest
// first, where the store is full. A called procedure's job is that of the calling job's step. Of
// two tabs the newer write wins, and the page says so. A state that a script sets is a class
// `is-…`; a thing's class never is. A step with a hold, an energy act or a caution above NOTICE
// cannot be skipped. A gap stays recorded if it is mended later. A wait runs from the last
// applicable step before it, and where its own step asks for something first (a sentence, an act, a
// tool), from a press that can be made anew; a clock set back only makes it longer. Readings are typed in the
// limit's own unit. The short view hides pictures, standings, and reasons without an amount. The
// browser has no stemmer: the index holds stems, and up to four letters are cut off an unknown
// word.
package procedure

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/derive/kit"
	"baybinder/generator/derive/schedule"
	"baybinder/generator/derive/slips"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page"
	"baybinder/generator/trade/fastening"
	"baybinder/generator/trade/working"
)

// Pages makes the pages of procedures.
type Pages struct {
	*jobs.Pages
	tight *fastening.Book
}

// Of makes them with what was recorded of jobs.
func Of(j *jobs.Pages) *Pages { return &Pages{j, &fastening.Book{}} }

// In is the same as it is read in one of the shop's other languages.
func (s *Pages) In(tag string) *Pages { return &Pages{s.Pages.In(tag), s.tight} }

// Changed forgets what was worked out of a procedure before it was bound anew.
func (s *Pages) Changed(p *model.Procedure) {
	s.Pages.Changed(p)
	s.tight.Forget(p)
}

// TightAlready are the links of a procedure that tighten what is tight already.
func (s *Pages) TightAlready(p *model.Procedure) map[*model.Link]bool { return s.tight.Again(p) }

// Procedure is a procedure's page.
type Procedure struct {
	page.Frame
	ID               string
	Title            string
	Summary          string
	Plate            []string    // machine, revision, review date
	When             []Condition // what every step asks of the unit
	Retired          *page.Link  // what stands instead of a retired procedure
	Draft            bool
	Intro            []page.HTML
	IntroKeeps       bool // it holds an amount: the short view shows it
	Bay              Bay
	Code             page.Code // what leads back from a printed card
	Before           Before
	Phases           []Phase
	CloseOut         CloseOut
	TimeLine         TimeLine
	Stand            []Stood // where things stand at the end
	Stood            []Stood // all that ever stands otherwise; the steps say when
	StoodAtStart     string  // the numbers of those that do before the first step
	Checked          string  // what it was checked for, in numbers
	Calls            []page.Link
	CalledBy, SeenBy []page.Link
	Also             []string // other names and symptoms
	Changes          []Change
	Jobs             *jobs.Jobs     // jobs that were done; nil where none was
	Said             *jobs.Feedback // what was said of its steps; nil where nothing was
	Plans            []page.Link    // reading plans that have it read
	Training         *words.Readings
}

// Before is what must be known before the start.
type Before struct {
	Who     []page.Link // roles; the note says which step brings one that the front matter does not list
	Seconds []page.Link // roles of who is needed besides the people; the note says at which steps
	People  string      // how many at once; "" for one
	Range   string      // of the time in the bay; "" where every unit has the same
	Times   []UnitTime  // of the kinds of unit
	Shelves []Shelf
	Wear    []page.Gear
	Dead    []Dead // energies to isolate
	Word    string // the greatest signal word, in the page's language
	Class   string // its style
}

// Shelf is what to fetch from one place.
type Shelf struct {
	Place string
	Items []Item
}

// Item is a thing to fetch.
type Item struct {
	page.Link
	Amount string
}

// Phase is one phase of the steps.
type Phase struct {
	ID    string
	Title page.HTML
	Time  string
	Lead  page.HTML
	When  []Condition
	Terms Terms
	Never bool // it must not be broken off
	Boxes []page.Box
	Parts []Part
}

// Part is a step or prose between steps.
type Part struct {
	Step  *Step
	Prose page.HTML
}

// Step is one step with everything that belongs to it.
type Step struct {
	Number   string
	Anchor   string
	When     []Condition
	Boxes    []page.Box // stand before it, never parted from it
	Text     []page.HTML
	Refit    []page.HTML // notes that are shown where the step is reversed
	Why      []Reason
	Terms    Terms
	Said     string // how many said that it is wrong, and have no answer
	Guarded  bool   // it cannot be skipped
	Changes  string // what it changes: "remove:seat-base"
	Optional bool
	Within   string // no later than so many seconds after which steps: "300 600#s1-2"; none named is the one before
	Holds    []page.Hold
	Tags     []string
	Computed []page.Computed // wrench settings, lifts, releases
	Orders   []page.HTML     // sequences drawn
	People   int
	Posts    []string
	Call     *Call
	Pause    bool
	Reverse  string // what a reverse: link says
	Derived  []Derived
	NotBack  string   // steps of the reversed phase of which nothing comes back
	Stand    []Stood  // where things stand
	Listed   bool     // that is listed: its phase ends so
	Moves    string   // what it changes of what stands otherwise, by number: "3 4 -1"
	Entries  []string // of each: in a step without sub-steps: a tick for each
	Missed   *Missed  // nil where it is not easily missed
	Round    string   // the entry of an order that this sub-step is done for
	Subs     []Step
}

// Reason is a paragraph that says why.
type Reason struct {
	Text  page.HTML
	Keeps bool // it holds an amount: the short view shows it
}

// Call is a called procedure as its step shows it.
type Call struct {
	page.Link
	Time   string
	People int
	Then   string // "then come back to step 2.4"
	Still  bool   // it only confirms what holds already
}

// Change is one issued revision.
type Change struct {
	Revision string
	Date     string
	Reason   string
}

// Procedure makes the page of a procedure.
func (s *Pages) Procedure(p *model.Procedure) *Procedure {
	k, own := s.Kits.Of(p), s.Own(p)
	v := &Procedure{
		Frame: s.Frame(s.PageOf(p), own.Title), ID: p.ID, Title: own.Title, Summary: own.Summary,
		Draft: p.Draft() || own.Draft(), Also: append(append([]string{}, own.AlsoCalled...), own.Symptoms...),
	}
	v.Tongues = s.Tongues(v.Up, p)
	v.FirstAid, v.Cut = s.AidFor(p), s.CutAt(k.Points)
	if p.Status == "retired" {
		v.Retired = &page.Link{}
		if p.Instead.To != nil {
			*v.Retired = s.Link(v.Up, p.Instead.To)
		}
	}
	v.Plate = s.Plate(p)
	v.Running = page.Unworked(strings.Join(append([]string{own.Title}, v.Plate...), " · ") + ". " + s.Words.PrintedNote)
	v.Bay = s.bay(p)
	v.Code = s.Code(p)
	for i := range own.Intro {
		v.Intro = append(v.Intro, s.wrapped(v.Up, &own.Intro[i]))
		v.IntroKeeps = v.IntroKeeps || valued(&own.Intro[i])
	}
	v.Before = s.before(v.Up, p, k)
	items := slips.Of(p, s.Walks.Of(p))
	missed := s.missed(items)
	course := s.start(p)
	told := telling{number: map[Stood]int{}}
	v.StoodAtStart = told.moves(s.stood(course, s.Walks.StandAtStart(p)))
	v.When = s.wholeWords(p, course.whole)
	for _, phase := range p.Phases {
		v.Phases = append(v.Phases, s.phase(v.Up, course, phase))
		told.phase(v.Phases[len(v.Phases)-1].Parts)
	}
	v.Stood = told.rows
	for i := range v.Phases {
		mark(v.Phases[i].Parts, missed)
	}
	v.CloseOut = s.closeOut(p, items, missed)
	v.TimeLine = s.timeLine(v.Up, p)
	v.Stand = s.standAfter(course, nil)
	v.Checked = s.checked(p)
	s.around(v, p)
	v.Changes = s.changes(p)
	v.Jobs, v.Said = s.JobsOf(v.Up, p, false), s.SaidOf(v.Up, p)
	v.Plans, v.Training = s.PlansWith(v.Up, p), s.Training()
	v.drawOnce()
	return v
}

// wrapped is a block with its own tags.
func (s *Pages) wrapped(up string, b *model.Block) page.HTML {
	h := s.Text(up, b)
	if !b.Para || page.Blank(h) {
		return h
	}
	return "<p>" + h + "</p>"
}

// Plate is what stands on the page's plate: machine, revision, review date.
func (s *Pages) Plate(p *model.Procedure) []string {
	var out []string
	if p.For.To != nil {
		out = append(out, s.Name(p.For.To))
	} else {
		out = append(out, s.Words.AnyMachine)
	}
	r := s.LastRevision(p)
	if r == nil {
		return append(out, s.Words.NotIssued)
	}
	out = append(out, fmt.Sprintf(s.Words.Revision, r.Number, r.Date))
	looked := s.Looked(p, r)
	if by, ok := s.Manual.Shop.ReviewBy(looked); ok {
		out = append(out, s.Until(fmt.Sprintf(s.Words.ReviewBy, by), looked, s.Amount(s.Manual.Shop.ReviewEvery), by))
	}
	return out
}

func (s *Pages) changes(p *model.Procedure) []Change {
	var out []Change
	for _, r := range s.Manual.Revisions {
		if r.Procedure.To == p {
			out = append(out, Change{Revision: r.Number, Date: r.Date.String(), Reason: s.Untranslated(r.Reason)})
		}
	}
	return out
}

// Dead is an energy that is made dead on the way.
type Dead struct {
	Text  string
	Cases string // the units of this machine that have it, as Stood.Cases
}

func (s *Pages) dead(p *model.Procedure, e *model.Energy) Dead {
	v := Dead{Text: s.energyWords(e)}
	if m := p.For.To; m != nil && slices.Contains(m.Energies, e) && e.OnlyWith.Option != "" {
		v.Cases = optionTerm(e.OnlyWith.Option, e.OnlyWith.Not)
	}
	return v
}

func (s *Pages) before(up string, p *model.Procedure, k *kit.Kit) Before {
	b := Before{People: s.crew(p, k.People), Wear: s.Gear(up, page.Wears(k.Hazards)), Shelves: s.shelves(up, p, k)}
	for _, r := range k.Roles {
		who := s.Link(up, r)
		who.Note = s.brings(p, r)
		b.Who = append(b.Who, who)
	}
	b.Seconds = s.seconds(up, k)
	for _, e := range k.Energies {
		b.Dead = append(b.Dead, s.dead(p, e))
	}
	word := page.Greatest(k.Hazards)
	b.Word, b.Class = s.Words.Signal(word.String()), word.String()
	rows := s.Times.Rows(p)
	least, most := schedule.Range(rows)
	if most > 0 {
		b.Times = s.unitTimes(p, rows)
	}
	if least < most {
		b.Range = s.Spread(rows)
	}
	return b
}

// seconds are the roles of who sees a check done, each with its steps.
func (s *Pages) seconds(up string, k *kit.Kit) []page.Link {
	var out []page.Link
	at := map[*model.Role]int{}
	for _, second := range k.Seconds {
		i, have := at[second.By]
		if !have {
			at[second.By] = len(out)
			out = append(out, s.Link(up, second.By))
			out[len(out)-1].Note = second.Step.Number
			continue
		}
		out[i].Note += ", " + second.Step.Number
	}
	return out
}

// brings is the first step whose call or tool asks for a role that the
// procedure itself does not list; "" where it lists it.
func (s *Pages) brings(p *model.Procedure, role *model.Role) string {
	if slices.ContainsFunc(p.Needs, func(r model.Ref[model.Role]) bool { return r.To == role }) {
		return ""
	}
	for _, st := range p.Steps {
		for _, l := range st.Links {
			if to, ok := l.To.(*model.Procedure); ok && l.Kind.Act == model.Call && slices.Contains(s.Kits.Of(to).Roles, role) {
				return st.Number
			}
			if l.To == model.Named(role) {
				return st.Number
			}
			if tool, ok := l.To.(*model.Tool); ok && slices.ContainsFunc(tool.Needs, func(r model.Ref[model.Role]) bool { return r.To == role }) {
				return st.Number
			}
		}
	}
	return ""
}

// energyWords are an energy with its size: "traction, 80 V dc".
func (s *Pages) energyWords(e *model.Energy) string {
	out := s.Name(e)
	if !e.Voltage.IsZero() {
		out += ", " + s.Both(e.Voltage)
	}
	if !e.Pressure.IsZero() {
		out += ", " + s.BothLimit(e.Pressures)
	}
	if !e.Temperature.IsZero() {
		out += ", " + s.Both(e.Temperature)
	}
	return out
}

// shelves sorts what to fetch by the place where it is kept. Gear is in it:
// it is fetched like the rest.
func (s *Pages) shelves(up string, p *model.Procedure, k *kit.Kit) []Shelf {
	all := make([]kept, 0, len(k.Tools)+len(k.Supplies))
	for _, t := range k.Tools {
		item := Item{Link: s.Link(up, t.Tool)}
		if t.Count > 1 {
			item.Amount = s.toolCount(p, t)
		}
		all = append(all, kept{s.Say(t.Tool, "kept", t.Tool.Kept), item})
	}
	for _, u := range k.Supplies {
		item := Item{Link: s.Link(up, u.Supply)}
		if u.Said {
			item.Amount = s.summed(u)
		}
		all = append(all, kept{s.Say(u.Supply, "kept", u.Supply.Kept), item})
	}
	return s.sortShelves(all)
}

// kept is a thing to fetch, and where from.
type kept struct {
	place string
	Item
}

func (s *Pages) sortShelves(all []kept) []Shelf {
	slices.SortStableFunc(all, func(a, b kept) int {
		if (a.place == "") != (b.place == "") {
			return len(b.place) - len(a.place) // what has no place stands last
		}
		return cmp.Or(strings.Compare(a.place, b.place), strings.Compare(a.Name, b.Name))
	})
	items := make([]Item, len(all))
	out := make([]Shelf, 0, len(all))
	for i, x := range all {
		items[i] = x.Item
		if i == 0 || x.place != all[i-1].place {
			out = append(out, Shelf{Place: cmp.Or(x.place, s.Words.NoPlace), Items: items[i:i]})
		}
		last := &out[len(out)-1]
		last.Items = last.Items[:len(last.Items)+1]
	}
	return out
}

// checked says what the page was checked for: numbers, never that it is safe.
func (s *Pages) checked(p *model.Procedure) string {
	w := s.Walks.Of(p)
	if !w.Done {
		return s.Words.NotWalked
	}
	if w.Acts == 0 {
		return s.Words.NoActs
	}
	calls, derived := 0, 0
	for _, l := range p.Calls {
		if !l.Bad {
			calls++
		}
	}
	for _, r := range w.Reversals {
		derived += len(r.Steps)
	}
	what := " (" + s.Speaks.Counted.Say(w.Acts-calls-derived, calls, derived) + ")"
	sums := &s.Speaks.Worked.Sums
	text := fmt.Sprintf(s.Words.Checked, w.Acts, what, len(w.Words), len(p.Steps))
	return page.Worked(text, page.Computed{Title: fmt.Sprintf(sums.How, strconv.Itoa(w.Acts)), Working: working.Working{
		Formula: sums.Checked, Put: fmt.Sprintf("%d + %d + %d", w.Acts-calls-derived, calls, derived), Result: strconv.Itoa(w.Acts), Source: sums.Page,
		Terms: []working.Term{{Sign: strconv.Itoa(len(w.Words)), Words: sums.Words}, {Sign: strconv.Itoa(len(p.Steps)), Words: sums.All}},
	}})
}

// around is what calls the procedure and what it calls.
func (s *Pages) around(v *Procedure, p *model.Procedure) {
	seen := map[model.Named]bool{}
	for _, c := range p.Calls {
		if c.To != nil && !seen[c.To] {
			seen[c.To] = true
			v.Calls = append(v.Calls, s.Link(v.Up, c.To))
		}
	}
	for _, c := range s.Links.Callers(p) {
		v.CalledBy = append(v.CalledBy, s.Link(v.Up, c))
	}
	for _, c := range s.Links.Seers(p) {
		v.SeenBy = append(v.SeenBy, s.Link(v.Up, c))
	}
	page.ByName(v.CalledBy)
	page.ByName(v.SeenBy)
}
