package generator

import (
	"math"
	"runtime/debug"

	"baybinder/generator/read/source"
)

// SoftLimit is how much memory a run takes, in bytes, before it collects
// garbage harder. A manual of 10,000 procedures is alive in about half of it;
// without the limit the collector would let as much garbage stand beside it.
const SoftLimit = 950 << 20

// Garbage is how much of it may stand beside what is alive, in per cent, below
// that limit: most manuals are small, and are built before any is collected.
const Garbage = 400

// perByte is how many bytes of memory the limit allows for each byte of text. Some
// twenty are alive while pages are made. Where a manual is alive in all that the
// limit allows, the collector runs without an end: 30,000 procedures took three
// times as long.
const perByte = 33

// limitFor is the soft limit of a run over so many bytes of text.
func limitFor(text int) int64 { return max(SoftLimit, perByte*int64(text)) }

// makeRoom raises the limit of a process that has one to what a manual takes.
func makeRoom(tree *source.Tree) {
	text := 0
	for _, f := range tree.Files {
		text += len(f.Text)
	}
	if now := debug.SetMemoryLimit(-1); now < math.MaxInt64 {
		debug.SetMemoryLimit(max(now, limitFor(text)))
	}
}
