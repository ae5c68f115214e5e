package jotting_test

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"golang.org/x/tools/txtar"

	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/jotting"
	"baybinder/generator/read/source"
)

// sheet is one of the twenty texts with its answers.
type sheet struct {
	name, shop, machine string
	lines               []line
}

type line struct {
	text    string
	answers []string
}

func sheets(t *testing.T) []sheet {
	t.Helper()
	files, err := filepath.Glob("testdata/texts/*.txt")
	if err != nil || len(files) != 20 {
		t.Fatalf("%d texts: %v", len(files), err)
	}
	var out []sheet
	for _, f := range files {
		data, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		head, body, _ := strings.Cut(string(data), "---\n")
		s := sheet{name: strings.TrimSuffix(filepath.Base(f), ".txt")}
		for h := range strings.Lines(head) {
			key, value, _ := strings.Cut(strings.TrimSpace(h), ": ")
			switch key {
			case "shop":
				s.shop = value
			case "machine":
				s.machine = value
			}
		}
		for l := range strings.Lines(body) {
			text, answers, _ := strings.Cut(strings.TrimSuffix(l, "\n"), " ==> ")
			s.lines = append(s.lines, line{text, strings.Fields(answers)})
		}
		out = append(out, s)
	}
	return out
}

var manuals = map[string]*model.Manual{}

// manualOf is the manual of a sheet's shop.
func manualOf(t *testing.T, shop string) *model.Manual {
	t.Helper()
	if manuals[shop] == nil {
		manuals[shop] = readManual(t, shop)
	}
	return manuals[shop]
}

func readManual(t *testing.T, shop string) *model.Manual {
	t.Helper()
	if shop == "demo" {
		tree, err := source.Read("../../../content")
		if err != nil {
			t.Fatal(err)
		}
		m, _ := bind.Manual(tree)
		return m
	}
	archive, err := txtar.ParseFile("testdata/shops/" + shop + ".txt")
	if err != nil {
		t.Fatal(err)
	}
	files := map[string]string{}
	for _, f := range archive.Files {
		files[f.Name] = string(f.Data)
	}
	m, found := bind.Manual(source.FromText(files))
	for _, f := range found {
		t.Errorf("%s: %s", shop, f.Message)
	}
	return m
}

func machineOf(m *model.Manual, id string) *model.Machine {
	for _, x := range m.Machines {
		if x.ID == id {
			return x
		}
	}
	return nil
}

// one is the same word for what the format has two for.
func one(answer string) string {
	kind, id, _ := strings.Cut(answer, ":")
	switch kind {
	case "disconnect":
		kind = "remove"
	case "connect":
		kind = "refit"
	}
	return kind + ":" + id
}

func isAct(answer string) bool {
	kind, _, _ := strings.Cut(answer, ":")
	for _, k := range model.Kinds {
		if k.Name == kind {
			return k.Act != model.NoAct
		}
	}
	return false
}

// matches says that a link is one of the answers.
func matches(link string, answer string) bool {
	return slices.ContainsFunc(strings.Split(answer, "|"), func(a string) bool { return one(a) == one(link) })
}

// Of the acts that a fitter reads in the twenty texts at least seven in ten are
// recognised, and none that is not there; no tool, part or other thing is named
// that is not.
func TestTwentyTexts(t *testing.T) {
	acts, found, things, named := 0, 0, 0, 0
	for _, s := range sheets(t) {
		m := manualOf(t, s.shop)
		d := jotting.Lay(textOf(s), jotting.New(m, machineOf(m, s.machine), m.Shop.Language))
		for i, l := range s.lines {
			var got []string
			for p := range d.Pieces {
				for _, link := range p.Links {
					if p.Line == i {
						got = append(got, link.Address())
					}
				}
			}
			for _, a := range l.answers {
				if !strings.Contains(a, ":") {
					continue
				}
				hit := slices.ContainsFunc(got, func(g string) bool { return matches(g, a) })
				switch {
				case isAct(a):
					acts++
					found += count(hit)
				default:
					things++
					named += count(hit)
				}
				if !hit {
					t.Logf("%s:%d: %s not recognised in %q", s.name, i+1, a, l.text)
				}
			}
			for _, g := range got {
				right := slices.ContainsFunc(l.answers, func(a string) bool { return matches(g, a) })
				if !right && (isAct(g) || !mention(g)) {
					t.Errorf("%s:%d: %s is wrong in %q", s.name, i+1, g, l.text)
				}
			}
		}
	}
	t.Logf("acts %d of %d, other things %d of %d", found, acts, named, things)
	if found*10 < acts*7 {
		t.Errorf("%d of %d acts recognised, want seven in ten", found, acts)
	}
}

