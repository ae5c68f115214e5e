package check

import (
	"math"
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/read/record"
)

var recordDisagrees = finding.Rule{
	Code:  "record-disagrees",
	Title: "A record that contradicts itself",
	Why:   "A value out of its limit that is recorded as passed puts a machine to work that did not pass. The page cannot write that, so the file was changed by hand or is damaged.",
	Mend:  "Find out what was measured, and measure again if nobody knows. Put the file back as the page saved it, or take it out and keep it on paper.",
}

func runRecordDisagrees(c *Context) []finding.Finding {
	var found []finding.Finding
	for _, j := range record.Counted(c.Manual.Jobs, c.Today) {
		for i := range j.Holds {
			h := &j.Holds[i]
			low, high := h.Low, h.High
			if low == nil && high == nil && j.To != nil && record.Current(c.Manual, j, c.Today) {
				low, high = limitNow(j.To, h)
			}
			found = append(found, judgeReadings(h, low, high)...)
			if h.Kind == "wait" && h.Met && len(j.Clock) == 0 && h.Until.After(j.Saved) {
				found = append(found, recordDisagrees.At(h.Place, "this wait is recorded as over, and ends after the record was saved"))
			}
		}
	}
	return found
}

// limitNow are the ends of a hold's limit, for a record that was made with what
// stands and brought none along. Another unit says nothing.
func limitNow(p *model.Procedure, h *model.JobHold) (low, high *float64) {
	for _, s := range p.Steps {
		for _, l := range s.Links {
			hold, is := l.To.(*model.Hold)
			if !is || hold.ID != h.Hold || hold.Lost("limit") {
				continue
			}
			if unit, known := quantity.UnitNamed(strings.TrimSuffix(strings.TrimSuffix(h.Unit, " dc"), " ac")); !known || unit != hold.Limit.Unit {
				return nil, nil
			}
			return end(hold.Limit.Low), end(hold.Limit.High)
		}
	}
	return nil, nil
}

func end(v float64) *float64 {
	if math.IsInf(v, 0) {
		return nil
	}
	return &v
}

func judgeReadings(h *model.JobHold, low, high *float64) []finding.Finding {
	var found []finding.Finding
	for i, v := range h.Values {
		at := h.ValuesAt[i]
		switch {
		case v.Value == nil && h.Met:
			found = append(found, recordDisagrees.At(at, "this measurement is recorded as passed, and %s is no number", strconv.Quote(v.Typed)))
		case v.Value == nil:
		case otherNumber(v):
			found = append(found, recordDisagrees.At(at, "%s was typed, and the value is %s", strconv.Quote(v.Typed), decimal(*v.Value)))
		case h.Met && !record.Within(*v.Value, low, high):
			found = append(found, recordDisagrees.At(at, "%s %s is out of the limit (%s), and the measurement is recorded as passed", decimal(*v.Value), h.Unit, limitText(low, high)).
				WithMend("find out what was measured; put the file back as the page saved it"))
		}
	}
	if h.Kind == "measure" && h.Met && len(h.Values) == 0 {
		found = append(found, recordDisagrees.At(h.Place, "this measurement is recorded as passed, and holds no value"))
	}
	return found
}

// otherNumber says that the value is not what was typed, read as the page reads
// it: a decimal comma and a minus sign are taken, and nothing else is guessed.
func otherNumber(v model.JobReading) bool {
	plain := strings.Replace(strings.Replace(strings.TrimSpace(v.Typed), "−", "-", 1), ",", ".", 1)
	n, err := strconv.ParseFloat(plain, 64)
	return err != nil || n != *v.Value
}

func decimal(v float64) string { return strconv.FormatFloat(v, 'g', -1, 64) }

// limitText is a limit that has an end.
func limitText(low, high *float64) finding.Words {
	switch {
	case low == nil:
		return finding.Say("at most %s", decimal(*high))
	case high == nil:
		return finding.Say("at least %s", decimal(*low))
	}
	return finding.Say("%s to %s", decimal(*low), decimal(*high))
}
