package begin

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/language/shape"
	"baybinder/generator/model"
	"baybinder/generator/read/edit"
)

// paper is the text of a procedure on its way, and what its steps use.
type document struct {
	*shape.Speech
	tongue  *finding.Tongue
	machine *model.Machine
	locks   *model.Locks
	lead    string // the first paragraph of each phase
	body    strings.Builder
	step    int

	tools    []*model.Tool
	hazards  []*model.Hazard
	holds    []*model.Hold
	supplies []use
	needs    []string
	people   int
}

// use is how much of a supply is used up.
type use struct {
	supply *model.Supply
	count  int
	amount quantity.Quantity
}

// phase opens a phase.
func (p *document) phase(title string) {
	p.step = 0
	fmt.Fprintf(&p.body, "\n## %s\n", title)
	if p.lead != "" {
		fmt.Fprintf(&p.body, "\n%s\n", p.lead)
	}
	p.body.WriteByte('\n')
}

// say writes a step: its act on the units that it is for, and what is said
// beside it.
func (p *document) say(on conditions, act string, beside ...string) {
	p.step++
	words := slices.DeleteFunc(beside, func(s string) bool { return s == "" })
	for i := range words {
		words[i] = capital(words[i])
	}
	fmt.Fprintf(&p.body, "%d. %s\n", p.step, strings.Join(slices.Insert(words, 0, p.order(on, act)), " "))
}

// note adds a paragraph to the last step.
func (p *document) note(words ...string) {
	indent := strings.Repeat(" ", len(strconv.Itoa(p.step))+2)
	fmt.Fprintf(&p.body, "\n%s%s\n", indent, strings.Join(words, " "))
}

// order is a sentence that begins with the units it is for.
func (p *document) order(on conditions, act string) string {
	if len(on) == 0 {
		return capital(act) + "."
	}
	return fmt.Sprintf(p.OnUnits, p.units(on)) + act + "."
}

// units is "with an enclosed cab and without a canopy".
func (p *document) units(on conditions) string {
	var each []string
	for _, c := range on {
		sign, word := "", p.With
		if c.not {
			sign, word = "!", p.Without
		}
		each = append(each, link(word+p.option(c.option), "when:"+sign+c.option))
	}
	return strings.Join(each, p.And)
}

// option is the words of an option.
func (p *document) option(id string) string {
	if words, known := p.machine.Option(id); known && words != "" {
		return words
	}
	return strings.ReplaceAll(id, "-", " ")
}

// capital makes the first letter of a sentence, in a link or not, a capital.
func capital(text string) string {
	i := len(text) - len(strings.TrimLeft(text, "["))
	r, size := utf8.DecodeRuneInString(text[i:])
	return text[:i] + string(unicode.ToUpper(r)) + text[i+size:]
}

func link(words, address string) string {
	return "[" + edit.LinkText(strings.Join(strings.Fields(words), " ")) + "](" + address + ")"
}

// of is a link that mentions a thing, or does something to it.
func of(kind, words string, n model.Named) string { return link(words, kind+":"+n.Base().ID) }

// named is a link with the thing's own name.
func (p *document) named(kind string, n model.Named) string {
	return fmt.Sprintf(p.The, of(kind, n.Label(), n))
}

// act is a link that does something to a thing, in words that name it.
func act(kind, words string, n model.Named) string {
	return of(kind, fmt.Sprintf(words, n.Label()), n)
}

// tool names a tool in the step.
func (p *document) tool(kind string, t *model.Tool, words string) string {
	p.tools = with(p.tools, t)
	p.role(t)
	return of(kind, words, t)
}

// usedTools is "use the socket and the spanner." for the tools of a step.
func (p *document) usedTools(tools []*model.Tool) string {
	if len(tools) == 0 {
		return ""
	}
	var each []string
	for _, t := range tools {
		each = append(each, fmt.Sprintf(p.The, p.tool("tool", t, t.Label())))
	}
	return fmt.Sprintf(p.Use, p.listed(each))
}

