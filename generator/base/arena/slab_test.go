package arena_test

import (
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/base/arena"
)

// Each value handed out is its own, whatever was asked for before.
func TestValuesAreApart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var s arena.Of[int]
		var all [][]int
		for i, n := range rapid.SliceOf(rapid.IntRange(0, 80)).Draw(t, "sizes") {
			list := s.Slice(n)
			if len(list) != n {
				t.Fatalf("%d values, want %d", len(list), n)
			}
			for k := range list {
				if list[k] != 0 {
					t.Fatalf("a value is not zero")
				}
				list[k] = i + 1
			}
			_ = append(list, -1) // must not reach the next
			all = append(all, list)
		}
		for i, list := range all {
			for _, v := range list {
				if v != i+1 {
					t.Fatalf("list %d holds %d", i+1, v)
				}
			}
		}
	})
}

// A kept text stays what it was, whatever is kept after it and whatever becomes
// of the bytes that it was made from.
func TestTextsStay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var s arena.Text
		var kept []string
		texts := rapid.SliceOf(rapid.StringN(0, -1, 3000)).Draw(t, "texts")
		var buffer []byte
		for _, text := range texts {
			buffer = append(buffer[:0], text...)
			kept = append(kept, s.Keep(buffer))
		}
		for i, text := range texts {
			if kept[i] != text {
				t.Fatalf("text %d became %q, was %q", i, kept[i], text)
			}
		}
	})
}
