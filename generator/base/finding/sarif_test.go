package finding_test

import (
	"bytes"
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/needed"
	"baybinder/generator/base/position"
	"baybinder/generator/check"
)

// Known: SEEN.

// sample has what is hard to write: text beyond ASCII before a place, a place
// over two lines, other places, a name with a space, advice, no place at all,
// a code that the catalogue does not have.
func sample() []finding.Finding {
	f := position.NewFile("procedures/übung/öl wechseln.md", "# 🔧 Öl\nsecond line\n")
	tools := position.NewFile("register/tools.yaml", "socket: x\n")
	start := strings.Index(f.Text, "Öl")
	return []finding.Finding{
		ruleNamed("not-listed").At(f.At(start, start+len("Öl")), "öl is used here").WithMend("did you mean oil?").
			See(tools.At(0, 6), "the first is here"),
		ruleNamed("hollow-link").At(f.At(start, strings.Index(f.Text, "line")), "no words <&>"),
		ruleNamed("syntax").At(tools.At(len(tools.Text), len(tools.Text)), "it ends here"),
		ruleNamed("syntax").At(position.Pos{}, "nowhere"),
		noTool.At(tools.At(0, 0), "a code that is not in the catalogue"),
	}
}

func ruleNamed(code string) *finding.Rule {
	for _, r := range check.Catalogue() {
		if r.Code == code {
			return r
		}
	}
	panic(code)
}

func sarifOf(t *testing.T, list []finding.Finding) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := finding.SARIF(&b, list, check.Catalogue(), &finding.Tongue{}); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestSARIFSaysWhatWasFound(t *testing.T) {
	var log struct {
		Version string
		Runs    []struct {
			ColumnKind string
			Tool       struct {
				Driver struct {
					Name  string
					Rules []struct{ ID string }
				}
			}
			Results []struct {
				RuleID, Level string
				RuleIndex     *int
				Message       struct{ Text string }
				Locations     []struct {
					PhysicalLocation struct {
						ArtifactLocation struct{ URI string }
						Region           struct{ StartLine, StartColumn, EndLine, EndColumn int }
					}
				}
				RelatedLocations []struct{ ID int }
			}
		}
	}
	if err := json.Unmarshal(sarifOf(t, sample()), &log); err != nil {
		t.Fatal(err)
	}
	run := log.Runs[0]
	if log.Version != "2.1.0" || run.ColumnKind != "unicodeCodePoints" || run.Tool.Driver.Name != "baybinder" {
		t.Errorf("the head is %q %q %q", log.Version, run.ColumnKind, run.Tool.Driver.Name)
	}
	first := run.Results[0]
	if first.Level != "error" || first.Message.Text != "öl is used here. Mend: did you mean oil?" || len(first.RelatedLocations) != 1 {
		t.Errorf("the first result is %+v", first)
	}
	if run.Tool.Driver.Rules[*first.RuleIndex].ID != "not-listed" {
		t.Errorf("the index leads to %s", run.Tool.Driver.Rules[*first.RuleIndex].ID)
	}
	// "# 🔧 Öl": the place is the fifth sign, though the ninth byte
	place := first.Locations[0].PhysicalLocation
	if place.Region.StartLine != 1 || place.Region.StartColumn != 5 || place.Region.EndColumn != 7 {
		t.Errorf("the region is %+v", place.Region)
	}
	// RFC 3986: what is not ASCII, and the space, is percent-encoded
	if place.ArtifactLocation.URI != "procedures/%C3%BCbung/%C3%B6l%20wechseln.md" {
		t.Errorf("the address is %s", place.ArtifactLocation.URI)
	}
	if second := run.Results[1]; second.Level != "note" || second.Locations[0].PhysicalLocation.Region.EndLine != 2 {
		t.Errorf("the second result is %+v", second)
	}
	if len(run.Results[3].Locations) != 0 || run.Results[4].RuleIndex != nil {
		t.Error("what has no place or no rule has one")
	}
}

func TestSARIFIsTheSameEveryTime(t *testing.T) {
	if !bytes.Equal(sarifOf(t, sample()), sarifOf(t, sample())) {
		t.Error("two runs differ")
	}
	if !bytes.Contains(sarifOf(t, nil), []byte(`"results": []`)) {
		t.Error("no findings are not an empty list")
	}
}

// The judges are the validator of @microsoft/sarif-multitool 5.7.0, which knows
// what the standard asks beyond its schema, and ajv 8.20.0 with the schema,
// which sees words that the validator lets pass. Each is shown bad files too,
// and must object.
func TestSARIFIsValid(t *testing.T) {
	good := sarifOf(t, append(sample(), sample()...))
	lineZero := bytes.Replace(good, []byte(`"startLine": 1`), []byte(`"startLine": 0`), 1)
	noSuchLevel := bytes.Replace(good, []byte(`"level": "note"`), []byte(`"level": "advice"`), 1)
	for name, judge := range map[string]func(*testing.T, []byte) []string{"multitool": multitool, "ajv": ajv} {
		if errs := judge(t, good); len(errs) > 0 {
			t.Errorf("%s objects:\n%s", name, strings.Join(errs, "\n"))
		}
		if len(judge(t, lineZero)) == 0 {
			t.Errorf("%s does not object to a line 0", name)
		}
	}
	if len(ajv(t, noSuchLevel)) == 0 {
		t.Error("ajv does not object to a level that SARIF does not have")
	}
}

var sarifError = regexp.MustCompile(`(?m)^.*: error .*$`)

func multitool(t *testing.T, log []byte) []string {
	t.Helper()
	tool := filepath.Join(judges(t, "@microsoft/sarif-multitool-linux"), "@microsoft", "sarif-multitool-linux", "Sarif.Multitool")
	if err := os.Chmod(tool, 0o755); err != nil { // the package's own install script does that
		t.Fatal(err)
	}
	cmd := exec.Command(tool, "validate", fileOf(t, log))
	cmd.Env = append(os.Environ(), "DOTNET_SYSTEM_GLOBALIZATION_INVARIANT=1")
	out, _ := cmd.CombinedOutput() // its exit code says nothing: what it prints does
	if !strings.Contains(string(out), "1 files scanned") {
		t.Fatalf("the validator did not run:\n%s", out)
	}
	return sarifError.FindAllString(string(out), -1)
}

func ajv(t *testing.T, log []byte) []string {
	t.Helper()
	out, err := exec.Command("node", filepath.Join("testdata", "judge.cjs"), judges(t, "ajv"), fileOf(t, log)).CombinedOutput()
	said, done := strings.CutSuffix(string(out), "judged\n")
	if err != nil || !done {
		t.Fatalf("ajv did not run: %v\n%s", err, out)
	}
	return strings.FieldsFunc(said, func(r rune) bool { return r == '\n' })
}

// judges is the folder of the outside judges, which npm ci in .ci fills.
func judges(t *testing.T, name string) string {
	t.Helper()
	folder, err := filepath.Abs(filepath.Join("..", "..", "..", ".ci", "node_modules"))
	if err != nil {
		t.Fatal(err)
	}
	_, err = os.Stat(filepath.Join(folder, name))
	needed.Judge(t, err == nil, name)
	return folder
}

func fileOf(t *testing.T, log []byte) string {
	t.Helper()
	name := filepath.Join(t.TempDir(), "findings.sarif")
	if err := os.WriteFile(name, log, 0o600); err != nil {
		t.Fatal(err)
	}
	return name
}
