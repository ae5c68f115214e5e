package finding

import (
	"encoding/json"
	"io"
	"net/url"
	"strings"

	"baybinder/generator/base/position"
)

// SARIF writes findings as SARIF 2.1.0 (OASIS Standard, 27 March 2020), for
// editors and build servers. Addresses are relative to the manual, columns
// count code points from 1, and advice is a note. The rules are the catalogue
// that the findings' codes are from, told in the language.
func SARIF(w io.Writer, list []Finding, rules []*Rule, t *Tongue) error {
	run := sarifRun{
		Language:           t.Lang,
		Tool:               sarifTool{Driver: sarifDriver{Name: "baybinder", Rules: sarifRules(rules, t)}},
		OriginalURIBaseIDs: map[string]sarifBase{manualBase: {Description: sarifText{"The manual's folder."}}},
		ColumnKind:         "unicodeCodePoints",
		Results:            make([]sarifResult, len(list)),
	}
	index := map[string]int{}
	for i, r := range rules {
		index[r.Code] = i
	}
	for i, f := range list {
		run.Results[i] = sarifResultOf(f, index, t)
	}
	out := json.NewEncoder(w)
	out.SetEscapeHTML(false)
	out.SetIndent("", "  ")
	return out.Encode(sarifLog{Schema: sarifSchema, Version: "2.1.0", Runs: []sarifRun{run}})
}

const (
	sarifSchema = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
	manualBase  = "MANUAL"
)

type sarifLog struct {
	Schema  string     `json:"$schema"`
	Version string     `json:"version"`
	Runs    []sarifRun `json:"runs"`
}

type sarifRun struct {
	Tool               sarifTool            `json:"tool"`
	Language           string               `json:"language,omitempty"` // section 3.14.7; English where it is absent
	OriginalURIBaseIDs map[string]sarifBase `json:"originalUriBaseIds"`
	ColumnKind         string               `json:"columnKind"`
	Results            []sarifResult        `json:"results"`
}

type sarifTool struct {
	Driver sarifDriver `json:"driver"`
}

type sarifDriver struct {
	Name  string      `json:"name"`
	Rules []sarifRule `json:"rules"`
}

type sarifRule struct {
	ID               string       `json:"id"`
	ShortDescription sarifText    `json:"shortDescription"`
	FullDescription  sarifText    `json:"fullDescription"`
	Help             sarifText    `json:"help"`
	Default          sarifDefault `json:"defaultConfiguration"`
}

type sarifDefault struct {
	Level string `json:"level"`
}

type sarifText struct {
	Text string `json:"text"`
}

type sarifBase struct {
	Description sarifText `json:"description"`
}

type sarifResult struct {
	RuleID    string          `json:"ruleId"`
	RuleIndex *int            `json:"ruleIndex,omitempty"`
	Level     string          `json:"level"`
	Message   sarifText       `json:"message"`
	Locations []sarifLocation `json:"locations,omitempty"`
	Related   []sarifLocation `json:"relatedLocations,omitempty"`
}

type sarifLocation struct {
	ID       int            `json:"id,omitempty"`
	Physical *sarifPhysical `json:"physicalLocation,omitempty"`
	Message  *sarifText     `json:"message,omitempty"`
}

type sarifPhysical struct {
	Artifact sarifArtifact `json:"artifactLocation"`
	Region   sarifRegion   `json:"region"`
}

type sarifArtifact struct {
	URI  string `json:"uri"`
	Base string `json:"uriBaseId"`
}

type sarifRegion struct {
	StartLine   int `json:"startLine"`
	StartColumn int `json:"startColumn"`
	EndLine     int `json:"endLine"`
	EndColumn   int `json:"endColumn"`
}

func sarifRules(rules []*Rule, t *Tongue) []sarifRule {
	out := make([]sarifRule, len(rules))
	for i, r := range rules {
		said := t.Rule(r)
		out[i] = sarifRule{
			ID:               r.Code,
			ShortDescription: sarifText{said.Title + "."},
			FullDescription:  sarifText{said.Why},
			Help:             sarifText{said.Why + " " + said.Mend},
			Default:          sarifDefault{sarifLevel(r.Level)},
		}
	}
	return out
}

func sarifLevel(l Level) string {
	if l == Advice {
		return "note"
	}
	return "error"
}

func sarifResultOf(f Finding, index map[string]int, t *Tongue) sarifResult {
	r := sarifResult{RuleID: f.Code, Level: sarifLevel(f.Level), Message: sarifText{sentence(f.Message)}}
	if i, known := index[f.Code]; known {
		r.RuleIndex = &i
	}
	if f.Mend != "" {
		mend, _ := t.Say(Say("Mend: %s", sentence(f.Mend)))
		r.Message.Text += " " + mend
	}
	if at := sarifPlace(f.At); at != nil {
		r.Locations = []sarifLocation{{Physical: at}}
	}
	for i, p := range f.Related {
		r.Related = append(r.Related, sarifLocation{ID: i + 1, Physical: sarifPlace(p.At), Message: &sarifText{sentence(p.Message)}})
	}
	return r
}

// sentence ends a text with a full stop, unless it ends a sentence already.
func sentence(text string) string {
	if strings.HasSuffix(text, "?") || strings.HasSuffix(text, ".") || strings.HasSuffix(text, "…") {
		return text
	}
	return text + "."
}

func sarifPlace(at position.Pos) *sarifPhysical {
	if at.File == nil {
		return nil
	}
	line, col := at.LineCol()
	endLine, endCol := at.File.LineCol(at.End)
	return &sarifPhysical{
		Artifact: sarifArtifact{URI: (&url.URL{Path: at.Path()}).EscapedPath(), Base: manualBase},
		Region:   sarifRegion{StartLine: line, StartColumn: col, EndLine: endLine, EndColumn: endCol},
	}
}
