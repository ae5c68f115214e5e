package fastening

import (
	"math"
	"regexp"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/trade/domain"
)

// Class is a property class of ISO 898-1 for bolts, screws and studs.
type Class struct {
	Code     string  // "8.8"
	Strength float64 // nominal tensile strength, MPa
	Yield    float64 // nominal yield strength, MPa

	proof, proofAbove16 float64 // proof stress, MPa, up to 16 mm and above
}

// classes are those of ISO 898-1, table 3. The proof stress of 8.8 up to 16 mm
// was seen in print; those of 8.8 above 16 mm, 10.9 and 12.9 are from memory
// and give the printed proof loads; the others are from memory alone.
var classes = []Class{
	classOf("4.6", 4, 6, 225, 225),
	classOf("4.8", 4, 8, 310, 310),
	classOf("5.6", 5, 6, 280, 280),
	classOf("5.8", 5, 8, 380, 380),
	classOf("6.8", 6, 8, 440, 440),
	classOf("8.8", 8, 8, 580, 600),
	classOf("9.8", 9, 8, 650, math.NaN()), // ends at 16 mm
	classOf("10.9", 10, 9, 830, 830),
	classOf("12.9", 12, 9, 970, 970),
}

// classOf computes what the code says: the first number times 100 is the
// nominal tensile strength in MPa, and first times second times 10 the nominal
// yield strength. Source: ISO 898-1, clause 5, as a page on bolt grades has it.
func classOf(code string, first, second, proof, proofAbove16 float64) Class {
	return Class{code, first * 100, first * second * 10, proof, proofAbove16}
}

// ParseClass reads a property class such as 8.8. A class of another standard,
// such as A2-70 of stainless bolts, is refused: its proof load is not here.
// The error is a *refused.Error.
func ParseClass(text string) (Class, error) {
	code := strings.TrimSpace(text)
	var codes []string
	for _, c := range classes {
		if c.Code == code {
			return c, nil
		}
		codes = append(codes, c.Code)
	}
	err := &domain.Error{Given: text, Why: finding.Say("is not a property class of ISO 898-1"), Write: finding.Say("write one of: %s", strings.Join(codes, ", "))}
	if near := nearest.Of(strings.ReplaceAll(code, ",", "."), codes); near != "" && MeansClass(code) {
		err.Write = finding.Say("did you mean %s? It is one of: %s", near, strings.Join(codes, ", "))
	}
	return Class{}, err
}

// classForm is two numbers with a point or a comma, or the two without it: 88 and
// 109. A number alone such as 8, 10, 12 or 14 is a class of nuts (ISO 898-2).
var classForm = regexp.MustCompile(`^(\d+ ?[.,] ?\d+|[2-9]\d|1[0-4]\d)$`)

// MeansClass reports whether a text sets out to name a class of ISO 898-1, so
// that one that is unknown is a slip and not a class of another standard.
func MeansClass(text string) bool { return classForm.MatchString(strings.TrimSpace(text)) }
