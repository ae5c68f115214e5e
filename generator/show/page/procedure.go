package page

import (
	"fmt"
	"slices"
	"sort"
	"strconv"
	"strings"

	"baybinder/generator/base/quantity"
	"baybinder/generator/derive/kit"
	"baybinder/generator/derive/schedule"
	"baybinder/generator/derive/slips"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
)

// Procedure is a procedure's page.
type Procedure struct {
	Frame
	ID               string
	Title            string
	Summary          string
	Plate            []string    // machine, revision, review date
	When             []Condition // what every step asks of the unit
	Retired          *Link       // what stands instead of a retired procedure
	Draft            bool
	Intro            []HTML
	IntroKeeps       bool // it holds an amount: the short view shows it
	Bay              Bay
	Code             Code // what leads back from a printed card
	Before           Before
	Phases           []Phase
	CloseOut         CloseOut
	TimeLine         TimeLine
	Workings         []Computed // of every computed number of the page, at its foot
	WorkingsTitle    string
	Stand            []Stood // where things stand at the end
	Checked          string  // what it was checked for, in numbers
	Calls            []Link
	CalledBy, SeenBy []Link
	Also             []string // other names and symptoms
	Changes          []Change
	Jobs             *Jobs     // jobs that were done; nil where none was
	Said             *Feedback // what was said of its steps; nil where nothing was
	Plans            []Link    // reading plans that have it read
	Training         *words.Readings
}

// Before is what must be known before the start.
type Before struct {
	Who     []Link // roles; the note says which step brings one that the front matter does not list
	Seconds []Link // roles of who is needed besides the people; the note says at which steps
	People  int
	Range   string     // of the time in the bay; "" where every unit has the same
	Times   []UnitTime // of the kinds of unit
	Shelves []Shelf
	Wear    []Gear
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
	Link
	Amount string
}

// Phase is one phase of the steps.
type Phase struct {
	ID    string
	Title HTML
	Time  string
	Lead  HTML
	When  []Condition
	Terms Terms
	Never bool // it must not be broken off
	Boxes []Box
	Parts []Part
}

// Part is a step or prose between steps.
type Part struct {
	Step  *Step
	Prose HTML
}

// Step is one step with everything that belongs to it.
type Step struct {
	Number   string
	Anchor   string
	When     []Condition
	Boxes    []Box // stand before it, never parted from it
	Text     []HTML
	Refit    []HTML // notes that are shown where the step is reversed
	Why      []Reason
	Terms    Terms
	Said     string // how many said that it is wrong, and have no answer
	Guarded  bool   // it cannot be skipped
	Changes  string // what it changes: "remove:seat-base"
	Optional bool
	Within   string // no later than so many seconds after which steps: "300 600#s1-2"; none named is the one before
	Holds    []Hold
	Tags     []string
	Computed []Computed // wrench settings, lifts, releases
	Orders   []HTML     // sequences drawn
	People   int
	Posts    []string
	Call     *Call
	Pause    bool
	Reverse  string // what a reverse: link says
	Derived  []Derived
	NotBack  string  // steps of the reversed phase of which nothing comes back
	Stand    []Stood // where things stand, where this step changed it
	Changed  bool
	Entries  []string // of each: in a step without sub-steps: a tick for each
	Missed   *Missed  // nil where it is not easily missed
	Round    string   // the entry of an order that this sub-step is done for
	Subs     []Step
}

// Reason is a paragraph that says why.
type Reason struct {
	Text  HTML
	Keeps bool // it holds an amount: the short view shows it
}

