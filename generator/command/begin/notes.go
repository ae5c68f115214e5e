package begin

import (
	"cmp"
	"fmt"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"baybinder/generator/model"
	"baybinder/generator/read/edit"
	"baybinder/generator/read/jotting"
)

// Noted is what became of notes.
type Noted struct {
	Path    string
	Acts    int // words that became acts
	Things  int // words that became other links
	Steps   int
	Words   []Line // steps in which no act was recognised, as they stand
	Offered []Line // what words could be, and the writer decides
}

// Line is a line of the notes, from 1, and what is said of it.
type Line struct {
	N    int
	Says finding.Words
}

// Notes writes a procedure from notes or from an old procedure in a file, as a
// draft. Words that are certain become links, every other word stays as it
// stands.
func Notes(n New, file string) (Noted, error) {
	text, err := readNotes(file)
	if err != nil {
		return Noted{}, err
	}
	said, text, err := NotesText(n, text)
	if err != nil {
		return Noted{}, err
	}
	return said, n.write(text)
}

// NotesText is what Notes writes from a text, unwritten.
func NotesText(n New, notes string) (Noted, string, error) {
	_, m, err := n.read()
	if err != nil {
		return Noted{}, "", err
	}
	draft := draftOf(n, m, notes)
	draft.Path = n.path()
	return draft.Noted, draft.text.String(), nil
}

// readNotes reads a file of plain text.
func readNotes(file string) (string, error) {
	data, err := os.ReadFile(file)
	switch {
	case err != nil:
		return "", finding.Refuse("the notes cannot be read: %s", err)
	case !utf8.Valid(data) || slices.Contains(data, 0):
		return "", finding.Refuse("%s is no plain text in UTF-8: save the document as plain text or Markdown first", file)
	case len(strings.TrimSpace(string(data))) == 0:
		return "", finding.Refuse("%s is empty", file)
	}
	return string(data), nil
}

// draft is a procedure that is written from notes.
type draft struct {
	Noted
	text    strings.Builder
	manual  *model.Manual
	machine *model.Machine
	words   *shape.Language
	phases  map[string]int // how often a heading was there

	tools, supplies []string
	amounts         map[string]string // of supplies
}

func draftOf(n New, m *model.Manual, text string) *draft {
	d := &draft{manual: m, machine: model.ByID(m.Machines, n.Machine), words: language.Of(m.Shop.Language), phases: map[string]int{}, amounts: map[string]string{}}
	laid := jotting.Lay(text, jotting.New(m, d.machine, tagOf(m)))
	var body strings.Builder
	d.prose(&body, laid.Intro)
	for _, ph := range laid.Phases {
		d.phase(&body, ph)
	}
	d.head(cmp.Or(n.Title, laid.Title), n)
	d.text.WriteString(body.String())
	return d
}

// tagOf is the language that a manual's procedures are written in.
func tagOf(m *model.Manual) string { return cmp.Or(m.Shop.Language, language.Default().Code) }

// head writes the front matter.
func (d *draft) head(title string, n New) {
	fmt.Fprintf(&d.text, "---\ntitle: %s\n", yamlText(titleOf(title, n.ID)))
	if n.Machine != "" {
		fmt.Fprintf(&d.text, "for: %s\n", n.Machine)
	}
	d.text.WriteString("status: draft\n")
	if len(d.tools) > 0 {
		fmt.Fprintf(&d.text, "tools: [%s]\n", strings.Join(d.tools, ", "))
	}
	var supplies []string
	for _, id := range d.supplies {
		if amount := d.amounts[id]; amount != "" {
			supplies = append(supplies, id+": "+amount)
		}
	}
	if len(supplies) > 0 {
		fmt.Fprintf(&d.text, "supplies: [%s]\n", strings.Join(supplies, ", "))
	}
	d.text.WriteString("---\n")
}

