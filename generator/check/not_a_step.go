package check

import (
	"regexp"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

var notAStep = finding.Rule{
	Code:  "not-a-step",
	Level: finding.Advice,
	Ours:  true,
	Title: "An act or a hold that stands outside the numbered steps",
	Why:   "Only a numbered list under a phase holds steps. What stands beside it is shown on the page and does nothing: it has no number to call out, and what is taken off or switched off there counts as on.",
	Mend:  "Write it as a numbered step: 1. and a space at the margin. Where the thing is only mentioned, link it with part:, fastener:, energy:, fluid: or setting:.",
}

func runNotAStep(_ *Context, p *model.Procedure) []finding.Finding {
	var found []finding.Finding
	var under heading
	for _, b := range outsideSteps(p) {
		for _, link := range b.Links {
			if link.Kind.Act == model.NoAct && !link.Kind.InStep {
				continue
			}
			if under.otherAbove(b) {
				break
			}
			found = append(found, notAStep.At(link.At, "%s: stands outside the numbered steps: it is shown, and does nothing", link.Kind.Name).
				WithMend("%s", stepMend(b, link)))
			break // one a block: the mend moves all of it
		}
	}
	return found
}

// heading is the last one above a place in a file: who asks from the top down goes
// through the file once.
type heading struct {
	at   int // the line up to which the file was read
	line string
}

// otherAbove says that the heading right above a block is of another level than a
// phase's: that is told there, and with it mended the list is of steps.
func (h *heading) otherAbove(b *model.Block) bool {
	if b.At.Start < h.at {
		*h = heading{}
	}
	above := b.At.File.Text[h.at:b.At.Start]
	for line := range strings.Lines(above) {
		if anyHeading.MatchString(line) {
			h.line = line
		}
	}
	h.at += strings.LastIndexByte(above, '\n') + 1
	return h.line != "" && !strings.HasPrefix(h.line, "## ")
}

var anyHeading = regexp.MustCompile(`^#{1,6} `)

// numberedByHand is how a step begins that a word processor or a hand numbered:
// "Step 2.", "Paso 2:", "2 -", "a)".
var numberedByHand = regexp.MustCompile(`^(?i:(?:step|paso|stage)\s+\d+\s*[.:)–-]?|\d+\s*[–:-]|[a-z]\))\s*`)

// stepMend says how to make a step of a block.
func stepMend(b *model.Block, link *model.Link) finding.Words {
	plain := strings.TrimSpace(b.Plain)
	switch by := strings.TrimSpace(numberedByHand.FindString(plain)); {
	case !b.Para:
		return finding.Say("number the list: start its lines with 1. and not with -")
	case by != "":
		return finding.Say("write 1. at the margin in place of %s; the numbers that people read are made by the page", by)
	}
	if link.Is(model.LinkOn) || link.Is(model.LinkWhy) {
		return finding.Say("begin the paragraph in the column of its step's words: three spaces in, behind 10. and more four")
	}
	if word := mentionOf(link); word != "" {
		return finding.Say("write it as a step, 1. at the margin, or as a mention, %s:%s", word, link.ID)
	}
	return finding.Say("write it as a step, with 1. at the margin, under the phase that it belongs to")
}

// mentionOf is the kind that only mentions what a link acts on, or "".
func mentionOf(link *model.Link) string {
	switch link.To.(type) {
	case *model.Part:
		return "part"
	case *model.Fastener:
		return "fastener"
	case *model.Energy:
		return "energy"
	case *model.Point:
		return "point"
	case *model.Fluid:
		return "fluid"
	case *model.Setting:
		return "setting"
	case *model.Procedure:
		return "see"
	}
	return ""
}
