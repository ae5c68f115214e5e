package fastening

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
)

// rig is a bolt that holds two parts, a nut that holds none, and steps on them.
type rig struct {
	bolt, nut *model.Fastener
	lid, tray *model.Part
}

func newRig() *rig {
	r := &rig{bolt: &model.Fastener{}, nut: &model.Fastener{}, lid: &model.Part{}, tray: &model.Part{}}
	for _, p := range []*model.Part{r.lid, r.tray} {
		p.HeldBy = []model.Use[model.Fastener]{{Ref: model.Ref[model.Fastener]{To: r.bolt}}}
		r.bolt.Holds = append(r.bolt.Holds, p)
	}
	return r
}

// link is a link by its words: "tighten bolt", "loosen bolt at lid", "remove lid",
// "when", "reverse" of a phase, "do" of a procedure.
func (r *rig) link(t *testing.T, words string, phases []*model.Phase, callees map[string]*model.Procedure) *model.Link {
	t.Helper()
	word, rest, _ := strings.Cut(words, " ")
	kind, known := model.KindNamed(word)
	if !known {
		t.Fatal(words)
	}
	l := &model.Link{Kind: kind}
	of, at, _ := strings.Cut(rest, " at ")
	l.Besides().Part = map[string]*model.Part{"lid": r.lid, "tray": r.tray}[at]
	switch of {
	case "bolt":
		l.To = r.bolt
	case "nut":
		l.To = r.nut
	case "lid":
		l.To = r.lid
	case "tray":
		l.To = r.tray
	case "":
	default:
		if word == "do" {
			l.To = callees[of]
			break
		}
		l.Besides().Phase = phases[of[0]-'A']
		if strings.HasSuffix(of, "#") {
			l.Sign = '#'
		}
	}
	return l
}

// procedure is one of steps "A: tighten bolt, remove lid": the phase and the links.
func (r *rig) procedure(t *testing.T, text string, callees map[string]*model.Procedure) *model.Procedure {
	t.Helper()
	phases := []*model.Phase{{}, {}, {}}
	p := &model.Procedure{}
	for _, line := range strings.Split(text, "; ") {
		name, links, _ := strings.Cut(line, ": ")
		s := &model.Step{Phase: phases[name[0]-'A'], Of: p}
		for _, words := range strings.Split(links, ", ") {
			s.Links = append(s.Links, r.link(t, words, phases, callees))
		}
		p.Steps = append(p.Steps, s)
	}
	return p
}

// told is of each tighten: link in its order whether it tightens what is tight.
func told(p *model.Procedure, again map[*model.Link]bool) string {
	var out []string
	for _, s := range p.Steps {
		for _, l := range s.Links {
			if l.Kind.Act == model.Tighten {
				out = append(out, map[bool]string{true: "again", false: "all"}[again[l]])
			}
		}
	}
	return strings.Join(out, " ")
}

// What is tight already is asked for the last stage alone, where it is sure on
// every unit and whatever happened. Worked out by hand from that rule, and from
// the format's scope of a fastener act: the part that it names, else those that
// its step takes off or puts back, else wherever it holds.
func TestAgain(t *testing.T) {
	for _, c := range []struct{ steps, want string }{
		{"A: tighten bolt", "all"},
		{"A: tighten bolt; A: tighten bolt", "all again"},
		{"A: tighten nut; A: tighten nut", "all again"},
		{"A: tighten bolt; A: tighten nut", "all all"},
		{"A: tighten bolt; A: loosen bolt; A: tighten bolt", "all all"},
		{"A: tighten bolt; A: loosen nut; A: tighten bolt", "all again"},
		{"A: tighten bolt at lid; A: tighten bolt at tray; A: tighten bolt", "all all again"},
		{"A: tighten bolt at lid; A: tighten bolt", "all all"},
		{"A: tighten bolt; A: loosen bolt at tray; A: tighten bolt at lid; A: tighten bolt at tray", "all again all"},
		{"A: tighten bolt; A: remove lid; A: tighten bolt at tray; A: tighten bolt at lid", "all again all"},
		{"A: tighten bolt; A: refit lid; A: tighten bolt", "all all"},
		{"A: refit lid, tighten bolt; A: tighten bolt at lid; A: tighten bolt at tray", "all again all"},
		{"A: part lid, tighten bolt; A: tighten bolt at tray", "all again"}, // a mention moves nothing
		{"A: when, tighten bolt; A: tighten bolt", "all all"},
		{"A: tighten bolt; A: when, loosen bolt; A: tighten bolt", "all all"},
		{"A: tighten bolt; A: when, tighten bolt; A: tighten bolt", "all again again"},
		{"A: loosen bolt; B: reverse A; B: tighten bolt", "again"},
		{"A: loosen bolt; B: reverse A#; B: tighten bolt", "all"},
		{"A: loosen bolt; B: when, reverse A; B: tighten bolt", "all"},
		{"A: loosen bolt; B: loosen bolt; C: reverse A; C: tighten bolt", "all"},
		{"A: loosen bolt; B: loosen nut; C: reverse A; C: tighten bolt; C: tighten nut", "again all"},
	} {
		p := newRig().procedure(t, c.steps, nil)
		if got := told(p, new(Book).Again(p)); got != c.want {
			t.Errorf("%s: %s, want %s", c.steps, got, c.want)
		}
	}
}