// phase writes a heading and its steps. A heading that was there already gets
// a number: two phases may not have one id.
func (d *draft) phase(b *strings.Builder, ph *jotting.Phase) {
	title := cmp.Or(ph.Title, d.words.Speech.Work)
	key := strings.ToLower(title)
	if d.phases[key]++; d.phases[key] > 1 {
		title += " " + strconv.Itoa(d.phases[key])
	}
	fmt.Fprintf(b, "\n## %s\n", plainMarkdown(title))
	d.prose(b, ph.Prose)
	b.WriteByte('\n')
	for i, s := range ph.Steps {
		d.step(b, s, strconv.Itoa(i+1)+". ", "")
	}
}

// prose writes what stands outside steps: paragraphs, lists, tables.
func (d *draft) prose(b *strings.Builder, list []jotting.Piece) {
	for i := range list {
		p := &list[i]
		if i == 0 || p.Apart || shapeOf(p) != shapeOf(&list[i-1]) {
			b.WriteByte('\n')
		}
		b.WriteString(d.line(p) + "\n")
	}
}

// shapeOf is what kind of Markdown a line is: lines of one kind stand together.
func shapeOf(p *jotting.Piece) string {
	switch {
	case p.Bullet:
		return "bullet"
	case strings.HasPrefix(p.Text, "|"):
		return "table"
	}
	return "words"
}

// step writes a step, its other lines below it, and its sub-steps.
func (d *draft) step(b *strings.Builder, s *jotting.Step, marker, indent string) {
	below := indent + strings.Repeat(" ", len(marker))
	d.Steps++
	pieces := s.Pieces
	first := max(0, slices.IndexFunc(pieces, func(p jotting.Piece) bool { return p.Signal == "" }))
	order := append([]jotting.Piece{pieces[first]}, slices.Delete(slices.Clone(pieces), first, first+1)...)
	acts := 0
	for i := range order {
		p := &order[i]
		acts += d.count(p)
		switch {
		case i == 0:
			b.WriteString(indent + marker + d.line(p) + "\n")
			continue
		case p.Apart || shapeOf(p) != shapeOf(&order[i-1]) || p.Signal != "" || order[i-1].Signal != "":
			b.WriteByte('\n')
		}
		b.WriteString(below + d.line(p) + "\n")
	}
	if acts == 0 && len(s.Subs) == 0 {
		d.Words = append(d.Words, Line{pieces[first].Line + 1, finding.Say("%s", pieces[first].Text)})
	}
	for i, sub := range s.Subs {
		if i == 0 {
			b.WriteByte('\n')
		}
		d.step(b, sub, strconv.Itoa(i+1)+". ", below)
	}
}

// count notes what was recognised in a piece of a step, and says how many acts
// it has.
func (d *draft) count(p *jotting.Piece) (acts int) {
	for _, l := range p.Links {
		if l.Act {
			acts++
		} else {
			d.Things++
		}
	}
	d.Acts += acts
	for _, o := range p.Offers {
		if acts == 0 && len(o.Addresses) == 0 {
			continue // the step is told as words only
		}
		d.Offered = append(d.Offered, Line{p.Line + 1, offerText(p.Text[o.Start:o.End], o)})
	}
	return acts
}

func offerText(words string, o jotting.Offer) finding.Words {
	if len(o.Addresses) == 0 {
		return finding.Say("%q: %s", words, finding.Say(o.Why))
	}
	var links []string
	for _, a := range o.Addresses {
		links = append(links, "["+words+"]("+a+")")
	}
	return finding.Say("%s, %s?", finding.Say(o.Why), finding.ListOf(" or ", links))
}

// line is a line of the notes as Markdown, with its links.
func (d *draft) line(p *jotting.Piece) string {
	d.list(p)
	var b strings.Builder
	if p.Bullet {
		b.WriteString("- ")
	}
	if p.Signal != "" {
		b.WriteString(d.toChoose(p))
	}
	at := 0
	for _, l := range p.Links {
		b.WriteString(plainMarkdown(p.Text[at:l.Start]))
		b.WriteString("[" + brackets(p.Text[l.Start:l.End]) + "](" + l.Address() + ")")
		at = l.End
	}
	b.WriteString(plainMarkdown(p.Text[at:]))
	return startOfLine(closedCode(strings.TrimRight(b.String(), " ")), p)
}

