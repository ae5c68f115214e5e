package jotting

import (
	"regexp"
	"slices"
)

// Quoted says which bytes of a text stand between backticks, or in an address.
func Quoted(text string) func(int) bool {
	places := quoted.FindAllStringIndex(text, -1)
	if places == nil {
		return nil
	}
	return func(i int) bool {
		return slices.ContainsFunc(places, func(p []int) bool { return i >= p[0] && i < p[1] })
	}
}

var quoted = regexp.MustCompile("`[^`]*`|\\[[^\\]]*\\]\\([^)]*\\)|<[^>]*>|https?://\\S+")
