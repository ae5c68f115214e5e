package finding_test

import (
	"fmt"
	"strings"
	"testing"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
)

var (
	noTool = finding.Rule{Code: "no-tool", Title: "A tool that is not there", Why: "Why.", Mend: "Mend."}
	vague  = finding.Rule{Code: "vague", Level: finding.Advice, Title: "Vague words", Why: "Why.", Mend: "Mend."}
)

func written(t *testing.T, list []finding.Finding, o finding.TextOptions) string {
	t.Helper()
	var b strings.Builder
	if err := finding.Text(&b, list, o); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func TestTextShowsThePlaceTheMendAndTheOtherPlaces(t *testing.T) {
	f := position.NewFile("procedures/pump.md", "one\n\tUse the [sokcet](tool:sokcet).\n")
	first := position.NewFile("register/tools.yaml", "socket: { name: socket }\n")
	start := strings.Index(f.Text, "[sokcet")
	list := []finding.Finding{
		noTool.At(f.At(start, start+len("[sokcet](tool:sokcet)")), "there is no tool sokcet").
			WithMend("did you mean socket?").See(first.At(0, 6), "the socket is here"),
	}
	want := `procedures/pump.md:2:10: error: there is no tool sokcet [no-tool]
    	Use the [sokcet](tool:sokcet).
    	        ^^^^^^^^^^^^^^^^^^^^^
    mend: did you mean socket?
    register/tools.yaml:1:1: the socket is here

1 error, 0 advice, in 1 file
`
	if got := written(t, list, finding.TextOptions{All: true}); got != want {
		t.Errorf("got:\n%s\nwant:\n%s", got, want)
	}
}

// The mark stands under the place: after an accent that is a sign of its own,
// which takes no column, and after signs that take two.
func TestMarkStandsUnderThePlace(t *testing.T) {
	for _, c := range []struct{ line, place, mark string }{
		{"Use it", "it", "    ^^"},
		{"sen\u0303al x", "x", "      ^"},    // s e n+tilde a l space: six columns
		{"señal x", "x", "      ^"},          // the same, composed
		{"液圧 x", "x", "     ^"},              // two signs of two columns and a space
		{"a\tb\tc", "c", " \t \t^"},          // a tab stays a tab
		{"a 液圧", "液圧", "  ^^^^"},             // the place itself is four columns wide
		{"end", "", "^"},                     // a place of no length is still marked
		{"a" + "\u200e" + "b c", "c", ""},    // signs that turn the direction are made visible
		{"a\x1b[31mred", "red", "      ^^^"}, // so is what would colour the screen
	} {
		f := position.NewFile("a.md", c.line+"\n")
		start := strings.Index(f.Text, c.place)
		got := written(t, []finding.Finding{noTool.At(f.At(start, start+len(c.place)), "x")}, finding.TextOptions{All: true})
		lines := strings.Split(got, "\n")
		if strings.ContainsAny(got, "\x1b\u200e") {
			t.Errorf("%q: a sign that moves the cursor is printed: %q", c.line, got)
		}
		if c.mark != "" && lines[2] != "    "+c.mark {
			t.Errorf("%q: the mark is %q, want %q", c.line, lines[2], "    "+c.mark)
		}
	}
}

func TestLongLinesAreCutAroundThePlace(t *testing.T) {
	text := strings.Repeat("é", 500_000) + "HERE" + strings.Repeat("ü", 500_000)
	f := position.NewFile("a.md", text)
	start := strings.Index(text, "HERE")
	got := written(t, []finding.Finding{noTool.At(f.At(start, start+4), "x")}, finding.TextOptions{All: true})
	if len(got) > 1000 || !strings.Contains(got, "HERE") {
		t.Fatalf("%d bytes are written for one finding", len(got))
	}
	lines := strings.Split(got, "\n")
	if at, mark := strings.Index(string([]rune(lines[1])), "HERE"), strings.Index(lines[2], "^"); len([]rune(lines[1][:at])) != mark {
		t.Errorf("the mark does not stand under the place:\n%s\n%s", lines[1], lines[2])
	}
}

func TestWhatStandsNowhereIsTold(t *testing.T) {
	got := written(t, []finding.Finding{noTool.At(position.Pos{}, "there is no shop")}, finding.TextOptions{All: true})
	if !strings.HasPrefix(got, "error: there is no shop [no-tool]\n") {
		t.Errorf("got %q", got)
	}
	empty := position.NewFile("shop.yaml", "")
	got = written(t, []finding.Finding{noTool.At(empty.At(0, 0), "there is no shop.yaml")}, finding.TextOptions{All: true})
	if !strings.HasPrefix(got, "shop.yaml:1:1: error: there is no shop.yaml [no-tool]\n\n") {
		t.Errorf("got %q", got)
	}
}

// many makes n findings of a rule, each on a line of its own.
func many(rule *finding.Rule, n int) []finding.Finding {
	f := position.NewFile(rule.Code+".md", strings.Repeat("text\n", n))
	var list []finding.Finding
	for i := range n {
		list = append(list, rule.At(f.At(5*i, 5*i+4), "number %d", i+1))
	}
	return list
}

func TestAFirstRunShowsTheFirstThreeOfEachKind(t *testing.T) {
	list := append(many(&vague, 4), many(&noTool, 17)...)
	got := written(t, finding.Sort(list), finding.TextOptions{})
	for _, want := range []string{
		"A tool that is not there\nno-tool.md:1:1: error: number 1 [no-tool]\n",
		"number 3 [no-tool]\n    text\n    ^^^^\nand 14 more of this kind: check --all\n",
		"Vague words\n", "number 3 [vague]\n    text\n    ^^^^\nand 1 more of this kind: check --all\n",
		"\n17 errors, 4 advice, in 2 files\n",
	} {
		if !strings.Contains(got, want) {
			t.Errorf("missing %q in:\n%s", want, got)
		}
	}
	if strings.Contains(got, "number 4") {
		t.Errorf("a fourth is shown:\n%s", got)
	}
	if strings.Index(got, "A tool that") > strings.Index(got, "Vague words") {
		t.Errorf("advice stands before errors:\n%s", got)
	}
	if all := written(t, finding.Sort(list), finding.TextOptions{All: true}); strings.Count(all, "[no-tool]") != 17 || strings.Count(all, "[vague]") != 4 {
		t.Errorf("--all does not show every finding:\n%s", all)
	}
}

func TestAFirstRunFitsOnAScreen(t *testing.T) {
	var list []finding.Finding
	for i := range 30 {
		list = append(list, many(&finding.Rule{Code: fmt.Sprintf("code-%02d", i)}, 5)...)
	}
	got := written(t, list, finding.TextOptions{Lines: 24})
	if lines := strings.Count(got, "\n"); lines > 24+3 { // and the line with the rest, an empty one and the count
		t.Errorf("%d lines:\n%s", lines, got)
	}
	if !strings.Contains(got, "code-29 (5)") {
		t.Errorf("the last kind is not named:\n%s", got)
	}
}

func TestNothingFound(t *testing.T) {
	if got := written(t, nil, finding.TextOptions{}); got != "nothing found\n" {
		t.Errorf("got %q", got)
	}
}

type broken struct{}

func (broken) Write([]byte) (int, error) { return 0, fmt.Errorf("no room") }

func TestAWriterThatFailsIsTold(t *testing.T) {
	if finding.Text(broken{}, nil, finding.TextOptions{}) == nil || finding.SARIF(broken{}, nil, nil, &finding.Tongue{}) == nil {
		t.Error("a failed write is not returned")
	}
}

func TestCausesStandBeforeWhatFollowsFromThem(t *testing.T) {
	list := []finding.Finding{many(&vague, 1)[0], many(&noTool, 1)[0], many(&unread, 1)[0], many(&unready, 1)[0]}
	got := written(t, list, finding.TextOptions{First: []*finding.Rule{&unready, &unread}})
	want := []string{"[unread]", "[no-tool]", "[unready]", "[vague]"} // errors first, of each level the causes
	for i := 1; i < len(want); i++ {
		if strings.Index(got, want[i-1]) > strings.Index(got, want[i]) {
			t.Errorf("%s stands behind %s:\n%s", want[i-1], want[i], got)
		}
	}
}

func TestWhatSettleMendsIsCounted(t *testing.T) {
	list := many(&noTool, 3)
	list[0], list[2] = list[0].WithSettle(), list[2].WithSettle()
	if got := written(t, list, finding.TextOptions{}); !strings.HasSuffix(got, "3 errors, 0 advice, in 1 file; baybinder settle mends 2 of them\n") {
		t.Errorf("got %q", got)
	}
}

var (
	unread  = finding.Rule{Code: "unread"}
	unready = finding.Rule{Code: "unready", Level: finding.Advice}
)
