package write

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/command/schema"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/edit"
	"baybinder/generator/read/syntax"
)

// mostField is what one answer of a form may have, in bytes.
const mostField = 4 << 10

// newEntry is a new entry's id and its line, from the answers of a form.
func newEntry(b bench, m *model.Machine, in string, fields map[string][]string) (id, line string, err error) {
	f, err := formOf(b, m, in)
	if err != nil {
		return "", "", err
	}
	kind := strings.Join(fields["kind"], "")
	var parts []string
	for _, field := range f.Fields {
		asked := len(field.Kinds) == 0 || slices.Contains(field.Kinds, kind)
		value, err := field.yaml(fields[field.Key])
		switch {
		case err != nil:
			return "", "", err
		case value.Text == "" && field.Need && asked:
			return "", "", missing(field.Key)
		case value.Text != "" && asked:
			parts = append(parts, field.Key+": "+value.Text)
		}
	}
	if in == "energies" && len(fields["points"]) == 0 {
		parts = append(parts, "points: []") // nothing to switch off: that is said
	}
	id = freeID(b, m, in, one(fields["name"]))
	return id, id + ": { " + strings.Join(parts, ", ") + " }", nil
}

// missing is the refusal of a form in which an answer is missing.
type missing string

// Error names the field.
func (m missing) Error() string { return string(m) }

func one(list []string) string {
	return strings.Join(strings.Fields(cleaned(strings.Join(list, " "))), " ")
}

// yaml is an answer as it stands in the file; without a text where there is none.
func (f *FormField) yaml(answer []string) (edit.Value, error) {
	if len(answer) > 100 || len(strings.Join(answer, "")) > mostField {
		return edit.Value{}, tooLong
	}
	var all []string
	for _, a := range answer {
		if a = one([]string{a}); a != "" {
			all = append(all, a)
		}
	}
	if len(all) == 0 {
		return edit.Value{}, nil
	}
	chosen := func(id string) bool { return slices.ContainsFunc(f.Of, func(o Option) bool { return o.ID == id }) }
	switch f.Sort {
	case "yes":
		return edit.Value{Text: "yes"}, nil
	case "one":
		if len(all) > 1 || !chosen(all[0]) {
			return edit.Value{}, cannotNow
		}
		return edit.Value{Text: all[0]}, nil
	case "many":
		if slices.ContainsFunc(all, func(id string) bool { return !chosen(id) }) {
			return edit.Value{}, cannotNow
		}
		return bracketed("[%s]", all), nil
	case "counts":
		all, err := counts(all, chosen)
		return bracketed("{ %s }", all), err
	case "pairs":
		all, err := pairs(all)
		return bracketed("{ %s }", all), err
	case "texts":
		for i := range all {
			all[i] = edit.Quoted(all[i])
		}
		return bracketed("[%s]", all), nil
	}
	return edit.Value{Text: edit.Quoted(strings.Join(all, " "))}, nil
}

func bracketed(form string, items []string) edit.Value {
	return edit.Value{Text: fmt.Sprintf(form, strings.Join(items, ", ")), Items: items}
}

// counts are ids with how many there are of each: "bolt 4".
func counts(all []string, chosen func(string) bool) ([]string, error) {
	for i, a := range all {
		id, number, _ := strings.Cut(a, " ")
		n, err := strconv.Atoi(number)
		if err != nil || n < 1 || n > 999 || !chosen(id) {
			return nil, cannotNow
		}
		all[i] = fmt.Sprintf("%s: %d", id, n)
	}
	return all, nil
}

// pairs are answers with what they mean: "good: clean". One without a meaning
// means itself.
func pairs(all []string) ([]string, error) {
	for i, a := range all {
		key, text, found := strings.Cut(a, ":")
		if !found {
			text = key
		}
		id := syntax.PlainID(key)
		if id == "" || strings.TrimSpace(text) == "" {
			return nil, cannotNow
		}
		all[i] = id + ": " + edit.Quoted(strings.TrimSpace(text))
	}
	return all, nil
}

// freeID is an id for a name that none of its kind has; in a machine's file
// none of any section.
func freeID(b bench, m *model.Machine, in, name string) string {
	taken := map[string]bool{}
	lists := []string{in}
	if slices.Contains(sections, in) {
		lists = sections
	}
	for _, list := range lists {
		for _, o := range optionsOf(b, m, list) {
			taken[o.ID] = true
		}
	}
	return free(syntax.PlainID(name), strings.TrimSuffix(in, "s"), taken)
}

// free is an id that is not taken and that a file can have on any system; of one
// that is empty, a plain one.
func free(id, plain string, taken map[string]bool) string {
	if id == "" {
		id = plain
	}
	for n := 1; ; n++ {
		end := ""
		if n > 1 {
			end = "-" + strconv.Itoa(n)
		}
		if now := strings.Trim(id[:min(len(id), decode.LongestID-len(end))], "-") + end; !taken[now] && decode.BadIDWhy(now).IsZero() {
			return now
		}
	}
}

