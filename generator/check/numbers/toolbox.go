package numbers

import (
	"slices"

	"baybinder/generator/base/finding"
	"baybinder/generator/language"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/trade/fastening"
	"baybinder/generator/trade/working"
)

// toolbox is what there is to work with at an act.
type toolbox struct {
	named      []*model.Tool // in the step's own paragraphs
	placed     []*model.Tool // put in place before, and not taken away
	unresolved bool          // a tool that was named is not known
}

// toolboxOf gathers the tools that links name.
func toolboxOf(links []*model.Link) toolbox {
	var box toolbox
	for _, link := range links {
		tool, is := link.To.(*model.Tool)
		switch {
		case link.Bad && (link.Kind.Target == model.ToTool || link.Odd || link.Kind == model.UnknownLink):
			box.unresolved = true
		case is && tool.Lost("kind", "or"):
			box.unresolved = true
		case is && !slices.Contains(box.named, tool):
			box.named = append(box.named, tool)
		}
	}
	return box
}

// with is the toolbox with what another has too.
func (b toolbox) with(other toolbox) toolbox {
	return toolbox{
		named:      slices.Concat(b.named, other.named),
		placed:     slices.Concat(b.placed, other.placed),
		unresolved: b.unresolved || other.unresolved,
	}
}

// all is everything that is at hand.
func (b toolbox) all() []*model.Tool { return slices.Concat(b.named, b.placed) }

// atHand is what there is to turn and tighten with at an act.
func (j *job) atHand(box toolbox) fastening.AtHand {
	return fastening.AtHand{Named: box.named, Placed: box.placed, Listed: j.tools}
}

// chosen says whether what was chosen is all that there was to choose from: a
// step that names its tools does without the list.
func (j *job) chosen(box toolbox, named bool) bool { return !box.unresolved && (named || j.toolsKnown) }

// toolsOf is the tools of a front matter, and those that a step of the procedure
// names and the list lacks: that is told as such, and is no reason to say that
// nothing fits. It is false where a tool or the list could not be read.
func toolsOf(p *model.Procedure) (tools []*model.Tool, known bool) {
	known = !p.Broken && !p.Lost("tools")
	for _, use := range p.Tools {
		if use.To == nil || use.To.Lost("kind", "or") {
			known = false
			continue
		}
		tools = append(tools, use.To)
	}
	for _, s := range p.Steps {
		for _, link := range s.Links {
			if tool, is := link.To.(*model.Tool); is && !tool.Lost("kind") && !slices.Contains(tools, tool) {
				tools = append(tools, tool)
			}
		}
	}
	return tools, known
}

// worked is a working in one line, in the language that it is told in.
func worked(explain func(in *words.Worked) working.Working) finding.Spoken {
	return func(lang string) string {
		in := &language.Of(lang).Worked
		return explain(in).Line(in.Source)
	}
}

// listOf joins words, "one, two and three".
func listOf[T any](words []T) finding.List { return finding.ListOf(" and ", words) }
