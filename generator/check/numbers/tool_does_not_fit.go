package numbers

import (
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/trade/fastening"
)

// ToolDoesNotFit is told at the act on the fastener.
var ToolDoesNotFit = finding.Rule{
	Code:  "tool-does-not-fit",
	Title: "No tool here fits the fastener",
	Why:   "The wrong socket is found out under the machine: a walk to the crib at best, a rounded bolt at worst.",
	Mend:  "Name a socket, spanner or key that fits, put the size into its fits, or mend the fastener's width across flats.",
}

// toolsDoNotFit looks whether each fastener can be turned with what is there.
// What was told where it came off is not told again where it is reversed.
func toolsDoNotFit(j *job) []finding.Finding {
	var bad []turn
	for _, t := range j.turns {
		told := func(o turn) bool {
			return o.fastener == t.fastener && (o.step == t.step || t.link.Kind.Act == model.Reverse)
		}
		if !j.fits(t) && !slices.ContainsFunc(bad, told) {
			bad = append(bad, t)
		}
	}
	return byLink(bad, j.misfit)
}

// fits says whether a fastener can be turned, or nothing can be said.
func (j *job) fits(t turn) bool {
	if t.fastener.Lost("across-flats", "drive") || t.fastener.AcrossFlats.IsZero() && t.fastener.Drive == "" {
		return true
	}
	drivers, known := j.drivers(t.tools)
	return !known || len(t.heads()) == 0 || len(j.fitting(drivers, t)) > 0
}

// heads are the sizes by which the fastener is turned.
func (t turn) heads() []fastening.Size {
	return fastening.Heads(t.fastener.AcrossFlats, t.fastener.Drive)
}

// fitting are the tools that fit the fastener.
func (j *job) fitting(tools []*model.Tool, t turn) []*model.Tool {
	heads := t.heads()
	var out []*model.Tool
	for _, tool := range tools {
		if fastening.FitsAny(j.sizesOf(tool), heads) {
			out = append(out, tool)
		}
	}
	return out
}

// sizesOf is what a tool fits.
func (j *job) sizesOf(tool *model.Tool) []fastening.Size {
	sizes, read := j.sizes[tool]
	if !read {
		sizes = fastening.Sizes(tool.Fits)
		j.sizes[tool] = sizes
	}
	return sizes
}

// drivers are the tools that the fastener may be turned with. It is false where
// a tool does not say what it fits.
func (j *job) drivers(box toolbox) (tools []*model.Tool, known bool) {
	at := j.atHand(box)
	tools, known = at.Drivers(), j.chosen(box, at.NamesDriver())
	for _, t := range tools {
		known = known && !t.Lost("fits", "kind", "or") && len(t.Fits) > 0 && len(j.sizesOf(t)) == len(t.Fits) // each was read
	}
	return tools, known
}

// misfit says what fits nothing of what is there.
func (j *job) misfit(at *model.Link, bad []turn) finding.Finding {
	drivers, _ := j.drivers(bad[0].tools)
	f := ToolDoesNotFit.At(at.At, "%s: %s", sizes(bad), theyFit(drivers)).
		WithMend("name a tool that fits, or mend the size in the machine's file")
	for _, t := range bad {
		f = f.See(t.fastener.At, "the size of the %s is here", t.fastener.Label())
	}
	return f
}

// sizes says by what the fasteners are turned, "the seat bolt is 13 mm".
func sizes(bad []turn) finding.List {
	var each []finding.Words
	for _, t := range bad {
		var by []string
		if !t.fastener.AcrossFlats.IsZero() {
			by = append(by, t.fastener.AcrossFlats.String())
		}
		if t.fastener.Drive != "" {
			by = append(by, t.fastener.Drive)
		}
		each = append(each, finding.Say("the %s is %s", t.fastener.Label(), strings.Join(by, ", ")))
	}
	return listOf(each)
}

// theyFit says what the tools fit, "the socket fits 10 mm".
func theyFit(tools []*model.Tool) finding.List {
	if len(tools) == 0 {
		return listOf([]finding.Words{finding.Say("no socket, spanner or screwdriver is named here or listed")})
	}
	var each []finding.Words
	for _, t := range tools {
		each = append(each, finding.Say("the %s fits %s", t.Label(), strings.Join(t.Fits, ", ")))
	}
	return listOf(each)
}

// byLink makes one finding for all that is wrong at one link, each fastener
// once.
func byLink(bad []turn, say func(at *model.Link, bad []turn) finding.Finding) []finding.Finding {
	var links []*model.Link
	at := map[*model.Link][]turn{}
	for _, t := range bad {
		if at[t.link] == nil {
			links = append(links, t.link)
		}
		if !slices.ContainsFunc(at[t.link], func(o turn) bool { return o.fastener == t.fastener }) {
			at[t.link] = append(at[t.link], t)
		}
	}
	var found []finding.Finding
	for _, link := range links {
		found = append(found, say(link, at[link]))
	}
	return found
}
