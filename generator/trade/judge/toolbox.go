package judge

import (
	"slices"
	"strings"

	"baybinder/generator/manual"
)

// toolbox is what there is to work with at an act.
type toolbox struct {
	named  []*manual.Tool // in the step's own paragraphs
	placed []*manual.Tool // put in place before, and not taken away
	murky  bool           // a tool that was named is not known
}

// toolboxOf gathers the tools that links name.
func toolboxOf(links []*manual.Link) toolbox {
	var box toolbox
	for _, link := range links {
		tool, is := link.To.(*manual.Tool)
		switch {
		case link.Bad && (link.Kind.Target == manual.ToTool || link.Kind == manual.UnknownLink):
			box.murky = true
		case is && tool.Unread:
			box.murky = true
		case is && !slices.Contains(box.named, tool):
			box.named = append(box.named, tool)
		}
	}
	return box
}

// with is the toolbox with what another has too.
func (b toolbox) with(other toolbox) toolbox {
	return toolbox{
		named:  slices.Concat(b.named, other.named),
		placed: slices.Concat(b.placed, other.placed),
		murky:  b.murky || other.murky,
	}
}

// all is everything that is at hand.
func (b toolbox) all() []*manual.Tool { return slices.Concat(b.named, b.placed) }

// choice is the tools from which one has to do: those of some kinds that the
// step names, else those that the procedure lists. It is false where nothing
// can be said, because a tool or the list could not be read.
func (j *job) choice(box toolbox, kinds ...string) (tools []*manual.Tool, known bool) {
	if named := ofKind(box.named, kinds); len(named) > 0 {
		return named, !box.murky
	}
	return ofKind(j.tools, kinds), j.toolsKnown && !box.murky
}

// toolsOf is the tools of a front matter, and those that a step of the procedure
// names and the list lacks: that is told as such, and is no reason to say that
// nothing fits. It is false where a tool or the list could not be read.
func toolsOf(p *manual.Procedure) (tools []*manual.Tool, known bool) {
	known = !p.Broken && !p.Unread
	for _, use := range p.Tools {
		if use.To == nil || use.To.Unread {
			known = false
			continue
		}
		tools = append(tools, use.To)
	}
	for _, s := range p.Steps {
		for _, link := range s.Links {
			if tool, is := link.To.(*manual.Tool); is && !tool.Unread && !slices.Contains(tools, tool) {
				tools = append(tools, tool)
			}
		}
	}
	return tools, known
}

func ofKind(tools []*manual.Tool, kinds []string) []*manual.Tool {
	var out []*manual.Tool
	for _, t := range tools {
		if slices.Contains(kinds, t.Kind) && !slices.Contains(out, t) {
			out = append(out, t)
		}
	}
	return out
}

// withSubstitutes adds the tools that may stand in for others.
func withSubstitutes(tools []*manual.Tool) []*manual.Tool {
	out := slices.Clone(tools)
	for _, t := range tools {
		for _, or := range t.Or {
			if or.To != nil && !slices.Contains(out, or.To) {
				out = append(out, or.To)
			}
		}
	}
	return out
}

// listOf joins words, "one, two and three".
func listOf(words []string) string {
	last := len(words) - 1
	if last < 1 {
		return strings.Join(words, "")
	}
	return strings.Join(words[:last], ", ") + " and " + words[last]
}