// Call is a called procedure as its step shows it.
type Call struct {
	Link
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
func (s *Site) Procedure(p *model.Procedure) *Procedure {
	k, own := s.Kits.Of(p), s.own(p)
	v := &Procedure{
		Frame: s.Frame(s.pageOf(p), own.Title), ID: p.ID, Title: own.Title, Summary: own.Summary,
		Draft: p.Draft() || own.Draft(), Also: append(append([]string{}, own.AlsoCalled...), own.Symptoms...),
	}
	v.Tongues = s.tongues(v.Up, p)
	v.FirstAid, v.Cut = s.firstAid(k.Hazards), s.cutAt(k.Points)
	if p.Status == "retired" {
		v.Retired = &Link{}
		if p.Instead.To != nil {
			*v.Retired = s.link(v.Up, p.Instead.To)
		}
	}
	v.Plate = s.plate(p)
	v.Running = strings.Join(append([]string{own.Title}, v.Plate...), " · ") + ". " + s.Words.PrintedNote
	v.Bay = s.bay(p)
	v.Code = s.code(p)
	for i := range own.Intro {
		v.Intro = append(v.Intro, s.wrapped(v.Up, &own.Intro[i]))
		v.IntroKeeps = v.IntroKeeps || valued(&own.Intro[i])
	}
	v.Before = s.before(v.Up, p, k)
	items := slips.Of(p, s.Walks.Of(p))
	missed := s.missed(items)
	course, told := s.start(p), s.stood(p.For.To, s.Walks.StandAtStart(p))
	v.When = s.wholeWords(p, course.whole)
	for _, phase := range p.Phases {
		v.Phases = append(v.Phases, s.phase(v.Up, course, phase))
		tellChanges(v.Phases[len(v.Phases)-1].Parts, &told)
	}
	for i := range v.Phases {
		mark(v.Phases[i].Parts, missed)
	}
	v.CloseOut = s.closeOut(p, items, missed)
	v.TimeLine = s.timeLine(v.Up, p)
	v.Stand = s.standAfter(course, nil)
	v.Checked = s.checked(p)
	v.footnotes()
	v.WorkingsTitle = s.speaks.Worked.Section
	s.around(v, p)
	v.Changes = s.changes(p)
	v.Jobs, v.Said = s.JobsOf(v.Up, p, false), s.saidOf(v.Up, p)
	v.Plans, v.Training = s.plansWith(v.Up, p), s.training()
	v.drawOnce()
	return v
}

// wrapped is a block with its own tags.
func (s *Site) wrapped(up string, b *model.Block) HTML {
	h := s.text(up, b)
	if !b.Para || blank(h) {
		return h
	}
	return "<p>" + h + "</p>"
}

// plate is what stands on the page's plate: machine, revision, review date.
func (s *Site) plate(p *model.Procedure) []string {
	var out []string
	if p.For.To != nil {
		out = append(out, s.name(p.For.To))
	} else {
		out = append(out, s.Words.AnyMachine)
	}
	r := s.lastRevision(p)
	if r == nil {
		return append(out, s.Words.NotIssued)
	}
	out = append(out, fmt.Sprintf(s.Words.Revision, r.Number, r.Date))
	if by, ok := s.Manual.Shop.ReviewBy(r); ok {
		out = append(out, fmt.Sprintf(s.Words.ReviewBy, by))
	}
	return out
}

func (s *Site) lastRevision(p *model.Procedure) *model.Revision {
	for i := len(s.Manual.Revisions) - 1; i >= 0; i-- {
		if s.Manual.Revisions[i].Procedure.To == p {
			return &s.Manual.Revisions[i]
		}
	}
	return nil
}

func (s *Site) changes(p *model.Procedure) []Change {
	var out []Change
	for _, r := range s.Manual.Revisions {
		if r.Procedure.To == p {
			out = append(out, Change{Revision: r.Number, Date: r.Date.String(), Reason: s.foreign(r.Reason)})
		}
	}
	return out
}

// Dead is an energy that is made dead on the way.
type Dead struct {
	Text  string
	Cases string // the units of this machine that have it, as Stood.Cases
}

func (s *Site) dead(p *model.Procedure, e *model.Energy) Dead {
	v := Dead{Text: s.energyWords(e)}
	if m := p.For.To; m != nil && slices.Contains(m.Energies, e) && e.OnlyWith.Option != "" {
		v.Cases = optionTerm(e.OnlyWith.Option, e.OnlyWith.Not)
	}
	return v
}

func (s *Site) before(up string, p *model.Procedure, k *kit.Kit) Before {
	b := Before{People: k.People, Wear: s.gear(up, wears(k.Hazards)), Shelves: s.shelves(up, k)}
	for _, r := range k.Roles {
		who := s.link(up, r)
		who.Note = s.brings(p, r)
		b.Who = append(b.Who, who)
	}
	b.Seconds = s.seconds(up, k)
	for _, e := range k.Energies {
		b.Dead = append(b.Dead, s.dead(p, e))
	}
	word := greatest(k.Hazards)
	b.Word, b.Class = s.Words.Signal(word.String()), word.String()
	rows := s.Times.Rows(p)
	least, most := schedule.Range(rows)
	if most > 0 {
		b.Times = s.unitTimes(p, rows)
	}
	if least < most {
		b.Range = s.spanned(rows)
	}
	return b
}

// seconds are the roles of who sees a check done, each with its steps.
func (s *Site) seconds(up string, k *kit.Kit) []Link {
	var out []Link
	at := map[*model.Role]int{}
	for _, second := range k.Seconds {
		i, have := at[second.By]
		if !have {
			at[second.By] = len(out)
			out = append(out, s.link(up, second.By))
			out[len(out)-1].Note = second.Step.Number
			continue
		}
		out[i].Note += ", " + second.Step.Number
	}
	return out
}

// brings is the first step whose call or tool asks for a role that the
// procedure itself does not list; "" where it lists it.
func (s *Site) brings(p *model.Procedure, role *model.Role) string {
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
func (s *Site) energyWords(e *model.Energy) string {
	out := s.name(e)
	if !e.Voltage.IsZero() {
		out += ", " + e.Voltage.String()
	}
	if !e.Pressure.IsZero() {
		out += ", " + s.bothLimit(e.Pressures)
	}
	if !e.Temperature.IsZero() {
		out += ", " + s.both(e.Temperature)
	}
	return out
}

// duration writes seconds as hours and minutes.
func duration(seconds int) string { return quantity.Elapsed(seconds).String() }

// shelves sorts what to fetch by the place where it is kept. Gear is in it:
// it is fetched like the rest.
func (s *Site) shelves(up string, k *kit.Kit) []Shelf {
	byPlace := map[string][]Item{}
	for _, t := range k.Tools {
		item := Item{Link: s.link(up, t.Tool)}
		if t.Count > 1 {
			item.Amount = strconv.Itoa(t.Count)
		}
		kept := s.say(t.Tool, "kept", t.Tool.Kept)
		byPlace[kept] = append(byPlace[kept], item)
	}
	for _, u := range k.Supplies {
		item := Item{Link: s.link(up, u.Supply)}
		if u.Said {
			item.Amount = s.amount(u.Amount)
		}
		kept := s.say(u.Supply, "kept", u.Supply.Kept)
		byPlace[kept] = append(byPlace[kept], item)
	}
	return s.sortShelves(byPlace)
}

func (s *Site) sortShelves(byPlace map[string][]Item) []Shelf {
	var out []Shelf
	for place, items := range byPlace {
		sort.SliceStable(items, func(i, j int) bool { return items[i].Name < items[j].Name })
		out = append(out, Shelf{Place: place, Items: items})
	}
	sort.Slice(out, func(i, j int) bool {
		if (out[i].Place == "") != (out[j].Place == "") {
			return out[j].Place == "" // what has no place stands last
		}
		return out[i].Place < out[j].Place
	})
	for i := range out {
		if out[i].Place == "" {
			out[i].Place = s.Words.NoPlace
		}
	}
	return out
}

// checked says what the page was checked for: numbers, never that it is safe.
func (s *Site) checked(p *model.Procedure) string {
	w := s.Walks.Of(p)
	if !w.Done {
		return s.Words.NotWalked
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
	what := s.speaks.Counted.Say(w.Acts-calls-derived, calls, derived)
	if what != "" {
		what = " (" + what + ")"
	}
	return fmt.Sprintf(s.Words.Checked, w.Acts, what, len(w.Words), len(p.Steps))
}

// around is what calls the procedure and what it calls.
func (s *Site) around(v *Procedure, p *model.Procedure) {
	seen := map[model.Named]bool{}
	for _, c := range p.Calls {
		if c.To != nil && !seen[c.To] {
			seen[c.To] = true
			v.Calls = append(v.Calls, s.link(v.Up, c.To))
		}
	}
	for _, c := range s.Links.Callers(p) {
		v.CalledBy = append(v.CalledBy, s.link(v.Up, c))
	}
	for _, c := range s.Links.Seers(p) {
		v.SeenBy = append(v.SeenBy, s.link(v.Up, c))
	}
	byName(v.CalledBy)
	byName(v.SeenBy)
}

// joined is a list in a sentence.
func joined(list []string) string { return strings.Join(list, ", ") }
