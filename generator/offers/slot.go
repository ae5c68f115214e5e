package offers

import (
	"regexp"
	"strconv"
	"strings"

	"baybinder/generator/base/position"
	"baybinder/generator/model"
)

// Slot is a place where a step can be written: the bytes that its text takes
// the place of, and what must stand around it.
type Slot struct {
	Procedure     *model.Procedure
	Phase         *model.Phase
	At            position.Pos // mostly empty
	Before, After string       // "\n4. ", ""
	done          int          // steps that are done before it
}

// marker is what a step's first line begins with.
var marker = regexp.MustCompile(`^([ \t]*)(\d{1,9})([.)])([ \t]+|$)`)

// unfinished is what may stand in a step that is only being begun: words
// without a link.
var unfinished = regexp.MustCompile(`^[\p{L}\p{N}\p{P} \t]*$`)

// SlotAt is the slot of the line at an offset: a numbered line that holds no
// more than the beginning of its words, or an empty line below a step.
func (b *Bench) SlotAt(path string, offset int) (Slot, bool) {
	p := b.Procedure(path)
	if p == nil || p.Language != "" || offset < 0 || offset > len(p.File.Text) {
		return Slot{}, false
	}
	start, end := lineAround(p.File.Text, offset)
	line := p.File.Text[start:end]
	if m := marker.FindString(line); m != "" && offset >= start+len(m) {
		return slotInLine(p, start, start+len(m), end)
	}
	if strings.TrimSpace(line) != "" {
		return Slot{}, false
	}
	return slotBelow(p, start, end)
}

// slotInLine is the slot of a step that is being begun.
func slotInLine(p *model.Procedure, line, start, end int) (Slot, bool) {
	text := p.File.Text[start:end]
	if strings.ContainsAny(text, "[]()<>`*_") || !unfinished.MatchString(text) {
		return Slot{}, false
	}
	for _, s := range p.Steps {
		if from, _ := lineAround(p.File.Text, s.At.Start); from == line && len(s.Subs) == 0 {
			slot := Slot{Procedure: p, Phase: s.Phase, At: p.File.At(start, end), done: s.Done - 1}
			if start > 0 && p.File.Text[start-1] != ' ' && p.File.Text[start-1] != '\t' {
				slot.Before = " "
			}
			return slot, true
		}
	}
	return Slot{}, false
}

// slotBelow is the slot of an empty line: a step after the one above it.
func slotBelow(p *model.Procedure, start, end int) (Slot, bool) {
	var above *model.Step
	for _, ph := range p.Phases {
		if ph.At.Start > start {
			break
		}
		above = nil
		for _, s := range ph.Steps {
			if s.At.Start < start {
				above = s
			}
		}
	}
	if above == nil || strings.TrimSpace(p.File.Text[ending(above):start]) != "" {
		return Slot{}, false
	}
	slot, ok := behind(above)
	slot.At, slot.Before = p.File.At(start, end), strings.TrimPrefix(slot.Before, "\n")
	return slot, ok
}

// SlotAfter is the slot behind a step and its sub-steps, on its level.
func (b *Bench) SlotAfter(s *model.Step) (Slot, bool) { return behind(s) }

func behind(s *model.Step) (Slot, bool) {
	text := s.At.File.Text
	start, lineEnd := lineAround(text, s.At.Start)
	m := marker.FindStringSubmatch(text[start:lineEnd])
	if m == nil {
		return Slot{}, false
	}
	number, _ := strconv.Atoi(m[2])
	_, end := lineAround(text, ending(s))
	return Slot{
		Procedure: s.Of, Phase: s.Phase, At: s.At.File.At(end, end),
		Before: "\n" + m[1] + strconv.Itoa(number+1) + m[3] + " ", done: s.Done,
	}, true
}

// SlotFirst is the slot of the first step of a phase, before those that it has.
func (b *Bench) SlotFirst(p *model.Procedure, ph *model.Phase) Slot {
	slot := Slot{Procedure: p, Phase: ph, done: doneBefore(p, ph)}
	if len(ph.Steps) > 0 {
		start, _ := lineAround(p.File.Text, ph.Steps[0].At.Start)
		slot.At, slot.Before, slot.After = p.File.At(start, start), "1. ", "\n"
		return slot
	}
	from := ph.At.Start
	if ph.Lead != nil {
		from = max(from, ph.Lead.At.End-1)
	}
	_, end := lineAround(p.File.Text, from)
	slot.At, slot.Before = p.File.At(end, end), "\n\n1. "
	if rest := p.File.Text[end:]; strings.TrimSpace(rest) != "" && !strings.HasPrefix(rest, "\n\n") {
		slot.After = "\n"
	}
	return slot
}

// doneBefore is how many steps stand in the phases before one.
func doneBefore(p *model.Procedure, ph *model.Phase) int {
	n := 0
	for _, s := range p.Steps {
		if s.Phase.At.Start < ph.At.Start {
			n = max(n, s.Done)
		}
	}
	return n
}

// ending is the last byte of what belongs to a step, its sub-steps included.
func ending(s *model.Step) int {
	end := s.At.Start
	for _, b := range s.Blocks {
		end = max(end, b.At.End)
	}
	for _, sub := range s.Subs {
		end = max(end, ending(sub))
	}
	for end > s.At.Start && (s.At.File.Text[end-1] == '\n' || s.At.File.Text[end-1] == ' ') {
		end--
	}
	return end
}

// lineAround is where the line of an offset begins and ends, its end of line
// left out.
func lineAround(text string, offset int) (start, end int) {
	start = strings.LastIndexByte(text[:offset], '\n') + 1
	if i := strings.IndexByte(text[offset:], '\n'); i >= 0 {
		return start, offset + i
	}
	return start, len(text)
}
