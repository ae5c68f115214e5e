package judge

import (
	"errors"
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
// words of a procedure; each is told once, where it first stands. Symptoms and
// other names have no place of their own: they stand in the front matter.
func faultCodes(p *manual.Procedure) []finding.Finding {
	c := codeReader{}
	front := p.File.At(0, len(p.File.Text))
	for _, list := range [][]string{{p.Title, p.Summary}, p.AlsoCalled, p.Symptoms} {
		for _, text := range list {
			c.read(text, front)
		}
	}
	for b := range blocksOf(p) {
		c.read(b.Plain, b.At)
	}
	return c.found
}

// codeReader gathers what is no fault code.
type codeReader struct {
	found []finding.Finding
	told  map[string]bool
}

func (c *codeReader) read(text string, at source.Pos) {
	for _, f := range faultcode.Find(text) {
		word := text[f.Start:f.End]
		if f.Err == nil || c.told[word] {
			continue
		}
		if c.told == nil {
			c.told = map[string]bool{}
		}
		c.told[word] = true
		c.found = append(c.found, unknownCode(f.Err, placeIn(at, word), "fault code")...)
	}
}

func unknownCode(err error, at source.Pos, what string) []finding.Finding {
	var bad *refused.Error
	if !errors.As(err, &bad) {
		return nil
	}
	return []finding.Finding{bind.UnknownReference.At(at, "%s: %v", what, bad).WithMend("%s", bad.Mend())}
}

// placeIn is where a word stands within a place, or the place.
func placeIn(at source.Pos, word string) source.Pos {
	i := strings.Index(at.Text(), word)
	if i < 0 {
		return at
	}
	return at.Part(i, i+len(word))
}