// hazard names a hazard that the step meets.
func (p *document) hazard(h *model.Hazard) string {
	if h == nil {
		return ""
	}
	p.hazards = with(p.hazards, h)
	for _, item := range h.Wear {
		p.role(item.To)
	}
	return fmt.Sprintf(p.Mind, of("hazard", h.Label(), h))
}

// hold names a hold at which the step stops.
func (p *document) hold(h *model.Hold) string {
	p.holds = with(p.holds, h)
	p.role(h.With.To)
	p.role(h.ProvedOn.To)
	return of("hold", h.Label(), h)
}

// role asks for the roles that may use a tool.
func (p *document) role(t *model.Tool) {
	if t == nil {
		return
	}
	for _, r := range t.Needs {
		if r.To != nil {
			p.needs = with(p.needs, r.ID)
		}
	}
}

// lock is the shop's own way to lock a point.
func (p *document) lock(point *model.Point) string {
	if p.locks != nil {
		p.role(p.locks.Tool.To)
	}
	return of("lock", p.Lock, point)
}

// crew asks for people, where it takes more than one.
func (p *document) crew(n int) string {
	p.people = max(p.people, n)
	if n < 2 {
		return ""
	}
	return fmt.Sprintf("[](people:%d)", n)
}

// supply adds to what is used up of a supply.
func (p *document) supply(s *model.Supply, count int, amount quantity.Quantity) {
	i := slices.IndexFunc(p.supplies, func(u use) bool { return u.supply == s })
	if i < 0 {
		p.supplies = append(p.supplies, use{supply: s, count: count, amount: amount})
		return
	}
	u := &p.supplies[i]
	u.count += count
	switch {
	case u.amount.IsZero():
		u.amount = amount
	case amount.Unit.Dimension() == u.amount.Unit.Dimension():
		u.amount = u.amount.Plus(amount)
	}
}

// line is a line of the front matter's supplies.
func (u use) line() string {
	switch {
	case !u.amount.IsZero():
		return u.supply.ID + ": " + u.amount.String()
	case u.count > 1:
		return u.supply.ID + ": " + strconv.Itoa(u.count)
	}
	return u.supply.ID
}

// listed joins words. Three and more are parted by semicolons: in one sentence
// they would be too long for a shop with long names.
func (p *document) listed(words []string) string {
	if len(words) == 2 {
		return words[0] + p.And + words[1]
	}
	return strings.Join(words, "; ")
}

// front is the front matter with its lists.
func (p *document) front(title, summary string, missing []finding.Words) string {
	var b strings.Builder
	b.WriteString("---\n")
	said := func(w finding.Words) string {
		text, _ := p.tongue.Say(w)
		return strings.Join(strings.Fields(text), " ")
	}
	fmt.Fprintf(&b, "# %s\n", said(finding.Say("Worked out from %s. Nobody has walked it through at the machine yet.", p.machine.At.Path())))
	if len(missing) > 0 {
		fmt.Fprintf(&b, "# %s\n", said(finding.Say("This is missing, and must be there before the line status: draft goes:")))
	}
	for _, what := range missing {
		fmt.Fprintf(&b, "# - %s\n", said(what))
	}
	fmt.Fprintf(&b, "title: %s\nsummary: %s\nfor: %s\n", yamlText(title), yamlText(summary), p.machine.ID)
	fmt.Fprintf(&b, "status: draft                    # %s\n", said(finding.Say("delete this line when the work is written and it was walked through")))
	list(&b, "needs", p.needs)
	if p.people > 1 {
		fmt.Fprintf(&b, "people: %d\n", p.people)
	}
	list(&b, "hazards", model.IDs(p.hazards))
	list(&b, "tools", model.IDs(p.tools))
	var supplies []string
	for _, u := range p.supplies {
		supplies = append(supplies, u.line())
	}
	list(&b, "supplies", supplies)
	list(&b, "holds", model.IDs(p.holds))
	b.WriteString("---\n")
	return b.String()
}

func list(b *strings.Builder, name string, lines []string) {
	if len(lines) > 0 {
		fmt.Fprintf(b, "%s: [%s]\n", name, strings.Join(lines, ", "))
	}
}
