package settle

import (
	"os"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/patch"
	"baybinder/generator/check"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// TestSettleInsertsAndNothingElse writes procedures at random together with
// what settle must make of each: the same bytes, with the pieces where they
// belong.
func TestSettleInsertsAndNothingElse(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		dir, err := os.MkdirTemp("", "settle")
		if err != nil {
			rt.Fatal(err)
		}
		defer os.RemoveAll(dir)
		for _, f := range shared() {
			writeTo(rt, dir, f.Name, f.Data)
		}
		s := drawScript(rt)
		writeTo(rt, dir, script, []byte(s.old.String()))
		settleTo(rt, dir, s.want.String(), "")
		settleTo(rt, dir, s.want.String(), " a second time")
		wantNothingMissing(rt, dir)
	})
}

// TestWordsInAnyMarkdown fills the empty links of texts that are nearly
// Markdown: either all of them are filled and every link leads where it led,
// or none is, and that is told.
func TestWordsInAnyMarkdown(t *testing.T) {
	shop := map[string]string{}
	for _, f := range shared() {
		shop[f.Name] = string(f.Data)
	}
	rapid.Check(t, func(t *rapid.T) {
		pieces := rapid.SampledFrom([]string{
			"[](tool:hammer)", "[](tool:tester)", "[](tool:tick)", "[ ](tool:hammer)", "[](<tool:hammer>)", "[][m]", "[m]: tool:hammer\n",
			"`", "*", "[", "]", "(", ")", "<", ">", "\\", "|", "\n", "\n\n", "> ", "- ", "1. ", "    ", "![", "](x)", "a", "|---|---|\n", "```\n", "!",
		})
		body := strings.Join(rapid.SliceOfN(pieces, 1, 14).Draw(t, "body"), "")
		before := textOf(shop, "## Work\n\n1. "+body+"\n\n[m]: tool:hammer\n")
		before.words()
		after := textOf(shop, patch.Applied(before.procedure.File, before.inserts).Text)
		after.words()
		if len(after.inserts) > 0 || len(before.left) > 0 && len(before.inserts) > 0 {
			t.Fatalf("%q became %q; left %v", body, after.procedure.File.Text, before.left)
		}
		if !slices.Equal(ids(before.procedure), ids(after.procedure)) {
			t.Fatalf("%q became %q: its links changed", body, after.procedure.File.Text)
		}
	})
}

// textOf is a procedure of the shop, bound.
func textOf(shop map[string]string, procedure string) *text {
	shop[script] = procedure
	m, _ := bind.Manual(source.FromText(shop))
	return &text{manual: m, procedure: m.Procedures[0]}
}

func ids(p *model.Procedure) []string {
	var all []string
	for _, link := range links(p) {
		all = append(all, link.Address)
	}
	return all
}

const script = "procedures/script.md"

func settleTo(rt *rapid.T, dir, want, when string) {
	changes, err := Run(Options{Manual: dir, Today: today})
	if err != nil {
		rt.Fatal(err)
	}
	if got := readFrom(rt, dir, script); got != want {
		rt.Fatalf("it made%s\n%q\nwant\n%q\nsaid %s", when, got, want, told(changes))
	}
}

func wantNothingMissing(rt *rapid.T, dir string) {
	tree, err := source.Read(dir)
	if err != nil {
		rt.Fatal(err)
	}
	m, _ := bind.Manual(tree)
	for _, f := range check.Run(&check.Context{Manual: m, Today: today}) {
		if f.Rule == &check.NotListed && !strings.HasPrefix(f.Message, "oil ") {
			rt.Fatalf("not listed still: %s", f.Message)
		}
		if f.Code == "hollow-link" {
			rt.Fatalf("without words still: %s", f.Message)
		}
	}
}

// drawn is a procedure as a writer left it, and as settle must leave it.
type drawn struct {
	rt      *rapid.T
	lineEnd string
	old     strings.Builder
	want    strings.Builder
}

// keep writes what the writer wrote; put writes what settle puts in. Both get
// the file's line end for \n.
func (d *drawn) keep(text string) {
	d.old.WriteString(d.ends(text))
	d.want.WriteString(d.ends(text))
}

func (d *drawn) put(text string) { d.want.WriteString(d.ends(text)) }

func (d *drawn) ends(text string) string { return strings.ReplaceAll(text, "\n", d.lineEnd) }

func (d *drawn) coin(what string) bool { return rapid.Bool().Draw(d.rt, what) }

func (d *drawn) one(what string, of ...string) string {
	return rapid.SampledFrom(of).Draw(d.rt, what)
}

// entries are those of the shop's registers that settle can list: id → name.
var entries = map[string][][2]string{
	"hazards":  {{"sparks", "sparks"}, {"noise", "noise"}},
	"tools":    {{"hammer", "hammer"}, {"socket-10", "10 mm socket"}, {"tester", `tester \[two-pole\] \*new\*`}, {"chock", "wheel chock"}},
	"supplies": {{"seal", "seal"}, {"oil", "oil"}},
	"holds":    {{"zero", "bus voltage"}, {"look", "seat"}},
}

var kindOf = map[string]string{"hazards": "hazard", "tools": "tool", "supplies": "supply", "holds": "hold"}