// mention says that a link only mentions a thing of the machine: the sheets
// answer some of these, and none is wrong where the thing is named.
func mention(g string) bool {
	return !isAct(g) && !strings.HasPrefix(g, "tool:") && !strings.HasPrefix(g, "supply:")
}

func count(b bool) int {
	if b {
		return 1
	}
	return 0
}

func textOf(s sheet) string {
	var b strings.Builder
	for _, l := range s.lines {
		fmt.Fprintln(&b, l.text)
	}
	return b.String()
}

// The phases, the steps and the typed signal words of the twenty texts stand
// where the sheets say.
func TestPhasesStepsAndSignalWords(t *testing.T) {
	for _, s := range sheets(t) {
		m := manualOf(t, s.shop)
		d := jotting.Lay(textOf(s), jotting.New(m, machineOf(m, s.machine), m.Shop.Language))
		got := map[int]string{}
		for _, ph := range d.Phases {
			if ph.Title != "" {
				got[ph.Line] += "phase "
			}
			steps(ph.Steps, func(line int) { got[line] += "step " })
		}
		for p := range d.Pieces {
			if p.Signal != "" {
				got[p.Line] += "hazard "
			}
		}
		stepless := !strings.Contains(fmt.Sprint(s.lines), "step")
		for i, l := range s.lines {
			want := ""
			for _, a := range l.answers {
				if a == "phase" || a == "step" || a == "hazard" {
					want += a + " "
				}
			}
			if stepless {
				got[i] = strings.ReplaceAll(got[i], "step ", "")
			}
			if got[i] != want {
				t.Errorf("%s:%d: %q, want %q: %s", s.name, i+1, got[i], want, l.text)
			}
		}
	}
}

// steps tells the line of each step: that of its first piece that is no warning.
func steps(list []*jotting.Step, tell func(line int)) {
	for _, s := range list {
		for _, p := range s.Pieces {
			if p.Signal == "" {
				tell(p.Line)
				break
			}
		}
		steps(s.Subs, tell)
	}
}

// Words that look like orders and are none, on the machines of the test shops:
// common sense of both languages, no source.
func TestWordsThatAreNoActs(t *testing.T) {
	for _, c := range []struct{ shop, machine, text string }{
		{"mixer", "dough-mixer", "Remove the motor bracket."},
		{"mixer", "dough-mixer", "Remove the motor mounting plate and the bowl guard bracket."},
		{"mixer", "dough-mixer", "Do not remove the rear cover."},
		{"mixer", "dough-mixer", "Never take the bowl guard off, loosen the guard screws or open the rear cover."},
		{"mixer", "dough-mixer", "The rear cover was removed yesterday."},
		{"mixer", "dough-mixer", "If the belt slips, tighten the tension bolt."},
		{"mixer", "dough-mixer", "Tighten the tension bolt if the belt slips."},
		{"mixer", "dough-mixer", "Remove the rear cover or the bowl guard."},
		{"mixer", "dough-mixer", "When you remove the rear cover, look at the belt."},
		{"mixer", "dough-mixer", "With the rear cover off, look at the belt."},
		{"mixer", "dough-mixer", "The torque is for lid bolts (undo the lid bolts first)."},
		{"mixer", "dough-mixer", "Lock nut of the mixer isolator: check."},
		{"mixer", "dough-mixer", "Open the rear cover's label."},
		{"mixer", "dough-mixer", "Take out the drip tray."},
		{"mixer", "dough-mixer", "Place the lamp on the bench."},
		{"mixer", "dough-mixer", "Remove the lock."},
		{"mixer", "dough-mixer", "Drain plug torque is 25 N·m."},
		{"mixer", "dough-mixer", "Fit the motor bolt washers."},
		{"mixer", "dough-mixer", "Unplug the kettle and turn the mixer isolator label."},
		{"agua", "bomba-agua", "No quite la tapa de la bomba."},
		{"agua", "bomba-agua", "Si gotea, apriete los tornillos de la tapa."},
		{"agua", "bomba-agua", "Quite la tapa de la bomba vieja de repuesto o el rodete."},
		{"agua", "bomba-agua", "El rodete se desmontó ayer."},
		{"agua", "bomba-agua", "Saque el sensor de presión diferencial."},
		{"agua", "bomba-agua", "Nunca abra el seccionador de la bomba ni cierre la válvula de aspiración."},
		{"agua", "sierra-cinta", "Mire la hoja."},
	} {
		m := manualOf(t, c.shop)
		r := jotting.New(m, machineOf(m, c.machine), m.Shop.Language)
		for _, l := range r.Step(c.text, nil).Links {
			if l.Act {
				t.Errorf("%s: %s on %q", c.text, l.Address(), c.text[l.Start:l.End])
			}
		}
	}
}

