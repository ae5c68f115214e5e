package write

import (
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/patch"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/syntax"
)

// Act is one thing that a writer does to a procedure.
type Act struct {
	Do    string   `json:"do"`              // a name of acts
	Step  string   `json:"step,omitempty"`  // the number of the step that it is about
	Phase string   `json:"phase,omitempty"` // the id of a phase, where there is no step
	After string   `json:"after,omitempty"` // the step, or the phase, behind which something comes
	Field string   `json:"field,omitempty"` // of the front matter
	Text  string   `json:"text,omitempty"`  // what is written
	Texts []string `json:"texts,omitempty"` // several of that
	Mend  Mend     `json:"mend,omitzero"`   // which
}

// draft is a file as it is to be.
type draft struct {
	file  *position.File // as it was; of a new file: no text
	fresh bool           // there is none yet
	text  string
	at    int // where in it the writer looks
}

// refusal says why something is not done: a word of the language tables.
type refusal string

// Error is the name of the word.
func (r refusal) Error() string { return string(r) }

// The refusals of acts.
const (
	noStep    refusal = "NoStep"    // the step is not there any more
	noWords   refusal = "NoWords"   // nothing is written
	tooLong   refusal = "TooLong"   // more than a page takes
	noPlace   refusal = "NoPlace"   // the file is written so that the program finds no safe place
	notEmpty  refusal = "NotEmpty"  // a phase that holds something is not taken out
	cannotNow refusal = "CannotNow" // what was asked cannot be done
	noPicture refusal = "NoPicture" // what was sent is no picture that a page shows
	badID     refusal = "BadID"     // no name that a file's own words can have
	idTaken   refusal = "IDTaken"   // something is called so already
	noPage    refusal = "NoPage"    // the page is no procedure's
)

// mostText is what one text may have, in bytes: a page of a document has less.
const mostText = 64 << 10

// acts are what can be done to a procedure, by name.
var acts = map[string]func(b bench, p *model.Procedure, a Act) (string, int, error){
	"words": reword, "new": addStep, "steps": addSteps, "out": takeOut, "move": move, "split": split,
	"phase": addPhase, "page": addPage, "leave": leaveSo, "expect": expect, "heading": renamePhase, "front": setField, "mend": mend,
}

// apply is a procedure's file with an act done.
func apply(b bench, p *model.Procedure, a Act) (*draft, error) {
	do, known := acts[a.Do]
	if !known {
		return nil, cannotNow
	}
	if len(a.Text) > mostText || len(a.Texts) > 200 || len(strings.Join(a.Texts, "")) > mostText {
		return nil, tooLong
	}
	text, at, err := do(b, p, a)
	if err != nil {
		return nil, err
	}
	return &draft{file: p.File, text: text, at: min(at, len(text))}, nil
}

// reword gives a step other words.
func reword(_ bench, p *model.Procedure, a Act) (string, int, error) {
	s := findStep(p, a.Step)
	if s == nil {
		return "", 0, noStep
	}
	at, ok := wordsOf(s)
	words := cleaned(a.Text)
	switch {
	case !ok:
		return "", 0, noPlace
	case words == "":
		return "", 0, noWords
	}
	old := p.File.Text[at.start:at.end]
	return p.File.Text[:at.start] + lead(p.File.Text, at.start) + reworded(old, words, at.width) + p.File.Text[at.end:], at.start, nil
}

// lead is the space between a number and its words where there is none.
func lead(text string, at int) string {
	if at > 0 && !strings.ContainsRune(" \t", rune(text[at-1])) {
		return " "
	}
	return ""
}

// slot is where a step is written, and what its number is.
type slot struct {
	at            int // byte
	before, after string
	indent        int
	number        int
	sign          string
}

