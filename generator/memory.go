package generator

// SoftLimit is how much memory a run takes, in bytes, before it collects
// garbage harder. A manual of 10,000 procedures is alive in about half of it;
// without the limit the collector would let as much garbage stand beside it.
const SoftLimit = 950 << 20

// Garbage is how much of it may stand beside what is alive, in per cent, below
// that limit: most manuals are small, and are built before any is collected.
const Garbage = 400
