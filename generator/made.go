package generator

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"hash"
	"io"
	"slices"

	"baybinder/generator/base/graph"
	"baybinder/generator/show/publish"
)

// made says of each procedure, by the path of its file, what its pages are made
// from, as a hash: every file but the procedures; the procedure with all that it
// leads to, translations included; the faces of those that lead to it; and what all pages show of the
// whole manual. It goes by whole files, and by more of them than a page looks
// at.
func (p *past) made(coded bool) map[string]string {
	made := map[string]string{}
	below, above, whole := p.below(), p.turned(), p.whole(coded)
	for i := range p.Procedures {
		h := sha256.New()
		_, _ = fmt.Fprintf(h, "%s %s %s\n", whole, p.Procedures[i].Path, below[i])
		for _, k := range above(i) {
			_, _ = fmt.Fprintf(h, "%s %s\n", p.Procedures[k].Path, p.Procedures[k].Face.Near)
		}
		made[p.Procedures[i].Path] = sumOf(h)
	}
	return made
}

func sumOf(h hash.Hash) string { return hex.EncodeToString(h.Sum(nil)[:16]) }

// whole is the hash of what every page may show.
func (p *past) whole(coded bool) string {
	h := sha256.New()
	_, _ = fmt.Fprintf(h, "%x %q %s %v %v\n", p.Rest, p.Placed, p.Today, p.Preview, coded)
	for i := range p.Registers {
		_, _ = fmt.Fprintf(h, "%s %x\n", p.Registers[i].Path, p.Registers[i].Sum)
	}
	for i := range p.Procedures {
		_, _ = io.WriteString(h, p.Procedures[i].Path+"\n")
	}
	return sumOf(h)
}

// below are the hashes of the procedures' files, each with all that it leads to.
func (p *past) below() []string {
	out := make([]string, len(p.Procedures))
	all := make([]int, len(p.Procedures))
	for i := range all {
		all[i] = i
	}
	for _, ring := range graph.Components(all, func(i int) []int { return p.Procedures[i].Leads }) {
		h := sha256.New()
		slices.Sort(ring)
		for _, i := range ring {
			_, _ = io.WriteString(h, p.Procedures[i].Sum)
			for _, to := range p.Procedures[i].Leads {
				_, _ = io.WriteString(h, out[to]) // "" within the ring
			}
		}
		for _, i := range ring {
			out[i] = sumOf(h)
		}
	}
	return out
}

// standing are the pages of procedures that stand in the last site as they are
// to be.
func (m *memory) standing(last *keptSite, now *past, s *pages) map[string]bool {
	shown := m.shown(last)
	if now == nil || shown == nil || publish.Stands(m.o.To, last.Site) == nil {
		return nil
	}
	stand := map[string]bool{}
	was, is := shown.Past.made(shown.Coded), now.made(s.Coded)
	for _, p := range s.Shown {
		if path := p.File.Path; was[path] == is[path] {
			for _, name := range s.pagesOf(p) {
				stand[name] = true
			}
		}
	}
	return stand
}