// What is not certain is offered.
func TestOffers(t *testing.T) {
	for _, c := range []struct{ shop, machine, text, want, why string }{
		{"mixer", "dough-mixer", "Undo the screws.", "loosen:cover-screw loosen:guard-screw", jotting.NameOnly},
		{"mixer", "dough-mixer", "Take the cover off.", "remove:rear-cover", jotting.NameOnly},
		{"mixer", "dough-mixer", "Remove the drve belt.", "remove:drive-belt", jotting.Misspelt},
		{"mixer", "dough-mixer", "If the belt slips, tighten the tension bolt.", "tighten:tension-bolt", jotting.Depends},
		{"mixer", "dough-mixer", "Cover screws 5 N·m.", "tighten:cover-screw", jotting.NoOrder},
		{"agua", "bomba-agua", "Quite la tapa.", "remove:tapa", jotting.NameOnly},
		{"demo", "delivery-tug", "Wait 10 min.", "hold:traction-wait", jotting.AWait},
	} {
		m := manualOf(t, c.shop)
		got := jotting.New(m, machineOf(m, c.machine), m.Shop.Language).Step(c.text, nil)
		if len(got.Offers) != 1 || !strings.HasPrefix(strings.Join(got.Offers[0].Addresses, " "), c.want) || got.Offers[0].Why != c.why {
			t.Errorf("%s: %v, want %s (%s)", c.text, got.Offers, c.want, c.why)
		}
	}
}

// No two links of a text share words, and each has some.
func TestLinksDoNotOverlap(t *testing.T) {
	for _, s := range sheets(t) {
		m := manualOf(t, s.shop)
		d := jotting.Lay(textOf(s), jotting.New(m, machineOf(m, s.machine), m.Shop.Language))
		for p := range d.Pieces {
			end := 0
			for _, l := range p.Links {
				if l.Start < end || l.Start >= l.End || l.End > len(p.Text) {
					t.Errorf("%s:%d: %s at %d to %d of %q", s.name, p.Line+1, l.Address(), l.Start, l.End, p.Text)
				}
				end = l.End
			}
		}
	}
}

// A step that is the whole title of an issued procedure for the machine
// performs it; part of a title, or one for another machine, does not.
func TestTitlesOfProcedures(t *testing.T) {
	m := manualOf(t, "demo")
	for _, p := range m.Procedures {
		for _, machine := range []string{"air-compressor", "shop-press"} {
			links := jotting.New(m, machineOf(m, machine), m.Shop.Language).Step(p.Title+".", nil).Links
			does := len(links) == 1 && links[0].Address() == "do:"+p.ID
			if want := p.Issued() && (p.For.ID == "" || p.For.ID == machine); does != want {
				t.Errorf("%q on %s: %v, want it performed: %v", p.Title, machine, links, want)
			}
		}
	}
}

// What an order that is not certain names stays words too: half a link would be
// in the writer's way.
func TestAnUncertainOrderKeepsItsWords(t *testing.T) {
	m := manualOf(t, "mixer")
	r := jotting.New(m, machineOf(m, "dough-mixer"), m.Shop.Language)
	for _, text := range []string{"Put the hook pin back.", "Take the lamp away."} {
		if got := r.Step(text, nil).Links; len(got) != 0 {
			t.Errorf("%s: %v", text, got)
		}
	}
}
