package begin

import (
	"errors"
	"io/fs"
	"path"
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/edit"
	"baybinder/generator/read/source"
)

// New says which procedure is begun.
type New struct {
	Manual  string // the manual's folder
	ID      string
	Title   string // "" makes one of the id
	Machine string // "" for any machine
	Topic   string // folders below procedures/, "" for none
	Part    string // of the machine, for Reach
	Today   model.Date
}

// fields are what the template is filled with.
type fields struct {
	Name, Title, Machine, Tool, ToolWords, Hazard, HazardWords string
}

// Procedure writes a new procedure, as a draft, and returns its path inside the
// manual. Its worked step uses a tool and a hazard that the manual has.
func Procedure(n New) (string, error) {
	_, m, err := n.read()
	if err != nil {
		return "", err
	}
	var text strings.Builder
	if err := formOf(m).Execute(&text, n.fields(m)); err != nil {
		return "", err
	}
	return n.path(), n.write(text.String())
}

// read reads the manual, and refuses what cannot be begun in it.
func (n New) read() (*source.Tree, *model.Manual, error) {
	tree, err := readWhole(n.Manual)
	if err != nil {
		return nil, nil, err
	}
	m, _ := bind.Manual(tree)
	return tree, m, n.refuse(m)
}

// readWhole reads a manual's files. Where one cannot be read nothing is begun:
// the draft would leave out what stands in it.
func readWhole(manual string) (*source.Tree, error) {
	tree, err := source.Read(manual)
	if err == nil && len(tree.Problems) > 0 {
		p := tree.Problems[0]
		err = finding.Refuse("%s: %s; %s", p.File.Path, p.Why, p.Mend)
	}
	return tree, err
}

// path is the procedure's file inside the manual.
func (n New) path() string { return path.Join("procedures", n.topic(), n.ID+".md") }

func (n New) topic() string { return strings.Trim(n.Topic, "/") }

// write writes the file, which must not be there.
func (n New) write(text string) error { return writeNew(n.Manual, n.path(), text) }

// writeNew writes a file that is not there yet.
func writeNew(manual, name, text string) error {
	w := &writer{root: manual}
	err := w.write(name, text)
	if err == nil {
		return nil
	}
	w.undo()
	if errors.Is(err, fs.ErrExist) {
		return finding.Refuse("there is a file %s already, and nothing is written over", name)
	}
	return finding.Refuse("%s could not be written: %s", name, err)
}

// refuse says why the procedure cannot be begun under its name, or for its
// machine.
func (n New) refuse(m *model.Manual) error {
	if why := decode.BadIDWhy(n.ID); !why.IsZero() {
		return finding.Refuse("the id %q %s: write it like renew-ram-seal", n.ID, why)
	}
	for _, part := range strings.Split(n.topic(), "/") {
		if why := decode.BadIDWhy(part); !why.IsZero() && n.topic() != "" {
			return finding.Refuse("the topic %q cannot be a folder: %q %s", n.Topic, part, why)
		}
	}
	if p := model.ByID(m.Procedures, n.ID); p != nil {
		return finding.Refuse("there is a procedure %s already: %s", n.ID, p.File.Path)
	}
	return n.refuseMachine(m)
}

func (n New) refuseMachine(m *model.Manual) error {
	if n.Machine == "" || model.ByID(m.Machines, n.Machine) != nil {
		return nil
	}
	ids := model.IDs(m.Machines)
	near := nearest.Of(n.Machine, ids)
	switch {
	case near != "":
		return finding.Refuse("there is no machine %s: did you mean %s?", n.Machine, near)
	case len(ids) == 0:
		return finding.Refuse("there is no machine %s: begin it with baybinder begin machine %s", n.Machine, n.Machine)
	}
	return finding.Refuse("there is no machine %s: begin it with baybinder begin machine %s, or name one of %s", n.Machine, n.Machine, strings.Join(ids, ", "))
}

func (n New) fields(m *model.Manual) fields {
	f := fields{Title: yamlText(n.title()), Machine: n.Machine}
	if tool := plainTool(m); tool != nil {
		f.Tool, f.ToolWords = tool.ID, edit.LinkText(tool.Label())
	}
	if hazard := plainHazard(m); hazard != nil {
		f.Hazard, f.HazardWords = hazard.ID, edit.LinkText(hazard.Label())
	}
	return f
}

// title is the title that was given, or the id in words.
func (n New) title() string { return titleOf(n.Title, n.ID) }

func titleOf(title, id string) string {
	if title := strings.Join(strings.Fields(title), " "); title != "" {
		return title
	}
	words := strings.ReplaceAll(id, "-", " ")
	return strings.ToUpper(words[:1]) + words[1:]
}

// yamlText is a text as YAML: in quotes unless it is letters, digits and
// single spaces, which need none.
func yamlText(text string) string {
	plain := strings.IndexFunc(text, func(r rune) bool {
		return r != ' ' && (r < '0' || r > '9') && (r < 'A' || r > 'Z') && (r < 'a' || r > 'z')
	}) < 0
	if plain {
		return text
	}
	return strconv.QuoteToGraphic(text)
}

// plainTool is the first tool that asks nothing of whoever uses it.
func plainTool(m *model.Manual) *model.Tool {
	for _, t := range m.Tools {
		if !t.Misread && len(t.Needs) == 0 && t.Kind != "ppe" && t.Kind != "lock" {
			return t
		}
	}
	return nil
}

// plainHazard is the first hazard that is met on any machine, or else the first
// that could be read; of a hazard that says only half there is no good pattern.
func plainHazard(m *model.Manual) *model.Hazard {
	for _, h := range m.Hazards {
		if !h.Misread && h.Of.ID == "" && len(h.Wear) == 0 && h.Nature != "" && h.Consequence != "" && len(h.Avoid) > 0 {
			return h
		}
	}
	return nil
}
