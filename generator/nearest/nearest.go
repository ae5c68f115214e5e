// Package nearest finds the word that was probably meant.
package nearest

import "strings"

// Of is the word of the list that is nearest to a misspelt one, or "" where
// none is near: more than a third of it would have to change.
func Of(word string, list []string) string {
	best, least := "", len(word)/3+2
	for _, candidate := range list {
		if d := distance(strings.ToLower(word), strings.ToLower(candidate), least); d < least {
			best, least = candidate, d
		}
	}
	return best
}

// distance counts the letters to put in, take out, change or swap with the
// next (Damerau-Levenshtein, optimal string alignment), up to most.
func distance(a, b string, most int) int {
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

func differ(a, b byte) int {
	if a == b {
		return 0
	}
	return 1
}

func abs(n int) int { return max(n, -n) }