// What a phase, or a step above, makes conditional is not sure either.
func TestAgainBelowACondition(t *testing.T) {
	when, _ := model.KindNamed("when")
	condition := []*model.Link{{Kind: when}}
	for name, on := range map[string]func(s *model.Step){
		"its phase":      func(s *model.Step) { s.Phase = &model.Phase{Lead: &model.Block{Links: condition}} },
		"the step above": func(s *model.Step) { s.Parent = &model.Step{Links: condition} },
	} {
		p := newRig().procedure(t, "A: tighten bolt; A: tighten bolt", nil)
		on(p.Steps[0])
		if got := told(p, new(Book).Again(p)); got != "all all" {
			t.Errorf("%s is conditional: %s", name, got)
		}
	}
	p := newRig().procedure(t, "A: tighten bolt; A: tighten bolt", nil)
	p.Steps[0].Phase = &model.Phase{Lead: &model.Block{}}
	p.Steps[0].Parent = &model.Step{}
	if got := told(p, new(Book).Again(p)); got != "all again" {
		t.Errorf("nothing is conditional: %s", got)
	}
}

// What is performed leaves things tight and loose, each as it was left last; a
// ring of calls does nothing again.
func TestAgainThroughCalls(t *testing.T) {
	for _, c := range []struct{ callee, steps, want string }{
		{"A: tighten bolt", "A: do callee; A: tighten bolt", "again"},
		{"A: loosen bolt", "A: tighten bolt; A: do callee; A: tighten bolt", "all all"},
		{"A: loosen bolt; A: tighten bolt", "A: tighten bolt; A: do callee; A: tighten bolt", "all again"},
		{"A: loosen nut", "A: tighten bolt; A: do callee; A: tighten bolt", "all again"},
		{"A: loosen bolt at lid", "A: tighten bolt; A: do callee; A: tighten bolt at tray; A: tighten bolt at lid", "all again all"},
		{"A: remove lid", "A: tighten bolt; A: do callee; A: tighten bolt at lid", "all all"},
		{"A: when, tighten bolt", "A: do callee; A: tighten bolt", "all"},
		{"A: loosen bolt; B: reverse A", "A: do callee; A: tighten bolt", "again"},
		{"A: tighten bolt", "A: do callee; A: loosen bolt; A: do callee; A: tighten bolt", "again"},
	} {
		r := newRig()
		callee := r.procedure(t, c.callee, nil)
		p := r.procedure(t, c.steps, map[string]*model.Procedure{"callee": callee})
		b := new(Book)
		for range 2 { // what is kept says the same
			if got := told(p, b.Again(p)); got != c.want {
				t.Errorf("%s, performing %s: %s, want %s", c.steps, c.callee, got, c.want)
			}
		}
	}
}

func TestAgainInARing(t *testing.T) {
	r := newRig()
	callees := map[string]*model.Procedure{"a": {}, "b": {}}
	*callees["b"] = *r.procedure(t, "A: loosen nut; A: do a", callees)
	*callees["a"] = *r.procedure(t, "A: tighten bolt; A: tighten nut; A: do b; A: tighten bolt; A: tighten nut", callees)
	a := callees["a"]
	b := new(Book)
	for range 2 {
		if got := told(a, b.Again(a)); got != "all all again all" {
			t.Errorf("in a ring: %s", got)
		}
	}
}

// A procedure is followed once, until it is forgotten; one that tightens
// nothing says nothing, and links that could not be read are left out.
func TestTheBookIsKeptUntilForgotten(t *testing.T) {
	r := newRig()
	callee := r.procedure(t, "A: tighten bolt", nil)
	p := r.procedure(t, "A: do callee; A: tighten bolt", map[string]*model.Procedure{"callee": callee})
	b := new(Book)
	if got := told(p, b.Again(p)); got != "again" {
		t.Fatal(got)
	}
	callee.Steps = r.procedure(t, "A: loosen bolt", nil).Steps
	if got := told(p, b.Again(p)); got != "again" {
		t.Errorf("before it is forgotten: %s", got)
	}
	b.Forget(callee)
	if got := told(p, b.Again(p)); got != "all" {
		t.Errorf("after it was forgotten: %s", got)
	}
	if again := b.Again(callee); again != nil {
		t.Errorf("of what tightens nothing: %v", again)
	}
	bad := r.procedure(t, "A: tighten bolt; A: tighten bolt", nil)
	bad.Steps[0].Links[0].Bad = true
	if again := b.Again(bad); len(again) != 1 || again[bad.Steps[1].Links[0]] {
		t.Errorf("beside a link that could not be read: %v", again)
	}
}

