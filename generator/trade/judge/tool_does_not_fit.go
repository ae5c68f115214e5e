package judge

import (
	"slices"

	"baybinder/generator/finding"
	"baybinder/generator/manual"
	"baybinder/generator/trade/fastening"
)

// ToolDoesNotFit is told at the act on the fastener.
var ToolDoesNotFit = finding.Rule{
	Code:  "tool-does-not-fit",
	Title: "No tool here fits the fastener",
	Why:   "The wrong socket is found out under the machine: a walk to the crib at best, a rounded bolt at worst.",
	Mend:  "Name a socket, spanner or key that fits, put the size into its fits, or mend the fastener's width across flats.",
}

// driving are the kinds of tools that turn a fastener.
var driving = []string{"socket", "spanner", "screwdriver"}

// toolsDoNotFit looks whether each fastener can be turned with what is there.
func toolsDoNotFit(j *job) []finding.Finding {
	var bad []turn
	for _, t := range oncePerStep(j.turns) {
		heads := fastening.Heads(t.fastener.AcrossFlats, t.fastener.Drive)
		if drivers, known := j.drivers(t.tools); known && len(heads) > 0 && !fitsOne(drivers, heads) {
			bad = append(bad, t)
		}
	}
	return byLink(bad, j.misfit)
}

// drivers are the tools that the fastener may be turned with. Tools of another
// kind that say what they fit may help, and so may those left in place; they do
// not make the step one that names its drivers. It is false where a tool does
// not say what it fits.
func (j *job) drivers(box toolbox) (tools []*manual.Tool, known bool) {
	tools, known = j.choice(box, driving...)
	for _, t := range box.all() {
		if len(t.Fits) > 0 && !slices.Contains(tools, t) {
			tools = append(tools, t)
		}
	}
	tools = withSubstitutes(tools)
	for _, t := range tools {
		known = known && !t.Unread && len(t.Fits) > 0
	}
	return tools, known
}

func fitsOne(tools []*manual.Tool, heads []fastening.Size) bool {
	return slices.ContainsFunc(tools, func(t *manual.Tool) bool { return fastening.FitsAny(t.Fits, heads) })
}

// oncePerStep leaves out what another act of the same step says of the same
// fastener. Both acts of a step have one toolbox, or one link.
func oncePerStep(turns []turn) []turn {
	var out []turn
	for _, t := range turns {
		same := func(o turn) bool {
			return o.fastener == t.fastener && (o.link == t.link || o.step() == t.step())
		}
		if !slices.ContainsFunc(out, same) {
			out = append(out, t)
		}
	}
	return out
}

// byLink makes one finding for all that is wrong at one link.
func byLink(bad []turn, say func(at *manual.Link, bad []turn) finding.Finding) []finding.Finding {
	var found []finding.Finding
	for len(bad) > 0 {
		link := bad[0].link
		var here, rest []turn
		for _, t := range bad {
			if t.link == link {
				here = append(here, t)
			} else {
				rest = append(rest, t)
			}
		}
		found = append(found, say(link, here))
		bad = rest
	}
	return found
}
