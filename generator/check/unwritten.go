package check

import (
	"regexp"
	"slices"
	"strings"

	"baybinder/generator/finding"
	"baybinder/generator/manual"
	"baybinder/generator/source"
)

var unwritten = finding.Rule{
	Code:  "unwritten",
	Level: finding.Advice,
	Title: "Words of the template that nobody wrote over",
	Why:   "Say here what is done: begin writes such a line to be written over. Left in a procedure that is no draft, it is a step without an instruction.",
	Mend:  "Write what is done at that place, or take the line out. Until then write status: draft.",
}

// templateWords are what begin writes to be written over.
var templateWords = regexp.MustCompile(`\b(?:Say|say|Show) here (?:how|what|where)\b|\b(?:Diga|diga|Muestre) aquí (?:cómo|qué|dónde)|(?m:^(?:summary: )?)(Say in one sentence what is done|Say what the job is for|Diga en una frase qué se hace|Diga para qué es el trabajo)\b`)

// templateSigns are pieces of those words: hardly a file has one, and only
// where there is one are the words looked for.
var templateSigns = []string{"ay here ", "Show here ", "Say in one sentence ", "Say what the job ", "iga aquí ", "Muestre aquí ", "Diga en una frase ", "Diga para qué "}

func runUnwritten(_ *Context, p *manual.Procedure) []finding.Finding {
	if p.Draft() { // it is there to be written
		return nil
	}
	if !slices.ContainsFunc(templateSigns, func(sign string) bool { return strings.Contains(p.File.Text, sign) }) {
		return nil
	}
	var found []finding.Finding
	for _, m := range templateWords.FindAllStringSubmatchIndex(p.File.Text, -1) {
		start := m[0]
		if m[2] >= 0 {
			start = m[2]
		}
		at := source.Pos{File: p.File, Start: start, End: m[1]}
		found = append(found, unwritten.At(at, "these words are the template's: nobody wrote over them").
			WithMend("write what is done here, or take the line out"))
	}
	return found
}