// slotOf is the slot behind a step, or the first of a phase.
func slotOf(b bench, p *model.Procedure, a Act) (slot, error) {
	if a.After != "" {
		s := findStep(p, a.After)
		if s == nil {
			return slot{}, noStep
		}
		at, ok := linesOf(s)
		if !ok {
			return slot{}, noPlace
		}
		number, sign := signs(s, at)
		return slot{at: at.end, before: "\n", indent: at.indent, number: number + 1, sign: sign}, nil
	}
	ph := p.FindPhase(a.Phase)
	if ph == nil {
		return slot{}, noStep
	}
	first := b.SlotFirst(p, ph)
	return slot{at: first.At.Start, before: strings.TrimSuffix(first.Before, "1. "), after: first.After, number: 1, sign: "."}, nil
}

func (s slot) put(text string, items ...string) (string, int, error) {
	return text[:s.at] + s.before + strings.Join(items, "\n") + s.after + text[s.at:], s.at + len(s.before) + s.indent, nil
}

// addStep writes a step behind another, or as the first of a phase.
func addStep(b bench, p *model.Procedure, a Act) (string, int, error) {
	a.Texts = []string{a.Text}
	return addSteps(b, p, a)
}

// addSteps writes several, and looks at the last.
func addSteps(b bench, p *model.Procedure, a Act) (string, int, error) {
	s, err := slotOf(b, p, a)
	if err != nil {
		return "", 0, err
	}
	items := s.items(a.Texts)
	if len(items) == 0 {
		return "", 0, noWords
	}
	text, at, err := s.put(p.File.Text, items...)
	return text, at + lastOf(items), err
}

// lastOf is how far the last of some lines stands behind the first.
func lastOf(items []string) int {
	return len(strings.Join(items[:len(items)-1], "\n")) + min(1, len(items)-1)
}

// addPage writes a page that was pasted: its lines are steps behind a place, and
// from a line that begins with ## on, which is a heading of it, those of a new
// phase behind that place's.
func addPage(b bench, p *model.Procedure, a Act) (string, int, error) {
	first := slices.IndexFunc(a.Texts, isHeading)
	if first < 0 {
		return addSteps(b, p, a)
	}
	text, at, err := addPhases(p, a, a.Texts[first:])
	if err != nil || len(strings.TrimSpace(strings.Join(a.Texts[:first], ""))) == 0 {
		return text, at, err
	}
	s, err := slotOf(b, p, a)
	if err != nil {
		return "", 0, err
	}
	items := s.items(a.Texts[:first])
	text, at, err = s.put(text, items...) // it stands before the phases: up to there the text is as it was
	return text, at + lastOf(items), err
}

func isHeading(text string) bool { return strings.HasPrefix(text, "## ") }

// addPhases writes phases with their steps behind the phase of a place. A name
// that the procedure has already gets a number.
func addPhases(p *model.Procedure, a Act, texts []string) (string, int, error) {
	behind, taken := a.Phase, map[string]bool{}
	if s := findStep(p, a.After); s != nil {
		behind = s.Phase.ID
	}
	for _, ph := range p.Phases {
		taken[ph.ID] = true
	}
	var out []string
	n := 0
	for _, text := range texts {
		if name := heading(text); isHeading(text) && name != "" {
			of := name
			for i := 2; taken[syntax.PhaseID(of)]; i++ {
				of = name + " " + strconv.Itoa(i)
			}
			taken[syntax.PhaseID(of)], n = true, 0
			out = append(out, of+"\n")
		} else if words := cleaned(text); words != "" && len(out) > 0 {
			n++
			out[len(out)-1] += "\n" + item(0, n, ".", words)
		}
	}
	if len(out) == 0 {
		return "", 0, noWords
	}
	a.After = behind
	return putPhase(p, a, strings.Join(out, "\n\n## "))
}

// items are texts as the steps of a place, those that are empty left out.
func (s slot) items(texts []string) []string {
	var out []string
	for _, text := range texts {
		if words := cleaned(text); words != "" {
			out = append(out, item(s.indent, s.number+len(out), s.sign, words))
		}
	}
	return out
}

// cut is a text without some of its lines; of the empty lines around them one
// side goes too.
func cut(text string, from, to int) string {
	head, tail := text[:from], strings.TrimPrefix(text[to:], "\n")
	switch {
	case strings.HasSuffix(head, "\n\n") && strings.HasPrefix(tail, "\n"):
		tail = tail[1:]
	case strings.HasSuffix(head, "\n\n") && tail == "":
		head = head[:len(head)-1]
	}
	return head + tail
}

