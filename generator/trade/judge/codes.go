package judge

import (
	"errors"
	"slices"
	"strings"

	"baybinder/generator/bind"
	"baybinder/generator/finding"
	"baybinder/generator/manual"
	"baybinder/generator/source"
	"baybinder/generator/trade/chemical"
	"baybinder/generator/trade/faultcode"
	"baybinder/generator/trade/refused"
)

// These findings are of the rule unknown-reference: codes that name nothing.

// knownStatements looks for the codes of a supply that are no hazard statement.
func knownStatements(s *manual.Supply) []finding.Finding {
	var found []finding.Finding
	for _, code := range s.GHS {
		_, err := chemical.Find(code)
		found = append(found, unknownCode(err, s.At, "ghs")...)
	}
	return found
}

// faultCodes looks for what is announced as a fault code and is none, in the
// words of a procedure; each is told once, where it first stands.
func faultCodes(p *manual.Procedure) []finding.Finding {
	var found []finding.Finding
	told := map[string]bool{}
	for _, t := range textsOf(p) {
		for _, f := range faultcode.Find(t.text) {
			word := t.text[f.Start:f.End]
			if f.Err != nil && !told[word] {
				told[word] = true
				found = append(found, unknownCode(f.Err, placeIn(t.at, word), "fault code")...)
			}
		}
	}
	return found
}

func unknownCode(err error, at source.Pos, what string) []finding.Finding {
	var bad *refused.Error
	if !errors.As(err, &bad) {
		return nil
	}
	return []finding.Finding{bind.UnknownReference.At(at, "%s: %v", what, bad).WithMend("%s", bad.Mend())}
}

// passage is a text of a procedure, and where it stands.
type passage struct {
	text string
	at   source.Pos
}

// textsOf are the texts of a procedure in which codes are looked for. Symptoms
// and other names have no place of their own: they stand in the front matter.
func textsOf(p *manual.Procedure) []passage {
	front := p.File.At(0, len(p.File.Text))
	var out []passage
	for _, text := range slices.Concat([]string{p.Title, p.Summary}, p.AlsoCalled, p.Symptoms) {
		out = append(out, passage{text, front})
	}
	for _, b := range blocksOf(p) {
		out = append(out, passage{b.Plain, b.At})
	}
	return out
}

// placeIn is where a word stands within a place, or the place.
func placeIn(at source.Pos, word string) source.Pos {
	i := strings.Index(at.Text(), word)
	if i < 0 {
		return at
	}
	return at.Part(i, i+len(word))
}
