package page

import (
	"fmt"

	"baybinder/generator/derive/schedule"
	"baybinder/generator/model"
)

// Sheet is one procedure in a list.
type Sheet struct {
	Link
	Word    string // greatest signal word, calls included
	Class   string
	Time    string
	Tongues []Link // the page in other languages, Note the language's code
}

// sheet is the line of a procedure in a list.
func (s *Site) sheet(p *model.Procedure) Sheet {
	k := s.Kits.Of(p)
	word := Greatest(k.Hazards).String()
	sheet := Sheet{Link: s.Link("", p), Word: s.Words.Signal(word), Class: word, Time: s.BayTime(p)}
	for _, t := range s.Tongues("", p) {
		if !t.Current {
			sheet.Tongues = append(sheet.Tongues, Link{Name: t.Name, Address: t.Address, Note: t.Language})
		}
	}
	return sheet
}

// TopicName is the heading of a topic.
func (s *Site) TopicName(topic string) string {
	if topic == "" {
		return s.Words.Procedures
	}
	return Titled(topic)
}

// Spanned is a time in the bay: that of the rows, or their shortest to their
// longest; "" where no step has a time.
func (s *Site) Spanned(rows []schedule.Row) string {
	switch least, most := schedule.Range(rows); {
	case most == 0:
		return ""
	case least < most:
		return fmt.Sprintf(s.Speaks.TimeLine.Range, Duration(least), Duration(most))
	default:
		return Duration(most)
	}
}