func drawScript(rt *rapid.T) *drawn {
	d := &drawn{rt: rt, lineEnd: rapid.SampledFrom([]string{"\n", "\r\n", "\r"}).Draw(rt, "line end")}
	if d.coin("byte-order mark") {
		d.keep("\ufeff")
	}
	used := map[string][]string{}
	body := d.drawBody(used)
	d.keep("---\n")
	d.between()
	d.keep("title: " + d.one("title", "Seal", `"a: \"b\" [c]"`, "'it''s # here'", "Ñandú µ — ½") + d.comment() + "\n")
	for _, list := range listNames {
		d.list(list, used[list])
	}
	d.between()
	if d.coin("more fields") {
		d.keep("symptoms: [howls, 'creeps, down']\n")
	}
	d.between()
	d.keep("---\n")
	for _, piece := range body {
		d.old.WriteString(d.ends(piece[0]))
		d.want.WriteString(d.ends(piece[1]))
	}
	return d
}

// between is what may stand between fields.
func (d *drawn) between() {
	d.keep(d.one("between", "", "", "\n", "# a note: [x]\n", "\n# tools: []\n\n"))
}

func (d *drawn) comment() string {
	return d.one("comment", "", "  ", " # said of it", "\t# ], it's \"so\"")
}

// list writes one of the four lists in one of the ways of writing it, with
// some of what is used and some of what is not.
func (d *drawn) list(name string, used []string) {
	var have, missing []string
	for _, e := range entries[name] {
		if d.coin(name + " has " + e[0]) {
			have = append(have, e[0])
		}
	}
	for _, id := range used {
		if !slices.Contains(have, id) && id != "oil" {
			missing = append(missing, id)
		}
	}
	styles := []string{"none", "brackets", "lines", "margin", "map", "flow map"}
	if name == "holds" {
		styles = styles[:4] // it is no map
	}
	switch style := d.one(name+" style", styles...); {
	case style == "none" || len(have) == 0 && style != "brackets":
		d.noList(name, used)
	case style == "brackets":
		d.brackets(name, have, missing)
	case style == "flow map":
		d.flowMap(name, have, missing)
	case style == "map":
		d.lines(name, "    ", "", ":", have, missing)
	case style == "margin":
		d.lines(name, "", "- ", "", have, missing)
	default:
		d.lines(name, "  ", "-   ", "", have, missing)
	}
}

func (d *drawn) noList(name string, used []string) {
	ids := slices.DeleteFunc(slices.Clone(used), func(id string) bool { return id == "oil" })
	if len(ids) > 0 {
		d.put(name + ": [" + strings.Join(ids, ", ") + "]\n")
	}
}

func (d *drawn) brackets(name string, have, missing []string) {
	d.between()
	sep, tail := ", ", ""
	if d.coin("over lines") {
		sep, tail = d.one("sep", ",\n  ", ", # why, \"ever\n  ", " ,\n\n  "), d.one("tail", "", "\n ", " # last ]\n")
	}
	d.keep(name + ": [" + strings.Join(d.quoted(have), sep))
	comma := len(have) > 0 && d.coin("trailing comma")
	if comma {
		d.keep(",")
	}
	d.grow(missing, len(have) > 0, comma, "")
	d.keep(tail + "]" + d.comment() + "\n")
}

func (d *drawn) quoted(ids []string) []string {
	out := slices.Clone(ids)
	for i, id := range out {
		out[i] = d.one("quotes", id, `"`+id+`"`, "'"+id+"'")
	}
	return out
}

func (d *drawn) flowMap(name string, have, missing []string) {
	d.between()
	d.keep(name + ": { " + strings.Join(have, ":, ") + ":")
	d.grow(missing, true, false, ":")
	d.keep(" }" + d.comment() + "\n")
}

func (d *drawn) grow(missing []string, some, comma bool, colon string) {
	for i, id := range missing {
		switch {
		case i > 0 || some && !comma:
			d.put(", ")
		case comma:
			d.put(" ")
		}
		d.put(id + colon)
	}
}

func (d *drawn) lines(name, indent, dash, colon string, have, missing []string) {
	d.between()
	d.keep(name + ":" + d.comment() + "\n")
	for _, id := range have {
		if indent != "" {
			d.keep(d.one("inside", "", "", indent+"# inside: it\n", "\n"))
		}
		d.keep(indent + dash + id + colon + d.comment() + "\n")
	}
	for _, id := range missing {
		d.put(indent + dash + id + colon + "\n")
	}
}

// drawBody draws the steps, each piece as it is and as it must become, and
// notes what they use, in order.
func (d *drawn) drawBody(used map[string][]string) [][2]string {
	same := func(text string) [2]string { return [2]string{text, text} }
	body := [][2]string{same("What it is for: `[](tool:hammer)` µ.\n\n## Work\n\n")}
	for range rapid.IntRange(1, 4).Draw(d.rt, "steps") {
		body = append(body, same(d.one("step", "1. Do — it ", "7. \\[](tool:chock) ", "1. [](time:5min) ")))
		for range rapid.IntRange(0, 4).Draw(d.rt, "links") {
			body = append(body, d.drawLink(used))
		}
		body = append(body, same(d.one("end", "\n", ".\n\n", "\n   goes on.\n")))
	}
	return body
}

func (d *drawn) drawLink(used map[string][]string) [2]string {
	list := d.one("list", listNames...)
	e := rapid.SampledFrom(entries[list]).Draw(d.rt, "entry")
	if !slices.Contains(used[list], e[0]) {
		used[list] = append(used[list], e[0])
	}
	tail := "](" + kindOf[list] + ":" + e[0] + ") "
	if d.coin("empty") {
		return [2]string{"[" + tail, "[" + e[1] + tail}
	}
	return [2]string{"[*its* words" + tail, "[*its* words" + tail}
}
