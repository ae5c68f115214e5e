package check

import (
	"regexp"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/language"
	"baybinder/generator/model"
)

var unwritten = finding.Rule{
	Code:  "unwritten",
	Level: finding.Advice,
	Ours:  true,
	Title: "Words of the template that nobody wrote over",
	Why:   "Say here what is done: begin writes such a line to be written over. Left in a procedure that is no draft, it is a step without an instruction.",
	Mend:  "Write what is done at that place, or take the line out. Until then write status: draft.",
}

// What begin writes to be written over begins with one of these, in the middle
// of a text or at the start of a line.
var (
	sayHere   = []string{"Say here", "say here", "Show here"}
	digaAqui  = []string{"Diga aquí", "diga aquí", "Muestre aquí"}
	lineStart = []string{"Say in one sentence what is done", "Say what the job is for", "Diga en una frase qué se hace", "Diga para qué es el trabajo"}
	toChoose  = hazardsToChoose()

	// templateWords finds them. It is slow, and hardly a file has any.
	templateWords = regexp.MustCompile(`\b(?:` + strings.Join(sayHere, "|") + `) (?:how|what|where)\b|\b(?:` + strings.Join(digaAqui, "|") + `) (?:cómo|qué|dónde)|(?:` + strings.Join(toChoose, "|") + `) \(|(?m:^(?:summary: )?)(` + strings.Join(lineStart, "|") + `)\b`)

	beginnings = slices.Concat(sayHere, digaAqui, lineStart, toChoose)
)

// hazardsToChoose are the words that begin writes in place of a typed signal
// word, in each language that has them.
func hazardsToChoose() (out []string) {
	for _, l := range language.All() {
		if words, _, is := strings.Cut(l.Jotted.ToChoose, " ("); is {
			out = append(out, words)
		}
	}
	return out
}

func runUnwritten(_ *Context, p *model.Procedure) []finding.Finding {
	if p.Draft() { // it is there to be written
		return nil
	}
	if !slices.ContainsFunc(beginnings, func(words string) bool { return strings.Contains(p.File.Text, words) }) {
		return nil
	}
	var found []finding.Finding
	for _, m := range templateWords.FindAllStringSubmatchIndex(p.File.Text, -1) {
		start := m[0]
		if m[2] >= 0 {
			start = m[2]
		}
		at := position.Pos{File: p.File, Start: start, End: m[1]}
		found = append(found, unwritten.At(at, "these words are the template's: nobody wrote over them").
			WithMend("write what is done here, or take the line out"))
	}
	return found
}
