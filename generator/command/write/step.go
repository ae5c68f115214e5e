package write

import (
	"regexp"
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

// marker is what a step's first line begins with: indent, number, sign, spaces.
var marker = regexp.MustCompile(`^([ \t]*)(\d{1,9})([.)])([ \t]{1,4}|$)`)

// findStep is the step of a number; nil where there is none.
func findStep(p *model.Procedure, number string) *model.Step {
	for _, s := range p.Steps {
		if s.Number == number {
			return s
		}
	}
	return nil
}

// place is where a piece of a procedure's text stands, and how far its lines
// are set in.
type place struct {
	start, end int // bytes
	indent     int // of the marker
	width      int // of the lines behind the first
}

// linesOf is where a step stands with everything below it: from the beginning
// of its line to the end of its last one. It is false where the line has no
// number of its own.
func linesOf(s *model.Step) (place, bool) {
	text := s.At.File.Text
	start := strings.LastIndexByte(text[:s.At.Start], '\n') + 1
	m := marker.FindStringSubmatch(text[start:])
	if m == nil || strings.Contains(m[0], "\n") {
		return place{}, false
	}
	at := place{start: start, indent: len(m[1]), width: len(m[0])}
	if m[4] == "" {
		at.width++
	}
	at.end = at.ending(text, nextLine(s, false))
	return at, true
}

// wordsOf is where a step's own words stand: behind its number, and before its
// first sub-step.
func wordsOf(s *model.Step) (place, bool) {
	at, ok := linesOf(s)
	if !ok {
		return at, false
	}
	at.end = at.ending(s.At.File.Text, nextLine(s, true))
	at.start = min(at.start+at.width, at.end)
	return at, true
}

// nextLine is where the next thing begins that is not the step's: its own
// sub-steps count as such where within is set.
func nextLine(s *model.Step, within bool) int {
	text, next := s.At.File.Text, len(s.At.File.Text)
	note := func(offset int) {
		if line := strings.LastIndexByte(text[:offset], '\n') + 1; offset > s.At.Start && line < next && line > s.At.Start {
			next = line
		}
	}
	for _, other := range s.Of.Steps {
		if within || !below(other, s) {
			note(other.At.Start)
		}
	}
	for _, ph := range s.Of.Phases {
		note(ph.At.Start)
		for _, part := range ph.Body {
			if part.Prose != nil {
				note(part.Prose.At.Start)
			}
		}
	}
	return next
}

func below(s, above *model.Step) bool {
	for ; s != nil; s = s.Parent {
		if s == above {
			return true
		}
	}
	return false
}

// ending is the end of the last line before an offset that belongs to a step:
// what stands at the margin behind an empty line does not.
func (at place) ending(text string, limit int) int {
	end, empty := at.start, false
	for from := at.start; from < limit; {
		to := limit
		if i := strings.IndexByte(text[from:limit], '\n'); i >= 0 {
			to = from + i
		}
		switch line := text[from:to]; {
		case strings.TrimSpace(line) == "":
			empty = true
		case empty && indentOf(line) < at.width:
			return end
		default:
			end, empty = to, false
		}
		from = to + 1
	}
	return end
}

func indentOf(line string) int { return len(line) - len(strings.TrimLeft(line, " \t")) }

// outdented is a text whose lines behind the first are set in, as it reads at
// the margin.
func outdented(text string, width int) string {
	lines := strings.Split(text, "\n")
	for i := 1; i < len(lines); i++ {
		lines[i] = lines[i][min(width, indentOf(lines[i])):]
	}
	return strings.Join(lines, "\n")
}

// indented sets the lines behind the first in.
func indented(text string, width int) string {
	lines := strings.Split(text, "\n")
	for i := 1; i < len(lines); i++ {
		if strings.TrimSpace(lines[i]) == "" {
			lines[i] = ""
			continue
		}
		lines[i] = strings.Repeat(" ", width) + lines[i]
	}
	return strings.Join(lines, "\n")
}

// reworded is a step's own words as they stand in the file once they read
// otherwise: lines that stay keep every byte.
func reworded(old, text string, width int) string {
	was, now, in := strings.Split(old, "\n"), strings.Split(text, "\n"), strings.Split(indented(text, width), "\n")
	read := strings.Split(outdented(old, width), "\n")
	for i := 0; i < min(len(read), len(now)) && read[i] == now[i]; i++ {
		in[i] = was[i]
	}
	for i := 1; i < min(len(read), len(now)) && read[len(read)-i] == now[len(now)-i]; i++ {
		in[len(in)-i] = was[len(was)-i]
	}
	return strings.Join(in, "\n")
}

// cleaned is a text that somebody typed or pasted: line ends as the manual has
// them, nothing invisible at its ends, no control that ends a file elsewhere or steers
// a terminal.
func cleaned(text string) string {
	text = strings.NewReplacer("\r\n", "\n", "\r", "\n", "\u2028", "\n", "\u2029", "\n\n", "\u00a0", " ").Replace(text)
	text = strings.Map(func(r rune) rune {
		if finding.IsControl(r) {
			return -1
		}
		return r
	}, strings.ToValidUTF8(text, "\ufffd"))
	lines := strings.Split(text, "\n")
	for i := range lines {
		lines[i] = strings.TrimRight(lines[i], " \t")
	}
	return strings.TrimSpace(strings.Join(lines, "\n"))
}

// item is a text as an item of a list: its number, and its lines set in.
func item(indent, number int, sign, text string) string {
	head := strings.Repeat(" ", indent) + strconv.Itoa(number) + sign + " "
	return head + indented(text, len(head))
}

// signs are the number and the sign behind it of a step's line.
func signs(s *model.Step, at place) (number int, sign string) {
	m := marker.FindStringSubmatch(s.At.File.Text[at.start:])
	number, _ = strconv.Atoi(m[2])
	return number, m[3]
}
