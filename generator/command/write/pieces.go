package write

import (
	"strings"

	"baybinder/generator/base/patch"
)

// mostLines bounds the table in which two texts are compared, in cells.
const mostLines = 4 << 20

// piecesOf are what makes one text of another, line by line: every line that
// both have stays untouched in the file.
func piecesOf(old, now string) []patch.Piece {
	a, b := lines(old), lines(now)
	at, n := 0, 0
	for n < min(len(a), len(b)) && a[n] == b[n] {
		at += len(a[n])
		n++
	}
	a, b = a[n:], b[n:]
	n = 0
	for n < min(len(a), len(b)) && a[len(a)-1-n] == b[len(b)-1-n] {
		n++
	}
	return between(at, a[:len(a)-n], b[:len(b)-n])
}

// lines are those of a text with their ends.
func lines(text string) []string {
	all := strings.SplitAfter(text, "\n")
	if all[len(all)-1] == "" {
		all = all[:len(all)-1]
	}
	return all
}

// between are the pieces for lines that differ; at is where they begin.
func between(at int, a, b []string) []patch.Piece {
	if len(a) == 0 && len(b) == 0 {
		return nil
	}
	if len(a)*len(b) > mostLines {
		return []patch.Piece{piece(at, a, b)}
	}
	common := longest(a, b)
	var out []patch.Piece
	for i, j := 0, 0; i < len(a) || j < len(b); {
		if i < len(a) && j < len(b) && a[i] == b[j] {
			at += len(a[i])
			i, j = i+1, j+1
			continue
		}
		fromA, fromB := i, j
		for (i < len(a) || j < len(b)) && (i >= len(a) || j >= len(b) || a[i] != b[j]) {
			if j >= len(b) || i < len(a) && common[i+1][j] >= common[i][j+1] {
				i++
			} else {
				j++
			}
		}
		p := piece(at, a[fromA:i], b[fromB:j])
		out = append(out, p)
		at += len(strings.Join(a[fromA:i], ""))
	}
	return out
}

// longest is, for each pair of places, how many lines two lists have in common
// from there on.
func longest(a, b []string) [][]int32 {
	out := make([][]int32, len(a)+1)
	for i := range out {
		out[i] = make([]int32, len(b)+1)
	}
	for i := len(a) - 1; i >= 0; i-- {
		for j := len(b) - 1; j >= 0; j-- {
			if a[i] == b[j] {
				out[i][j] = out[i+1][j+1] + 1
			} else {
				out[i][j] = max(out[i+1][j], out[i][j+1])
			}
		}
	}
	return out
}

// piece puts lines in place of others; the ends that both have stay.
func piece(at int, a, b []string) patch.Piece {
	old, now := strings.Join(a, ""), strings.Join(b, "")
	head := 0
	for head < min(len(old), len(now)) && old[head] == now[head] {
		head++
	}
	old, now = old[head:], now[head:]
	tail := 0
	for tail < min(len(old), len(now)) && old[len(old)-1-tail] == now[len(now)-1-tail] {
		tail++
	}
	return patch.Piece{At: at + head, Cut: len(old) - tail, Text: now[:len(now)-tail]}
}
