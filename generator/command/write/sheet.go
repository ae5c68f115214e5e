package write

import (
	"cmp"
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/prove/walk"
	"baybinder/generator/show/page"
)

// Sheet is a procedure as it lies on the desk.
type Sheet struct {
	ID      string      `json:"id"`
	File    string      `json:"file"`
	State   string      `json:"state"` // of its bytes; a save names it
	Page    string      `json:"page"`  // its address in the site
	Title   string      `json:"title"`
	Summary string      `json:"summary"`
	People  int         `json:"people"`
	Machine *EntryName  `json:"machine"`
	Start   []StateLine `json:"start"` // how it finds things, where not whole
	Status  string      `json:"status"`
	Phases  []PhaseText `json:"phases"`
	Found   []Found     `json:"found"` // what stands in no step
	Errors  int         `json:"errors"`
	Advice  int         `json:"advice"`
	HTML    string      `json:"html"` // the page as it would be published
	Back    *save       `json:"back"` // what can be undone
	Forth   *save       `json:"forth"`
}

// EntryName is an entry with its page.
type EntryName struct {
	ID    string `json:"id"`
	Label string `json:"label"`
	Page  string `json:"page"`
}

// PhaseText is a phase with its steps.
type PhaseText struct {
	ID    string     `json:"id"`
	Title string     `json:"title"`
	Empty bool       `json:"empty"` // it can be taken out
	Found []Found    `json:"found"`
	Steps []StepText `json:"steps"`
}

// StepText is a step as it is written; sub-steps follow theirs.
type StepText struct {
	Number string  `json:"number"`
	Anchor string  `json:"anchor"`
	Deep   int     `json:"deep"` // 0 at the top of a phase
	Subs   int     `json:"subs"`
	Text   string  `json:"text"`
	Found  []Found `json:"found"`
}

// Found is a finding in plain values.
type Found struct {
	Code    string `json:"code"`
	Error   bool   `json:"error"`
	Message string `json:"message"`
	Mend    string `json:"mend"`
	Lang    string `json:"lang"`  // in which this is told
	Where   string `json:"where"` // the words at its place
	Ways    []Way  `json:"ways"`  // how it is mended in one touch
}

// Way is one way to mend a finding.
type Way struct {
	Title string `json:"title"`
	Told  bool   `json:"told,omitempty"` // in the language that findings are told in, and not the shop's
	Act   *Act   `json:"act,omitempty"`
	Text  string `json:"text,omitempty"` // of a step that is being written: its words with the mend in them
}

// sheet is a procedure as it lies on the desk.
func (d *Desk) sheet(p *model.Procedure, state string) *Sheet {
	b := d.bench()
	s := &Sheet{
		ID: p.ID, File: p.File.Path, State: state, Title: p.Label(), Summary: p.Summary, People: max(1, p.People), Start: d.start(p), Status: p.Status,
		Back: last(d.done), Forth: last(d.undone), Phases: []PhaseText{},
	}
	if m := p.For.To; m != nil {
		s.Machine = &EntryName{m.ID, m.Label(), page.PageOf(m)}
	}
	at, html := d.manual.Page(p.File.Path)
	s.Page, s.HTML = at, string(html)
	for _, ph := range p.Phases {
		text := PhaseText{ID: ph.ID, Title: ph.Title.Plain, Empty: len(ph.Steps) == 0 && len(ph.Body) == 0 && ph.Lead == nil, Steps: []StepText{}}
		for _, step := range p.Steps {
			if step.Phase == ph {
				text.Steps = append(text.Steps, stepText(step))
			}
		}
		s.Phases = append(s.Phases, text)
	}
	for _, f := range b.found {
		if f.At.Path() == s.File {
			s.count(f)
			s.put(b, p, f)
		}
	}
	return s
}

func last(list []save) *save {
	if len(list) == 0 {
		return nil
	}
	return &list[len(list)-1]
}

func stepText(s *model.Step) StepText {
	out := StepText{Number: s.Number, Anchor: page.Anchor(s), Subs: len(s.Subs)}
	for above := s.Parent; above != nil; above = above.Parent {
		out.Deep++
	}
	if at, ok := wordsOf(s); ok {
		out.Text = outdented(s.At.File.Text[at.start:at.end], at.width)
	}
	return out
}

func (s *Sheet) count(f finding.Finding) {
	if f.Level == finding.Error {
		s.Errors++
		return
	}
	s.Advice++
}

// put puts a finding where it stands: at its step, at its phase, or above all.
func (s *Sheet) put(b bench, p *model.Procedure, f finding.Finding) {
	said := found(f)
	for n, m := range b.Mends(f) {
		if within(m.Edits, s.File) {
			said.Ways = append(said.Ways, Way{Title: capital(m.Title), Told: true, Act: &Act{Do: "mend", Mend: Mend{f.Code, f.At.Start, n}}})
		}
	}
	if walk.Leaves(f.Rule) {
		said.Ways = append(said.Ways, Way{Title: language.Of(b.Manual().Shop.Language).Write.LeaveSo, Act: &Act{Do: "leave"}})
	}
	here, _ := b.Here(s.File, f.At.Start)
	for i := range s.Phases {
		ph := &s.Phases[i]
		if at := p.Phases[i].At; here.Step == nil && at.Start <= f.At.Start && f.At.Start <= at.End {
			ph.Found = append(ph.Found, said)
			return
		}
		if here.Step == nil {
			continue
		}
		if n := slices.IndexFunc(ph.Steps, func(x StepText) bool { return x.Number == here.Step.Number }); n >= 0 {
			ph.Steps[n].Found = append(ph.Steps[n].Found, said)
			return
		}
	}
	s.Found = append(s.Found, said)
}

func found(f finding.Finding) Found {
	return Found{Code: f.Code, Error: f.Level == finding.Error, Message: f.Message, Mend: f.Mend, Lang: cmp.Or(f.Lang, language.Default().Code), Where: f.At.Text()}
}

// Trial is what would come of an act.
type Trial struct {
	On     string  `json:"on"` // the step at which the writer looks, by its number then
	Anchor string  `json:"anchor"`
	Found  []Found `json:"found"` // in that step
	Else   []Found `json:"else"`  // what is new elsewhere
	HTML   string  `json:"html"`
}
