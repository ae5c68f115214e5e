package syntax

import (
	"strings"
	"unicode/utf8"

	"golang.org/x/text/unicode/bidi"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
)

// StraySign is told once a file, at its first place.
var StraySign = finding.Rule{
	Code:  "stray-sign",
	Level: finding.Advice,
	Ours:  true,
	Title: "A sign that no reader sees, or that was lost",
	Why:   "A control character comes along with a copied text: it is printed as a box or as nothing, and other programs end the text there. A sign that turns letters round shows people another text than the one that is checked. Where a sign was lost, it may have been the ± of a limit or the µ of a unit.",
	Mend:  "Take it out, and write what belongs there: ± µ ° Ω and – are lost most often.",
}

// stray looks for the first sign in a file that steers what shows it, or stands
// for one that was lost. Marks of direction (U+200E, U+200F, U+061C), joiners, the
// soft hyphen and variation selectors belong to right text. So do the signs that
// take a piece out of the order around it where the line has letters that are
// written from right to left and each of them is ended in it, as the Unicode
// Bidirectional Algorithm (UAX #9, from memory) has them; those that override the
// letters' own direction do not.
func stray(f *position.File) []finding.Finding {
	judged := 0 // up to here, line by line, what turns letters round is ended
	for i := 0; i < len(f.Text); {
		if c := f.Text[i]; c >= ' ' && c < 0x7f || c == '\n' || c == '\t' {
			i++
			continue
		}
		r, size := utf8.DecodeRuneInString(f.Text[i:])
		at := f.At(i, i+size)
		switch {
		case finding.IsControl(r):
			return []finding.Finding{StraySign.At(at, "a control character (U+%04X), which no reader sees", r).
				WithMend("take it out; it may have come along with a copied text")}
		case r == utf8.RuneError:
			return []finding.Finding{StraySign.At(at, "a sign was lost here (U+FFFD)").
				WithMend("write what stood here: ± µ ° Ω and – are lost most often")}
		case turns(r) && i >= judged:
			from, end := lineAround(f.Text, i)
			if !wellTurned(f.Text[from:end]) {
				return []finding.Finding{StraySign.At(at, "a sign that nobody sees (U+%04X) changes the order in which what follows it is shown", r).
					WithMend("take it out: people read another text than stands here")}
			}
			judged = end
		}
		i += size
	}
	return nil
}

// The signs of UAX #9 that change an order, and those that end it.
const (
	turnedLeft     = '\u202A' // left-to-right embedding
	turnedRight    = '\u202B' // right-to-left embedding
	turnEnded      = '\u202C'
	overridesLeft  = '\u202D'
	overridesRight = '\u202E'
	apartLeft      = '\u2066' // left-to-right isolate
	apartRight     = '\u2067' // right-to-left isolate
	apartAsFirst   = '\u2068' // first strong isolate
	apartEnded     = '\u2069'
)

func turns(r rune) bool {
	return r >= turnedLeft && r <= overridesRight || r >= apartLeft && r <= apartEnded
}

// lineAround is where the line of a place begins and ends.
func lineAround(text string, at int) (from, end int) {
	from = strings.LastIndexByte(text[:at], '\n') + 1
	return from, from + len(firstLine(text[from:]))
}

// wellTurned says that what changes the order in a line is ended in it, in turn,
// and that the line has letters for which it is needed.
func wellTurned(line string) bool {
	var ends []rune
	for _, r := range line {
		switch r {
		case overridesLeft, overridesRight:
			return false
		case turnedLeft, turnedRight:
			ends = append(ends, turnEnded)
		case apartLeft, apartRight, apartAsFirst:
			ends = append(ends, apartEnded)
		case turnEnded, apartEnded:
			if len(ends) == 0 || ends[len(ends)-1] != r {
				return false
			}
			ends = ends[:len(ends)-1]
		}
	}
	return len(ends) == 0 && strings.ContainsFunc(line, fromRight)
}

// fromRight says that a letter is of a script that is written from right to left.
func fromRight(r rune) bool {
	class, _ := bidi.LookupRune(r)
	return class.Class() == bidi.R || class.Class() == bidi.AL
}
