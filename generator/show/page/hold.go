package page

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
)

// Hold is a hold as a step shows it: a block of its own.
type Hold struct {
	ID       string
	Kind     string // wait, measure, look, ask, note, sign, check, witness
	Title    string // "Wait 10 min", "Measure bus voltage"
	Name     string
	Lines    []string // what to do, in sentences
	After    []string // what stands behind the blanks: instrument, tries, reason
	Limit    string   // of a measurement
	Low      string   // the limit's ends in the unit of the blanks; "" where open
	High     string
	Near     string // the part of the limit that is near its end, and when it is measured again
	NearLow  string // the ends of that part in the unit of the blanks
	NearHigh string
	Again    string   // how soon it is measured again then
	Proved   bool     // the tester is proved before and after
	Tries    int      // of a measurement; 0 for any number
	Calls    string   // who is called then
	Blanks   []string // a blank for each; "" where one is enough
	Unit     string   // of the blanks, as the manual has it
	UnitSaid string   // the same as it is printed behind a blank
	IfNot    string
	Places   []string // of a look: a tick for each
	Seconds  int      // of a wait
	Longest  int      // of a wait; 0 where it has no end
	Pressed  bool     // of a wait: a press begins it, not the tick of the step before
	Answers  []model.Pair
	Signed   []string   // the lines to sign on
	Computed []Computed // the minimum of a wait; none where nothing can be computed
}

// HoldView makes the block of a hold.
func (s *Site) HoldView(h *model.Hold) Hold {
	w := s.Words
	v := Hold{ID: h.ID, Kind: h.Kind, Name: s.Name(h), IfNot: s.Say(h, "if-not", h.IfNot)}
	switch h.Kind {
	case "wait":
		v.Title = fmt.Sprintf(w.WaitFor, s.Stretch(h.For), v.Name)
		v.Seconds, v.Longest = int(h.For.Least.Base()), int(h.For.Most.Base())
		if v.Longest > 0 {
			v.Lines = append(v.Lines, fmt.Sprintf(w.WaitNoLonger, s.exactly(h.For.Most)))
		}
		v.Lines = append(v.Lines, w.WaitThenMeasure)
	case "measure":
		s.measure(&v, h)
	case "look":
		v.Title = fmt.Sprintf(w.LookAt, v.Name)
		v.Lines = append(v.Lines, Sentence(s.Say(h, "what", h.What)))
		if h.Good != "" {
			v.Lines = append(v.Lines, fmt.Sprintf(w.GoodIs, s.Say(h, "good", h.Good)))
		}
		if h.With.To != nil {
			v.Lines = append(v.Lines, fmt.Sprintf(w.MeasureWith, s.Name(h.With.To)))
		}
		v.Places = s.SayAll(h, "at", h.Places)
	case "ask":
		v.Title = fmt.Sprintf(w.AskFor, v.Name)
		v.Answers = s.Answers(h)
	case "note":
		v.Title = fmt.Sprintf(w.WriteDown, s.Say(h, "what", h.What))
		v.Blanks = []string{""}
	default:
		s.signature(&v, h)
	}
	s.triesAndCall(&v, h)
	if h.Why != "" {
		v.After = append(v.After, s.Say(h, "why", h.Why))
	}
	return v
}

// Stretch is a wait in the page's words.
func (s *Site) Stretch(f quantity.Stretch) string {
	if l, both := f.Range(); both {
		return s.Limit(l)
	}
	return s.exactly(f.Least)
}

func (s *Site) measure(v *Hold, h *model.Hold) {
	w := s.Words
	v.Title = fmt.Sprintf(w.Measure, v.Name)
	if h.What != "" {
		v.Lines = append(v.Lines, Sentence(s.Say(h, "what", h.What)))
	}
	v.Limit = s.BothLimit(h.Limit)
	v.Low, v.High = ends(h.Limit)
	s.nearLimit(v, h)
	v.Proved = h.ProvedOn.To != nil
	v.Unit = h.Limit.Unit.Symbol()
	if flow := h.Limit.Flow.String(); flow != "" {
		v.Unit += " " + flow
	}
	v.UnitSaid = s.Written(v.Unit)
	v.Blanks = s.SayAll(h, "at", h.Places)
	if len(v.Blanks) == 0 {
		v.Blanks = []string{""}
	}
	if h.With.To != nil {
		v.After = append(v.After, fmt.Sprintf(w.MeasureWith, s.Name(h.With.To)))
	}
	if h.ProvedOn.To != nil {
		v.After = append(v.After, fmt.Sprintf(w.ProvedOn, s.Name(h.ProvedOn.To)))
	}
}

