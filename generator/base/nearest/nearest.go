// Package nearest finds the word that was probably meant.
package nearest

import (
	"slices"
	"strings"
)

// Of is the word of the list that a word which is not in it was probably meant
// for, or "": the nearest, if at most a third of the letters (and in a short
// word one) would have to change; else the only one that has all of its parts,
// as rubber-gloves has gloves. Of two that are as near the first stands.
func Of(word string, list []string) string {
	if best := Spelled(word, list); best != "" {
		return best
	}
	return byParts(word, list)
}

// Spelled is Of for words of which each means a thing of its own, so that a
// part says nothing: a gauge is no angle-gauge.
func Spelled(word string, list []string) string {
	letters := []rune(strings.ToLower(word))
	best, least := "", max(1, len(letters)/3)+1
	for _, candidate := range list {
		if d := distance(letters, []rune(strings.ToLower(candidate)), least); d < least && d < len(letters) {
			best, least = candidate, d
		}
	}
	return best
}

// byParts is the only word of the list that has all parts of an id.
func byParts(word string, list []string) string {
	best := ""
	for _, candidate := range list {
		if !hasParts(strings.Split(candidate, "-"), strings.Split(word, "-")) {
			continue
		}
		if best != "" {
			return ""
		}
		best = candidate
	}
	return best
}

func hasParts(have, want []string) bool {
	for _, part := range want {
		if !slices.Contains(have, part) {
			return false
		}
	}
	return true
}

// distance counts the letters to put in, take out, change or swap with the
// next (Damerau-Levenshtein, optimal string alignment), up to most.
func distance(a, b []rune, most int) int {
	if abs(len(a)-len(b)) >= most {
		return most
	}
	before, last, now := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		now[0] = i
		for j := 1; j <= len(b); j++ {
			now[j] = min(last[j]+1, now[j-1]+1, last[j-1]+differ(a[i-1], b[j-1]))
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				now[j] = min(now[j], before[j-2]+1)
			}
		}
		before, last, now = last, now, before
	}
	return last[len(b)]
}

func differ(a, b rune) int {
	if a == b {
		return 0
	}
	return 1
}

func abs(n int) int { return max(n, -n) }