// Of what is tight already the last stage alone is asked.
func TestAsked(t *testing.T) {
	amounts := func(texts ...string) (out []quantity.Quantity) {
		for _, text := range texts {
			out = append(out, amount(t, text))
		}
		return out
	}
	staged := &model.Fastener{Stages: amounts("30 N·m", "60 N·m", "90°")}
	if Asked(staged, false) != staged {
		t.Error("what is loose is not asked for all stages")
	}
	last := Asked(staged, true)
	if len(last.Stages) != 1 || last.Stages[0].String() != "90°" || len(staged.Stages) != 3 {
		t.Errorf("asked for %v of %v", last.Stages, staged.Stages)
	}
	if len(Torques(last)) != 0 || len(Torques(staged)) != 2 || fmt.Sprint(Angles(staged)) != "[90°]" || len(Angles(&model.Fastener{Stages: amounts("30 N·m")})) != 0 {
		t.Errorf("torques %v, angles %v", Torques(staged), Angles(staged))
	}
	for _, f := range []*model.Fastener{{Stages: amounts("30 N·m")}, {}} {
		if Asked(f, true) != f {
			t.Errorf("of %v another is asked", f.Stages)
		}
	}
	two := &model.Fastener{Stages: amounts("30 N·m", "60 N·m")}
	if got := Asked(two, true).Stages; len(got) != 1 || got[0].String() != "60 N·m" {
		t.Errorf("of two stages %v is asked", got)
	}
}

func named(tools []*model.Tool) string {
	var out []string
	for _, t := range tools {
		out = append(out, t.Name)
	}
	return strings.Join(out, " ")
}

// What a fastener is turned with is what the step names, else what is listed;
// what may stand in for it too; an adapter that lies there may help, and makes
// no step one that names its drivers.
func TestAtHand(t *testing.T) {
	socket, spanner, driver := tool(t, "socket", "socket", "", "", ""), tool(t, "spanner", "spanner", "", "", ""), tool(t, "screwdriver", "driver", "", "", "")
	wrench, other := tool(t, "torque-wrench", "wrench", "5 to 25 N·m", "", ""), tool(t, "torque-wrench", "other", "5 to 25 N·m", "", "")
	lamp, adapter, key := tool(t, "other", "lamp", "", "", ""), tool(t, "other", "adapter", "", "", "30 mm"), tool(t, "other", "key", "", "", "")
	key.Fits = []string{"17 mm"}
	adapter.Fits = nil
	instead := tool(t, "spanner", "instead", "", "", "")
	socket.Or = []model.Ref[model.Tool]{{ID: "instead", To: instead}, {ID: "gone"}, {ID: "instead", To: instead}}
	for _, c := range []struct {
		at                AtHand
		wrenches, drivers string
		names             bool
	}{
		{AtHand{}, "", "", false},
		{AtHand{Listed: []*model.Tool{socket, wrench, lamp}}, "wrench", "socket instead", false},
		{AtHand{Named: []*model.Tool{spanner}, Listed: []*model.Tool{socket, wrench}}, "wrench", "spanner", true},
		{AtHand{Named: []*model.Tool{driver, other}, Listed: []*model.Tool{socket, wrench}}, "other", "driver", true},
		{AtHand{Placed: []*model.Tool{other}, Listed: []*model.Tool{wrench, spanner}}, "other", "spanner", false},
		{AtHand{Named: []*model.Tool{lamp}, Listed: []*model.Tool{spanner}}, "", "spanner", false},
		{AtHand{Named: []*model.Tool{adapter}, Listed: []*model.Tool{spanner}}, "", "spanner adapter", false},
		{AtHand{Placed: []*model.Tool{key, key}, Listed: []*model.Tool{spanner}}, "", "spanner key", false},
		{AtHand{Named: []*model.Tool{spanner, spanner}}, "", "spanner", true},
	} {
		if named(c.at.Wrenches()) != c.wrenches || named(c.at.Drivers()) != c.drivers || c.at.NamesDriver() != c.names {
			t.Errorf("named %s, placed %s, listed %s: wrenches %s, drivers %s, %v", named(c.at.Named), named(c.at.Placed), named(c.at.Listed), named(c.at.Wrenches()), named(c.at.Drivers()), c.at.NamesDriver())
		}
	}
	if got := WithSubstitutes([]*model.Tool{socket, instead}); !slices.Equal(got, []*model.Tool{socket, instead}) {
		t.Errorf("a substitute that is there already stands twice: %s", named(got))
	}
}

// What the tables of ISO 898-1 know is judged; what is not said is no obstacle.
func TestJudged(t *testing.T) {
	for in, want := range map[[2]string]bool{
		{"M8x1.25", "8.8"}: true, {"M8", ""}: true, {"", "8.8"}: true, {"", ""}: true,
		{"G 1/4", "8.8"}: false, {"M8", "A2-70"}: false, {"3/8-16 UNC", ""}: false, {"", "grade 5"}: false,
	} {
		if got := Judged(in[0], in[1]); got != want {
			t.Errorf("%q of class %q is judged: %v", in[0], in[1], got)
		}
	}
}