// inherited is a procedure's text in which the sub-step behind the first one has
// the number of that: once the first is gone it is a list under words, and only
// one that begins with 1 is one there. Where space stands between them no number
// changes.
func inherited(p *model.Procedure, s *model.Step) string {
	text := p.File.Text
	if s.Parent == nil || len(s.Parent.Subs) < 2 || s.Parent.Subs[0] != s {
		return text
	}
	from, ok := linesOf(s)
	to, also := linesOf(s.Parent.Subs[1])
	if !ok || !also || strings.HasSuffix(text[:from.start], "\n\n") {
		return text
	}
	was, now := marker.FindStringSubmatch(text[to.start:]), marker.FindStringSubmatch(text[from.start:])
	if len(now[2]) > len(was[2]) {
		return text
	}
	at := to.start + len(was[1])
	return text[:at] + now[2] + was[3] + strings.Repeat(" ", len(was[2])-len(now[2])) + text[at+len(was[2]+was[3]):]
}

// takeOut takes a step out with what is below it, or a phase that is empty.
func takeOut(_ bench, p *model.Procedure, a Act) (string, int, error) {
	if a.Step == "" {
		return takePhaseOut(p, a)
	}
	s := findStep(p, a.Step)
	if s == nil {
		return "", 0, noStep
	}
	at, ok := linesOf(s)
	if !ok {
		return "", 0, noPlace
	}
	return cut(inherited(p, s), at.start, at.end), at.start, nil
}

func takePhaseOut(p *model.Procedure, a Act) (string, int, error) {
	ph := p.FindPhase(a.Phase)
	if ph == nil {
		return "", 0, noStep
	}
	if len(ph.Steps) > 0 || len(ph.Body) > 0 || ph.Lead != nil {
		return "", 0, notEmpty
	}
	at, ok := headingOf(ph)
	if !ok {
		return "", 0, noPlace
	}
	return cut(p.File.Text, at.start, at.end), at.start, nil
}

// move puts a step with what is below it behind another, or first in a phase.
// Steps keep their level: a sub-step moves among its like.
func move(b bench, p *model.Procedure, a Act) (string, int, error) {
	s := findStep(p, a.Step)
	if s == nil {
		return "", 0, noStep
	}
	if behind := findStep(p, a.After); a.After != "" && (behind == nil || below(behind, s) || (behind.Parent == nil) != (s.Parent == nil)) ||
		a.After == "" && s.Parent != nil {
		return "", 0, cannotNow
	}
	from, ok := linesOf(s)
	if !ok {
		return "", 0, noPlace
	}
	to, err := slotOf(b, p, a)
	if err != nil {
		return "", 0, err
	}
	now := inherited(p, s)
	words := outdented(now[from.start+from.width:from.end], from.width)
	moved := item(to.indent, to.number, to.sign, words)
	if to.at <= from.start {
		text, at, _ := to.put(cut(now, from.start, from.end), moved)
		return text, at, nil
	}
	text, at, _ := to.put(now, moved)
	without := cut(text, from.start, from.end)
	return without, at - (len(text) - len(without)), nil
}

// split makes sub-steps of what stands in a step behind its first line, or
// where it is one line behind its first sentence.
func split(_ bench, p *model.Procedure, a Act) (string, int, error) {
	s := findStep(p, a.Step)
	if s == nil {
		return "", 0, noStep
	}
	at, ok := wordsOf(s)
	if !ok {
		return "", 0, noPlace
	}
	words := cleaned(a.Text)
	if words == "" {
		words = outdented(p.File.Text[at.start:at.end], at.width)
	}
	first, rest, _ := strings.Cut(words, "\n\n")
	parts := slices.DeleteFunc(strings.Split(first, "\n"), func(l string) bool { return strings.TrimSpace(l) == "" })
	if len(parts) < 2 {
		parts = sentences(first)
	}
	if len(parts) < 2 || len(s.Subs) > 0 {
		return "", 0, cannotNow
	}
	now := parts[0]
	for i, part := range parts[1:] {
		now += "\n" + item(0, i+1, ".", part)
	}
	if rest != "" {
		now += "\n\n" + rest
	}
	return p.File.Text[:at.start] + reworded(p.File.Text[at.start:at.end], now, at.width) + p.File.Text[at.end:], at.start, nil
}

