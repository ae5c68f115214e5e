package page

import (
	"fmt"
	"strings"

	"baybinder/generator/manual"
	"baybinder/generator/trade/working"
)

// Hold is a hold as a step shows it: a block of its own.
type Hold struct {
	ID      string
	Kind    string // wait, measure, look, ask, note, sign, check, witness
	Title   string // "Wait 10 min", "Measure bus voltage"
	Name    string
	Lines   []string // what to do, in sentences
	Limit   string   // of a measurement
	Low     string   // the limit's ends in the unit of the blanks; "" where open
	High    string
	Proved  bool     // the tester is proved before and after
	Tries   int      // of a measurement; 0 for any number
	Calls   string   // who is called then
	Blanks  []string // a blank for each; "" where one is enough
	Unit    string   // printed behind a blank
	IfNot   string
	Seconds int // of a wait
	Answers []manual.Pair
	Signed  []string // the lines to sign on
	Least   string   // the computed minimum of a wait; "" where nothing can be computed
	Working working.Working
}

// hold makes the block of a hold.
func (s *Site) hold(h *manual.Hold) Hold {
	w := s.Words
	v := Hold{ID: h.ID, Kind: h.Kind, Name: h.Label(), IfNot: h.IfNot}
	if h.Why != "" {
		v.Lines = append(v.Lines, h.Why)
	}
	switch h.Kind {
	case "wait":
		v.Title = fmt.Sprintf(w.WaitFor, h.For, h.Label())
		v.Seconds = int(h.For.Base())
		v.Lines = append(v.Lines, w.WaitThenMeasure)
	case "measure":
		s.measure(&v, h)
	case "look":
		v.Title = fmt.Sprintf(w.LookAt, h.Label())
		v.Lines = append(v.Lines, sentence(h.What))
		if h.Good != "" {
			v.Lines = append(v.Lines, fmt.Sprintf(w.GoodIs, h.Good))
		}
	case "ask":
		v.Title = fmt.Sprintf(w.AskFor, h.Label())
		v.Answers = h.Answers
	case "note":
		v.Title = fmt.Sprintf(w.WriteDown, h.What)
		v.Blanks = []string{""}
	default:
		s.signature(&v, h)
	}
	s.triesAndCall(&v, h)
	return v
}

func (s *Site) measure(v *Hold, h *manual.Hold) {
	w := s.Words
	v.Title = fmt.Sprintf(w.Measure, h.Label())
	if h.What != "" {
		v.Lines = append(v.Lines, sentence(h.What))
	}
	v.Limit = s.bothLimit(h.Limit)
	v.Low, v.High = ends(h.Limit)
	v.Proved = h.ProvedOn.To != nil
	v.Unit = h.Limit.Unit.Symbol()
	if flow := h.Limit.Flow.String(); flow != "" {
		v.Unit += " " + flow
	}
	v.Blanks = h.Places
	if len(v.Blanks) == 0 {
		v.Blanks = []string{""}
	}
	if h.With.To != nil {
		v.Lines = append(v.Lines, fmt.Sprintf(w.MeasureWith, h.With.To.Label()))
	}
	if h.ProvedOn.To != nil {
		v.Lines = append(v.Lines, fmt.Sprintf(w.ProvedOn, h.ProvedOn.To.Label()))
	}
}

// signature speaks of the holds that a person signs: a hold point, a second
// person's check, a witness.
func (s *Site) signature(v *Hold, h *manual.Hold) {
	w := s.Words
	by := w.Someone
	if h.By.To != nil {
		by = h.By.To.Label()
	}
	switch h.Kind {
	case "sign":
		v.Title = fmt.Sprintf(w.SignBy, h.Label(), by)
		v.Lines = append(v.Lines, w.StopUntilSigned)
	case "check":
		v.Title = fmt.Sprintf(w.CheckBy, h.Label(), by)
		if h.How == "apart" {
			v.Lines = append(v.Lines, w.CheckApart)
		} else {
			v.Lines = append(v.Lines, w.CheckTogether)
		}
	case "witness":
		v.Title = fmt.Sprintf(w.WitnessBy, h.Label(), by)
		v.Lines = append(v.Lines, w.WorkMayGoOn)
	}
	v.Signed = []string{by}
}

func (s *Site) triesAndCall(v *Hold, h *manual.Hold) {
	v.Tries = h.Tries
	if h.Call.To != nil {
		v.Calls = h.Call.To.Label()
	}
	if h.Tries > 0 {
		v.Lines = append(v.Lines, fmt.Sprintf(s.Words.Tries, h.Tries))
	}
	if h.Call.To != nil {
		v.Lines = append(v.Lines, fmt.Sprintf(s.Words.ThenCall, h.Call.To.Label()))
	}
}

// sentence makes a phrase of the register a sentence.
func sentence(text string) string {
	text = strings.TrimSpace(text)
	if text == "" {
		return ""
	}
	first := []rune(text)
	text = strings.ToUpper(string(first[0])) + string(first[1:])
	if strings.ContainsAny(text[len(text)-1:], ".!?:") {
		return text
	}
	return text + "."
}
