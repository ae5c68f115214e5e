package fastening

import (
	"math"
	"regexp"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/trade/domain"
)

// Size is what a driving tool fits, or what a fastener is turned by.
type Size struct {
	Form  string  // "" for a hexagon from outside; "hex", "square" or "slot" before a width; else a drive's name, "t30"
	Width float64 // mm; 0 for a drive that is known by its name
}

var (
	formed  = regexp.MustCompile(`^(hex|square|slot)\s+(.+)$`)
	figures = regexp.MustCompile(`^[0-9., /]+$`)
)

// ParseSize reads "13 mm", "9/16 in", "hex 6 mm", "square 1/2 in", "T30" or
// "PH2". A number without a unit and a thread are refused: the one may be
// inches, the other has no width of its own. The error is a *refused.Error.
func ParseSize(text string) (Size, error) {
	text = strings.TrimSpace(text)
	switch {
	case text == "":
		return Size{}, &domain.Error{Given: text, Why: finding.Say("is no size"), Write: finding.Say("write 13 mm, hex 6 mm or T30")}
	case '0' <= text[0] && text[0] <= '9':
		width, err := parseWidth(text, text)
		return Size{Width: width}, err
	case MeansMetric(text):
		return Size{}, &domain.Error{Given: text, Why: finding.Say("is a thread, and heads of one thread differ"), Write: finding.Say("write the width across flats, as in 13 mm")}
	}
	if parts := formed.FindStringSubmatch(strings.ToLower(text)); parts != nil {
		width, err := parseWidth(parts[2], text)
		return Size{Form: parts[1], Width: width}, err
	}
	return Size{Form: driveName(text)}, nil
}

// driveName folds the ways to write a drive: "T 30", "TX30" and "t30" are one.
func driveName(text string) string {
	name := strings.ToLower(strings.ReplaceAll(text, " ", ""))
	if rest, is := strings.CutPrefix(name, "tx"); is && figures.MatchString(rest) {
		return "t" + rest
	}
	return name
}

// parseWidth reads a width, mm. Inch sizes are commonly fractions.
func parseWidth(text, whole string) (float64, error) {
	width, err := quantity.Parse(text, quantity.Length)
	if err == nil && width.Base() > 0 {
		return width.Base() * 1000, nil
	}
	bad := &domain.Error{Given: whole, Why: finding.Say("is no size"), Write: finding.Say("write 13 mm, hex 6 mm or T30")}
	if figures.MatchString(text) {
		bad.Why, bad.Write = finding.Say("has no unit"), finding.Say("write %[1]s mm, or %[1]s in", whole)
	}
	return 0, bad
}

// sameWidth is how far two widths of one size may differ, mm: less than any
// two sizes that are sold. 19 mm does not fit 3/4 in, though it goes on: it
// rounds the corners.
const sameWidth = 0.02

// Fits says whether a tool of size s turns a head of size head.
func (s Size) Fits(head Size) bool {
	return s.Form == head.Form && math.Abs(s.Width-head.Width) <= sameWidth
}

// Heads are the sizes by which a fastener can be turned: its width across
// flats, and its drive. It has none where neither is said.
func Heads(acrossFlats quantity.Quantity, drive string) []Size {
	var heads []Size
	if acrossFlats.Base() > 0 {
		heads = append(heads, Size{Width: acrossFlats.Base() * 1000})
	}
	if size, err := ParseSize(drive); err == nil {
		heads = append(heads, size)
	}
	return heads
}

// Sizes reads a tool's sizes as its register entry lists them. Those that
// cannot be read are left out: they fit nothing.
func Sizes(entries []string) []Size {
	var sizes []Size
	for _, entry := range entries {
		if size, err := ParseSize(entry); err == nil {
			sizes = append(sizes, size)
		}
	}
	return sizes
}

// FitsAny says whether one of a tool's sizes turns one of the heads.
func FitsAny(sizes, heads []Size) bool {
	for _, size := range sizes {
		for _, head := range heads {
			if size.Fits(head) {
				return true
			}
		}
	}
	return false
}
