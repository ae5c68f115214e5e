package write

import (
	"strings"

	"baybinder/generator/base/position"
	"baybinder/generator/command/begin"
	"baybinder/generator/model"
	"baybinder/generator/read/edit"
	"baybinder/generator/read/syntax"
)

// MachineName is a machine with its parts, of which a procedure may reach one.
type MachineName struct {
	Option
	Parts []Option `json:"parts"`
}

// machines are those of the manual, with what can be said of the shop.
func (d *Desk) machines(Asked) (*Told, error) {
	if _, err := d.look("shop.yaml"); err != nil {
		return nil, err
	}
	b, out := d.bench(), []MachineName{}
	for _, m := range b.Manual().Machines {
		out = append(out, MachineName{Option{m.ID, m.Label()}, optionsOf(b, m, "parts")})
	}
	shop, err := d.shopSheet()
	return &Told{Machines: out, Shop: shop}, err
}

// begin writes a new machine, or a new procedure as a draft: an empty one, what
// reaches a part, or one made of an old text.
func (d *Desk) begin(a Asked) (*Told, error) {
	if _, err := d.look("shop.yaml"); err != nil {
		return nil, err
	}
	title := one(a.Fields["title"])
	name := one(a.Fields["name"])
	switch {
	case len(title)+len(name) > mostField || len(strings.Join(a.Fields["text"], "")) > mostText:
		return nil, tooLong
	case name != "":
		id := free(syntax.PlainID(name), "machine", taken(d.bench().Manual().Machines))
		return d.create("machines/"+id+".yaml", "name: "+edit.Quoted(name)+"\n", "machines/"+id+".html")
	case title == "":
		return nil, noWords
	}
	n := begin.New{
		Manual: d.root, ID: free(syntax.PlainID(title), "procedure", taken(d.bench().Manual().Procedures)), Title: title,
		Machine: one(a.Fields["machine"]), Part: one(a.Fields["part"]), Today: d.today,
	}
	text, err := beginning(n, cleaned(strings.Join(a.Fields["text"], "\n")))
	if err != nil {
		return nil, err
	}
	return d.create("procedures/"+n.ID+".md", text, "procedures/"+n.ID+".html")
}

// beginning is the text of a new procedure.
func beginning(n begin.New, old string) (string, error) {
	switch {
	case n.Part != "":
		_, text, err := begin.ReachText(n)
		return text, err
	case old != "":
		_, text, err := begin.NotesText(n, old)
		return text, err
	}
	head := "---\ntitle: " + edit.Quoted(n.Title) + "\n"
	if n.Machine != "" {
		if syntax.PlainID(n.Machine) != n.Machine {
			return "", cannotNow
		}
		head += "for: " + n.Machine + "\n"
	}
	return head + "status: draft\n---\n", nil
}

func taken[T model.Named](list []T) map[string]bool {
	out := map[string]bool{}
	for _, n := range list {
		out[n.Base().ID] = true
	}
	return out
}

// create writes a new file, and says where its page will be.
func (d *Desk) create(path, text, page string) (*Told, error) {
	to := &draft{file: position.NewFile(path, ""), fresh: true, text: text}
	if err := d.put(to, "begin", ""); err != nil {
		return nil, err
	}
	return &Told{Page: page}, nil
}