// closedCode keeps a backtick that has no other in its line from finding one in
// another.
func closedCode(line string) string {
	if strings.Contains(line, "```") || strings.Count(line, "`")%2 == 1 {
		return strings.ReplaceAll(line, "`", "\\`")
	}
	return line
}

// toChoose is what stands in place of a typed signal word: the word follows
// from the hazard that the writer chooses.
func (d *draft) toChoose(p *jotting.Piece) string {
	var offers []string
	for _, h := range jotting.Hazards(d.manual, d.machine, p.Text, tagOf(d.manual)) {
		offers = append(offers, "["+edit.LinkText(h.Label())+"](hazard:"+h.ID+")")
	}
	said := finding.Say("a hazard to choose, with the word %s in front of it", p.Signal)
	if len(offers) > 0 {
		said = finding.Say("%s: %s", said, finding.ListOf(" or ", offers))
	}
	d.Offered = append(d.Offered, Line{p.Line + 1, said})
	choose := fmt.Sprintf(d.words.Jotted.ToChoose, p.Signal)
	if p.Text == "" {
		return choose + "."
	}
	return choose + ": "
}

var (
	tagLike  = regexp.MustCompile(`<([a-zA-Z/!?])`)
	linkLike = regexp.MustCompile(`!?\[[^\]]*\]\([^)]*\)`)
	listLike = regexp.MustCompile(`^(?:[#>+=~-]|\d+[.)])`)
)

// plainMarkdown is a text with nothing in it that would become HTML or a link by
// accident.
func plainMarkdown(text string) string {
	var b strings.Builder
	at := 0
	for _, m := range linkLike.FindAllStringIndex(text, -1) {
		b.WriteString(brackets(text[at:m[0]]))
		b.WriteString(text[m[0]:m[1]])
		at = m[1]
	}
	b.WriteString(brackets(text[at:]))
	return b.String()
}

func brackets(text string) string {
	return strings.NewReplacer("[", `\[`, "]", `\]`).Replace(tagLike.ReplaceAllString(text, `\<$1`))
}

// startOfLine keeps a line's first sign from making a list or a heading of it.
func startOfLine(line string, p *jotting.Piece) string {
	if p.Bullet || !listLike.MatchString(line) {
		return line
	}
	if i := strings.IndexAny(line, ".)"); line[0] >= '0' && line[0] <= '9' {
		return line[:i] + `\` + line[i:]
	}
	return `\` + line
}

// list notes the tools and supplies of a line for the front matter.
func (d *draft) list(p *jotting.Piece) {
	for _, l := range p.Links {
		switch l.Kind {
		case model.LinkTool, "place", "clear":
			d.tools = with(d.tools, l.ID)
		case "supply":
			d.supplies = with(d.supplies, l.ID)
			if amount := d.amount(p.Text[:l.Start], l.ID); amount != "" {
				d.amounts[l.ID] = amount
			}
		}
	}
}

// amount is how much of a supply stands in front of its name; one of what is
// counted by the piece, where nothing does.
func (d *draft) amount(before, id string) string {
	s := model.ByID(d.manual.Supplies, id)
	unit, known := quantity.UnitNamed(s.Unit)
	if !known {
		return ""
	}
	if unit.Dimension() == quantity.Count {
		return cmp.Or(d.amounts[id], "1")
	}
	places := quantity.Places(before)
	if len(places) == 0 {
		return ""
	}
	last := places[len(places)-1]
	q, err := quantity.Parse(strings.ReplaceAll(before[last.Start:last.End], ",", "."), unit.Dimension())
	behind := strings.TrimSpace(before[last.End:])
	if err != nil || behind != "" && behind != d.words.Numbers.Of {
		return ""
	}
	return q.String()
}
