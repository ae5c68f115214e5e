package edit

import (
	"slices"
	"strings"

	"baybinder/generator/base/patch"
	"baybinder/generator/base/position"
	"baybinder/generator/read/syntax"
)

// Shrink is the piece that takes the entry at a place out of a list of a
// procedure's front matter. It is false where nothing can be cut safely.
func Shrink(file *position.File, name string, at position.Pos) (patch.Piece, bool) {
	doc, _ := syntax.Read(file)
	if doc.Front == nil || doc.Front.Get(name) == nil || at.End > len(file.Text) {
		return patch.Piece{}, false
	}
	before := doc.Front.Get(name)
	for _, piece := range cuts(file.Text, at) {
		after, _ := syntax.Read(patch.Applied(file, []patch.Piece{piece}))
		if after.Front != nil && shrunk(doc.Front, after.Front, name, entryAt(before, at.Start)) {
			return piece, true
		}
	}
	return patch.Piece{}, false
}

// cuts are the ways to cut an entry out: with the comma behind it or before it
// in brackets, with its line below a name.
func cuts(text string, at position.Pos) []patch.Piece {
	var out []patch.Piece
	end := at.End
	for end < len(text) && !strings.ContainsRune(",]}\n", rune(text[end])) {
		end++
	}
	if end < len(text) && text[end] == ',' {
		behind := end + 1
		for behind < len(text) && text[behind] == ' ' {
			behind++
		}
		out = append(out, patch.Piece{At: at.Start, Cut: behind - at.Start})
	}
	if comma := strings.LastIndexByte(text[:at.Start], ','); comma >= 0 && strings.TrimSpace(text[comma+1:at.Start]) == "" {
		out = append(out, patch.Piece{At: comma, Cut: end - comma})
	}
	out = append(out, patch.Piece{At: at.Start, Cut: end - at.Start})
	line := strings.LastIndexByte(text[:at.Start], '\n') + 1
	if next := strings.IndexByte(text[at.Start:], '\n'); next >= 0 {
		out = append(out, patch.Piece{At: line, Cut: at.Start + next + 1 - line})
	}
	return out
}

// entryAt is the index of the entry of a list that stands at an offset.
func entryAt(list *syntax.Node, start int) int {
	if list.Kind == syntax.Map {
		return slices.IndexFunc(list.Pairs, func(p syntax.Pair) bool { return p.KeyAt.Start == start })
	}
	return slices.IndexFunc(list.Items, func(n *syntax.Node) bool {
		return n.At.Start == start || len(n.Pairs) == 1 && n.Pairs[0].KeyAt.Start == start
	})
}

// shrunk says whether a front matter is another one with one entry of a list
// taken out, and nothing else.
func shrunk(before, after *syntax.Node, name string, entry int) bool {
	if entry < 0 || len(before.Pairs) != len(after.Pairs) {
		return false
	}
	return slices.EqualFunc(before.Pairs, after.Pairs, func(p, q syntax.Pair) bool {
		if p.Key != q.Key || p.Key != name {
			return p.Key == q.Key && same(p.Value, q.Value)
		}
		want := *p.Value
		want.Items, want.Pairs = slices.Clone(want.Items), slices.Clone(want.Pairs)
		if want.Kind == syntax.Map {
			want.Pairs = slices.Delete(want.Pairs, entry, entry+1)
		} else {
			want.Items = slices.Delete(want.Items, entry, entry+1)
		}
		return same(&want, q.Value)
	})
}
