package generator

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"hash"
	"io"
	"slices"

	"baybinder/generator/base/graph"
	"baybinder/generator/model"
	"baybinder/generator/show/page"
)

// made says of each page of a procedure what it is made from, as a hash: every
// file but the procedures; the procedure with all that it leads to, translations
// included; the faces of those that lead to it; and what all pages show of the
// whole manual. It goes by whole files, and by more of them than a page looks
// at.
func (p *past) made(s *pages) map[string]string {
	if p == nil {
		return nil
	}
	at := map[string]int{}
	for i := range p.Procedures {
		at[p.Procedures[i].Path] = i
	}
	below, above, whole := p.below(), p.turned(), p.whole(s)
	made := map[string]string{}
	note := func(name string, q *model.Procedure) {
		i, h := at[q.File.Path], sha256.New()
		_, _ = fmt.Fprintf(h, "%s %s %s\n", whole, q.File.Path, below[i])
		for _, k := range above(i) {
			_, _ = fmt.Fprintf(h, "%s %s\n", p.Procedures[k].Path, p.Procedures[k].Face.Wide)
		}
		made[name] = sumOf(h)
	}
	for _, q := range s.Shown {
		note(page.PageOf(q), q)
		for _, language := range s.Manual.Shop.Also {
			note(page.PageIn(q, s.Manual.Shop.Language, language), q)
		}
	}
	return made
}

func sumOf(h hash.Hash) string { return hex.EncodeToString(h.Sum(nil)[:16]) }

// whole is the hash of what every page may show.
func (p *past) whole(s *pages) string {
	h := sha256.New()
	_, _ = fmt.Fprintf(h, "%x %q %s %v %v\n", p.Rest, p.Placed, s.Today, s.Preview, len(s.Faults) > 0)
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

// standing are the pages that stand in the site as they are to be.
func (m *memory) standing(made map[string]string) map[string]bool {
	k := m.site()
	if k == nil || len(made) == 0 {
		return nil
	}
	if _, stands := k.Site.Stands(m.o.To); !stands {
		return nil
	}
	stand := map[string]bool{}
	for name, from := range made {
		stand[name] = k.Made[name] == from
	}
	return stand
}