// sentences are those of a paragraph. A point in a link's address, or one that
// no capital follows, ends none.
func sentences(text string) []string {
	var out []string
	from, depth := 0, 0
	for i, r := range text {
		switch r {
		case '(', '[':
			depth++
		case ')', ']':
			depth--
		case ' ':
			before := strings.TrimRight(text[from:i], "*_)")
			if depth == 0 && strings.HasSuffix(before, ".") && capitalAt(text[i+1:]) {
				out = append(out, text[from:i])
				from = i + 1
			}
		}
	}
	return append(out, text[from:])
}

func capitalAt(text string) bool {
	text = strings.TrimLeft(text, "[*_¿¡")
	return text != "" && strings.ToLower(text[:1]) != text[:1]
}

// headingOf is the line of a phase's heading.
func headingOf(ph *model.Phase) (place, bool) {
	text := ph.At.File.Text
	start := strings.LastIndexByte(text[:ph.At.Start], '\n') + 1
	end := len(text)
	if i := strings.IndexByte(text[start:], '\n'); i >= 0 {
		end = start + i
	}
	return place{start: start, end: end}, strings.HasPrefix(text[start:], "## ")
}

// heading is a phase's name as it is written; "" for one that would have no id.
func heading(name string) string {
	name = strings.Trim(strings.Join(strings.Fields(cleaned(name)), " "), "# ")
	if syntax.PhaseID(name) == "" {
		return ""
	}
	return strings.NewReplacer("<", `\<`, "`", "'").Replace(name)
}

// addPhase writes a heading behind a phase, or at the end.
func addPhase(_ bench, p *model.Procedure, a Act) (string, int, error) {
	name := heading(a.Text)
	if name == "" {
		return "", 0, noWords
	}
	return putPhase(p, a, name)
}

// putPhase writes a heading, and what stands under it, behind a phase.
func putPhase(p *model.Procedure, a Act, name string) (string, int, error) {
	text, at := p.File.Text, len(p.File.Text)
	if i := slices.IndexFunc(p.Phases, func(ph *model.Phase) bool { return ph.ID == a.After }); i >= 0 && i+1 < len(p.Phases) {
		next, ok := headingOf(p.Phases[i+1])
		if !ok {
			return "", 0, noPlace
		}
		return text[:next.start] + "## " + strings.TrimRight(name, "\n") + "\n\n" + text[next.start:], next.start, nil
	}
	before := "\n\n"
	switch {
	case strings.HasSuffix(text, "\n\n"):
		before = ""
	case strings.HasSuffix(text, "\n"):
		before = "\n"
	}
	return text + before + "## " + strings.TrimRight(name, "\n") + "\n", at + len(before), nil
}

// renamePhase gives a phase another name. What names it by its old one moves
// with it.
func renamePhase(_ bench, p *model.Procedure, a Act) (string, int, error) {
	ph := p.FindPhase(a.Phase)
	if ph == nil {
		return "", 0, noStep
	}
	at, ok := headingOf(ph)
	name := heading(a.Text)
	switch {
	case !ok:
		return "", 0, noPlace
	case name == "":
		return "", 0, noWords
	}
	pieces := []patch.Piece{{At: at.start, Cut: at.end - at.start, Text: "## " + name}}
	for _, l := range p.Links() {
		if l.Kind.Act == model.Reverse && l.Phase() == ph {
			if i := strings.LastIndex(l.At.Text(), "reverse:"+l.ID); i >= 0 {
				pieces = append(pieces, patch.Piece{At: l.At.Start + i + len("reverse:"), Cut: len(l.ID), Text: syntax.PhaseID(name)})
			}
		}
	}
	return patch.Applied(p.File, pieces).Text, at.start, nil
}
