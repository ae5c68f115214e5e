package register

import (
	"slices"
	"strings"

	"baybinder/generator/model"
)

// layers sorts the parts of a machine by how deep they are: the first layer is
// under nothing, the second under a part of the first, and so on. Within a
// layer a part stands near what it is under. Parts that nothing is under and
// that are under nothing are left out: there is nothing to draw.
func layers(m *model.Machine) [][]*model.Part {
	depth := map[*model.Part]int{}
	var out [][]*model.Part
	for _, p := range m.Parts {
		if len(p.Under) == 0 && len(p.Over) == 0 {
			continue
		}
		d := depthOf(p, depth, len(m.Parts))
		for len(out) <= d {
			out = append(out, nil)
		}
		out[d] = append(out[d], p)
	}
	place := map[*model.Part]float64{}
	for _, layer := range out {
		nearAbove(layer, place)
	}
	return out
}

// depthOf counts the parts above one, the longest way. A ring, which is a
// finding of its own, ends at most deep.
func depthOf(p *model.Part, depth map[*model.Part]int, most int) int {
	if d, known := depth[p]; known {
		return d
	}
	depth[p] = 0 // where the way comes back to p
	d := 0
	for _, u := range p.Under {
		if u.To != nil {
			d = max(d, depthOf(u.To, depth, most)+1)
		}
	}
	depth[p] = min(d, most)
	return depth[p]
}

// nearAbove puts the parts of a layer in the order of the middle of what they
// are under, and notes their places for the next layer.
func nearAbove(layer []*model.Part, place map[*model.Part]float64) {
	middle := func(p *model.Part) float64 {
		sum, n := 0.0, 0.0
		for _, u := range p.Under {
			if at, known := place[u.To]; known {
				sum, n = sum+at, n+1
			}
		}
		if n == 0 {
			return 0
		}
		return sum / n
	}
	slices.SortStableFunc(layer, func(a, b *model.Part) int {
		switch x, y := middle(a), middle(b); {
		case x < y:
			return -1
		case x > y:
			return 1
		}
		return 0
	})
	for i, p := range layer {
		place[p] = (float64(i) + 0.5) / float64(len(layer))
	}
}

// wrapWords breaks a name into lines of at most so many letters, three at most.
func wrapWords(text string, letters int) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(text) {
		switch {
		case line == "":
			line = word
		case len([]rune(line))+1+len([]rune(word)) <= letters:
			line += " " + word
		default:
			lines = append(lines, line)
			line = word
		}
	}
	lines = append(lines, line)
	if len(lines) > 3 {
		lines = append(lines[:2], lines[2]+" …")
	}
	return lines
}
