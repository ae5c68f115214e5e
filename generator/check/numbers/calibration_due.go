package numbers

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
)

// CalibrationDue is told at the tool's entry.
var CalibrationDue = finding.Rule{
	Code:  "calibration-due",
	Level: finding.Advice,
	Title: "A tool whose calibration has run out",
	Why:   "What is set or measured with it counts for nothing until it is checked, and jobs that were done with it may have to be done again.",
	Mend:  "Send the tool to calibration, and write the new day as its last.",
}

// calibrationDue looks for tools whose calibration has run out before today, as
// one or by individual. On the day itself they are good.
func calibrationDue(m *model.Manual, today model.Date) []finding.Finding {
	var found []finding.Finding
	for _, t := range m.Tools {
		if t.Calibration != nil && !t.Lost("calibration") {
			found = append(found, calibrationOf(t, today)...)
		}
	}
	return found
}

func calibrationOf(t *model.Tool, today model.Date) []finding.Finding {
	units := t.Calibration.Units
	if !t.Calibration.Last.IsZero() {
		units = append(units[:len(units):len(units)], model.DatedUnit{Last: t.Calibration.Last})
	}
	var out, ahead []finding.Words
	for _, u := range units {
		due, known := DueOf(t.Calibration.Every, u.Last)
		switch {
		case today.Before(u.Last):
			ahead = append(ahead, finding.Say("%s on %s", individual(t, u), u.Last))
		case known && due.Before(today):
			out = append(out, finding.Say("%s on %s", individual(t, u), due))
		}
	}
	var found []finding.Finding
	if len(out) > 0 {
		found = append(found, CalibrationDue.At(t.FieldAt("calibration"), "the calibration ran out: %s", finding.ListOf(" and ", out)).
			WithMend("send it to calibration, and write the new day as its last"))
	}
	if len(ahead) > 0 {
		found = append(found, CalibrationDue.At(t.FieldAt("calibration"), "calibrated on a day that has not come: %s", finding.ListOf(" and ", ahead)).
			WithMend("write a day that has come, as year, month and day: 2026-03-02"))
	}
	return found
}

// individual is a tool's name, or that of one of several.
func individual(t *model.Tool, u model.DatedUnit) string {
	if u.Name == "" {
		return t.Label()
	}
	return u.Name
}

// DueOf is the last day of a calibration that was done on a day. It is false
// where the time between two is not known.
func DueOf(every quantity.Quantity, last model.Date) (model.Date, bool) {
	span, ok := every.Span()
	if !ok || last.IsZero() || every.Base() <= 0 {
		return model.Date{}, false
	}
	return model.DateOf(span.AddTo(last.Time())), true
}