// nearLimit says which readings pass and are near the limit.
func (s *Site) nearLimit(v *Hold, h *model.Hold) {
	if h.Near.IsZero() {
		return
	}
	v.NearLow, v.NearHigh = endsIn(h.Near, h.Limit.Unit)
	v.Near = fmt.Sprintf(s.Words.NearLimit, s.BothLimit(h.Near))
	if !h.AgainIn.IsZero() {
		v.Again = s.Amount(h.AgainIn)
		v.Near = fmt.Sprintf(s.Words.NearLimitAgain, s.BothLimit(h.Near), v.Again)
	}
}

// signature speaks of the holds that a person signs: a hold point, a second
// person's check, a witness.
func (s *Site) signature(v *Hold, h *model.Hold) {
	w := s.Words
	by := w.Someone
	if h.By.To != nil {
		by = s.Name(h.By.To)
	}
	switch h.Kind {
	case "sign":
		v.Title = fmt.Sprintf(w.SignBy, v.Name, by)
		v.Lines = append(v.Lines, w.StopUntilSigned)
	case "check":
		v.Title = fmt.Sprintf(w.CheckBy, v.Name, by)
		if h.How == "apart" {
			v.Lines = append(v.Lines, w.CheckApart)
		} else {
			v.Lines = append(v.Lines, w.CheckTogether)
		}
	case "witness":
		v.Title = fmt.Sprintf(w.WitnessBy, v.Name, by)
		v.Lines = append(v.Lines, w.WorkMayGoOn)
	}
	v.Signed = []string{by}
}

func (s *Site) triesAndCall(v *Hold, h *model.Hold) {
	v.Tries = h.Tries
	if h.Call.To != nil {
		v.Calls = s.Name(h.Call.To)
	}
	switch {
	case h.Tries == 1:
		v.After = append(v.After, s.Words.OneTry)
	case h.Tries > 1:
		v.After = append(v.After, fmt.Sprintf(s.Words.Tries, h.Tries))
	}
	if h.Call.To != nil {
		v.After = append(v.After, fmt.Sprintf(s.Words.ThenCall, s.Name(h.Call.To)))
	}
}

// Sentence makes a phrase of the register a sentence. The signs of another
// language are no letters of it.
func Sentence(text string) string {
	text = strings.TrimSpace(text)
	bare := strings.TrimPrefix(text, opens)
	if bare == "" {
		return ""
	}
	first, size := utf8.DecodeRuneInString(bare)
	before := text[:len(text)-len(bare)]
	bare, foreign := strings.CutSuffix(bare[size:], closes)
	if bare == "" || !strings.ContainsAny(bare[len(bare)-1:], ".!?:") {
		bare += "."
	}
	if foreign {
		bare += closes
	}
	return before + string(unicode.ToUpper(first)) + bare
}

// ends are the two ends of a limit as the script compares them, in the unit
// that stands behind the blank; "" where an end is open.
func ends(l quantity.Limit) (low, high string) {
	end := func(v float64) string {
		if math.IsInf(v, 0) {
			return ""
		}
		return strconv.FormatFloat(v, 'g', 12, 64) // 87, not 87.00000000000001
	}
	return end(l.Low), end(l.High)
}

// endsIn are a limit's ends in another unit of its dimension.
func endsIn(l quantity.Limit, u quantity.Unit) (low, high string) {
	if l.Unit != u {
		l.Low, l.High = quantity.Of(l.Low, l.Unit, 12).In(u).Value, quantity.Of(l.High, l.Unit, 12).In(u).Value
	}
	return ends(l)
}