// withEntry is a file with a new entry at its end, or at the end of a section.
func withEntry(text, section, line string) (string, error) {
	if section == "" {
		if strings.HasPrefix(strings.TrimSpace(text), "{") {
			return "", noPlace
		}
		return ended(text) + line + "\n", nil
	}
	head := regexp.MustCompile(`(?m)^` + section + `:[ \t]*(.*)$`).FindStringSubmatchIndex(text)
	if head == nil {
		return ended(text) + section + ":\n  " + line + "\n", nil
	}
	switch rest := strings.TrimSpace(text[head[2]:head[3]]); {
	case rest == "{}":
		return text[:head[0]] + section + ":\n  " + line + text[head[1]:], nil
	case rest != "" && !strings.HasPrefix(rest, "#"):
		return "", noPlace
	}
	at, indent := head[1], "  "
	for from := head[1] + 1; from < len(text); {
		to := len(text)
		if i := strings.IndexByte(text[from:], '\n'); i >= 0 {
			to = from + i
		}
		row := text[from:to]
		in := indentOf(row)
		if strings.TrimSpace(row) != "" && in == 0 && !strings.HasPrefix(row, "#") {
			break
		}
		if in > 0 && strings.TrimSpace(row) != "" {
			if at == head[1] && !strings.HasPrefix(strings.TrimSpace(row), "#") {
				indent = row[:in]
			}
			at = to
		}
		from = to + 1
	}
	return text[:at] + "\n" + indent + line + text[at:], nil
}

// ended is a text whose last line ends.
func ended(text string) string {
	if text == "" || strings.HasSuffix(text, "\n") {
		return text
	}
	return text + "\n"
}

// entry writes a new entry into its register, or into its machine's file, or
// changes one that is there. What is wrong with the answers is told before
// anything is written.
func (d *Desk) entry(a Asked) (*Told, error) {
	m, err := d.machineOf(a.Page)
	if err != nil {
		return nil, err
	}
	if a.ID != "" {
		return d.change(a, m)
	}
	id, line, err := newEntry(d.bench(), m, a.In, a.Fields)
	if err != nil {
		return nil, err
	}
	path, keys := listAt(m, a.In)
	data, err := d.look(path)
	if err != nil {
		return nil, err
	}
	to := &draft{file: d.fileOf(path), fresh: data == nil}
	old := to.file.Text
	if to.fresh {
		if described, is := schema.Of(path); is && d.manual.Tree().Has(described.Path()) {
			old = described.Setting(path) + "\n"
		}
	}
	if to.text, err = withEntry(old, strings.Join(keys, ""), line); err != nil {
		return nil, err
	}
	if err := d.enter(to, stateOf(data)); err != nil {
		return nil, err
	}
	return d.written(a, id)
}

// listAt is the file that a list stands in, and the key under which it stands
// there; none of a register.
func listAt(m *model.Machine, in string) (path string, keys []string) {
	if slices.Contains(sections, in) {
		return m.At.Path(), []string{in}
	}
	return "register/" + in + ".yaml", nil
}

// enter saves a draft of an entry, unless it would bring an error.
func (d *Desk) enter(to *draft, state string) error {
	if wrong := d.wrongIn(to); wrong != "" {
		return fmt.Errorf("%s", wrong)
	}
	return d.put(to, "entry", state)
}

// written tells of a new entry, and of how it is named in a step.
func (d *Desk) written(a Asked, id string) (*Told, error) {
	told, err := d.show(a)
	if err != nil {
		return nil, err
	}
	kind := map[string]string{"tools": model.LinkTool, "hazards": model.LinkHazard, "holds": model.LinkHold, "supplies": "supply", "roles": model.LinkRole}[a.In]
	if told.Sheet == nil || kind == "" {
		return told, nil
	}
	b := d.bench()
	for _, c := range b.Choices(d.procedureOf(a.Page), kind+":") {
		if c.Text == id {
			told.Found = []Choice{piecefor(b, speechOf(b), kind, c.Entry)}
		}
	}
	return told, nil
}

// wrongIn says what is an error in a draft that was none before.
func (d *Desk) wrongIn(to *draft) string {
	path, before := to.file.Path, counted(d.manual.Findings(), to.file.Path)
	d.manual.Hold(path, to.text)
	_, err := d.manual.Whole() // nobody else changes what is held
	found := d.manual.Findings()
	d.manual.Drop(path)
	d.dirty = true
	if err != nil {
		return err.Error()
	}
	for _, f := range found {
		if f.At.Path() != path || f.Level != finding.Error {
			continue
		}
		if key := sameFinding(f); before[key] > 0 {
			before[key]--
			continue
		}
		return strings.TrimSpace(f.Message + " " + f.Mend)
	}
	return ""
}

// fileOf is a file as it was read; empty where there is none.
func (d *Desk) fileOf(path string) *position.File {
	for _, f := range d.manual.Tree().Files {
		if f.Path == path {
			return f
		}
	}
	return position.NewFile(path, "")
}
