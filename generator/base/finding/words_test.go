package finding_test

import (
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
)

// upside is a made-up language that has some words and lacks others.
var upside = &finding.Tongue{
	Lang: "xx",
	Texts: map[string]string{
		"%s has no %s": "%[2]s no %[1]s", "write it: %s": "ti etirw: %s", "no wrench": "hcnerw", "%d step": "%d pets", "%d steps": "%d spets", "it is here": "ereh",
	},
	And: func(string) string { return " & " },
}

var nothing = &finding.Rule{Code: "nothing"}

// Words inside words are told too, names are not, and what is lacking anywhere
// is told whole in English.
func TestTell(t *testing.T) {
	names := finding.ListOf(" and ", []string{"a", "b", "c"})
	at := position.Pos{}
	for _, c := range []struct {
		f    finding.Finding
		want string
	}{
		{nothing.At(at, "%s has no %s", "no wrench", finding.Say("no wrench")), "hcnerw no no wrench"},
		{nothing.At(at, "%s has no %s", "x", names), "a, b & c no x"},
		{nothing.At(at, "%s: %s", finding.Count(1, "%d step", "%d steps"), finding.Count(3, "%d step", "%d steps")), "1 pets: 3 spets"},
		{nothing.At(at, "%s: %s", "a", "b").WithMend("write it: %s", finding.Say("no wrench")).See(at, "it is here"), "a: b|ti etirw: hcnerw|ereh"},
		{nothing.At(at, "%s: %s", "a", "b").WithMend("write it: %s", finding.Say("no words")), "a: b|write it: no words"},
		{nothing.At(at, "%s has no %s", "x", finding.ListOf(" or ", []string{"a", "b"})), "x has no a or b"},
		{nothing.At(at, "no %s", "x").WithMend("write it: %s", "y"), "no x|write it: y"},
		{nothing.At(at, "100 %%").See(at, "it is here"), "100 %|ereh"},
	} {
		said := upside.Tell(c.f)
		got := said.Message
		for _, more := range []string{said.Mend, strings.Join(places(said), "|")} {
			if more != "" {
				got += "|" + more
			}
		}
		if english := said.Message == c.f.Message && said.Mend == c.f.Mend; got != c.want || (said.Lang == "") != english && len(said.Related) == 0 {
			t.Errorf("%q in %q, want %q", got, said.Lang, c.want)
		}
	}
	if f := (&finding.Tongue{}).Tell(nothing.At(at, "no %s", "x")); f.Message != "no x" || f.Lang != "" {
		t.Errorf("in English: %q in %q", f.Message, f.Lang)
	}
}

// Each passage of a report has its language: a finding that is told in English for
// want of words is English with the words around it, and the line of the manual is
// not.
func TestAReportMarksWhatIsInEnglish(t *testing.T) {
	f := position.NewFile("a.md", "torch\n")
	at := f.At(0, 5)
	list := upside.TellAll([]finding.Finding{
		nothing.At(at, "%s has no %s", "x", "y").WithMend("write it: %s", "z"),
		nothing.At(at, "no %s", "x").WithMend("write it: %s", "y"),
	})
	with := &finding.Tongue{Lang: "xx", Texts: map[string]string{"error": "rorre", "mend: %s": "dnem: %s", "nothing found": "dnuof gnihton"}}
	line := "    torch\n    ^^^^^\n"
	want := []finding.Passage{
		{Lang: "xx", Text: "a.md:1:1: rorre: y no x [nothing]\n" + line + "    dnem: ti etirw: z\n"},
		{Lang: "", Text: "a.md:1:1: error: no x [nothing]\n"},
		{Lang: "xx", Text: line},
		{Lang: "", Text: "    mend: write it: y\n\n2 errors, 0 advice, in 1 file\n"}, // with has no words for the count
	}
	got := finding.Report(list, finding.TextOptions{All: true, Tongue: with})
	if !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
	if none := finding.Report(nil, finding.TextOptions{Tongue: with}); !slices.Equal(none, []finding.Passage{{Lang: "xx", Text: "dnuof gnihton\n"}}) {
		t.Errorf("of nothing: %q", none)
	}
}

func places(f finding.Finding) (out []string) {
	for _, r := range f.Related {
		out = append(out, r.Message)
	}
	return out
}
