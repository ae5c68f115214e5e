package register

import (
	"path"
	"strings"

	"baybinder/generator/show/page"
)

// mostIndex is how many bytes the rows of one page of an index may take: with its
// head and foot the page stays under 100 kB.
const mostIndex = 75_000

// Indexes are the pages of the indexes, each in as many parts as it needs.
func (s *Pages) Indexes() []*Index {
	var out []*Index
	for _, v := range []*Index{s.Machines(), s.Tools(), s.Supplies(), s.Hazards(), s.Holds(), s.Roles(), s.FaultCodes()} {
		if v != nil {
			out = append(out, s.inParts(v)...)
		}
	}
	return out
}

// inParts deals the rows of an index out to pages, in their order: the first
// groups, then the second ones.
func (s *Pages) inParts(v *Index) []*Index {
	dealt := &dealing{pages: []*Index{v}, of: *v}
	first, second := v.Groups, v.Second
	v.Groups, v.Second = nil, nil
	dealt.deal(first, func(to *Index) *[]Group { return &to.Groups })
	begins := dealt.deal(second, func(to *Index) *[]Group { return &to.Second })
	list := listOf(v.Here)
	for i, part := range dealt.pages {
		if i > 0 {
			part.Frame = s.Frame(page.PartAt(list, i), v.Name)
		}
		if part.Parts = page.PartsOf(list, i, len(dealt.pages)); part.Parts != nil {
			part.Parts[0].Address = path.Base(v.Here)
		}
		part.To, part.ToBy = placeIn(part.Parts, 0, "first"), placeIn(part.Parts, begins, "second")
	}
	return dealt.pages
}

// placeIn leads to a place on the nth part of a list, or on the one page there is.
func placeIn(parts []page.Part, n int, id string) string {
	if parts == nil {
		return "#" + id
	}
	return parts[n].Address + "#" + id
}

// listOf names the further parts of an index: "tools/index.list-2.html". An id
// holds no dot, so no entry's page has that name. Beside a list at the top stand
// no entries.
func listOf(at string) string {
	if !strings.Contains(at, "/") {
		return at
	}
	return strings.TrimSuffix(at, ".html") + ".list.html"
}

// dealing puts rows on pages and begins a new page when one is full.
type dealing struct {
	pages []*Index
	of    Index // what each page is besides its rows
	bytes int   // on the last page
}

// deal puts groups on the pages and returns which page has the first of their
// rows.
func (d *dealing) deal(groups []Group, of func(*Index) *[]Group) (begins int) {
	begins = -1
	for _, g := range groups {
		for i, r := range g.Rows {
			turned := d.room(weight(r))
			if begins < 0 {
				begins = len(d.pages) - 1
			}
			on := of(d.pages[len(d.pages)-1])
			if i == 0 || turned {
				*on = append(*on, Group{Name: g.Name})
			}
			last := &(*on)[len(*on)-1]
			last.Rows = append(last.Rows, r)
		}
	}
	return max(begins, 0)
}

// room turns to a new page where the last has none for a row.
func (d *dealing) room(bytes int) (turned bool) {
	if d.bytes > 0 && d.bytes+bytes > mostIndex {
		turned, d.bytes = true, 0
		next := d.of
		next.Groups, next.Second = nil, nil
		d.pages = append(d.pages, &next)
	}
	d.bytes += bytes
	return turned
}

// weight is about how many bytes a row takes on its page: what is in it, and its
// tags.
func weight(r Row) int {
	return len(r.Name) + len(r.Note) + len(strings.Join(r.Dues, "")) + len(r.Address) + len(r.List) + len(r.Sign) + 130
}
