// Package signs holds our own drawings of the safety signs that ISO 7010
// registers and of the GHS pictograms.
//
// The numbers, names, shapes and colours are facts of the register. The
// artwork of the standard is not copied: every picture here was drawn for this
// project, plain and heavy enough to be read at 48 pixels and on a black and
// white print. The drawings are files beside this one, one to a sign, all on
// a square of 64 by 64 units.
package signs

import (
	"embed"
	"html"
	"slices"
	"strings"
	"sync"
)

//go:embed *.svg
var files embed.FS

// Family says which rule a sign's shape and colour follow. It is also the
// letters that begin the numbers of the family.
type Family string

// The families.
const (
	Warning     Family = "W"   // yellow triangle, black border and picture
	Mandatory   Family = "M"   // blue disc, white picture
	Prohibition Family = "P"   // red ring and bar on white, black picture
	Safe        Family = "E"   // green square, white picture: escape, rescue, safe condition
	Fire        Family = "F"   // red square, white picture: fire-fighting equipment
	Chemical    Family = "GHS" // red diamond on white, black picture
)

// Sign is one registered sign.
type Sign struct {
	Number string // as registered: "W012", "GHS05"
	Name   string // in English, as registered
	Family Family
}

// table is in order of number. A row marked "name from memory" could not be
// checked against a published list.
var table = []Sign{
	{"E001", "Emergency exit", Safe}, // the list gives one name to the left-hand form E001 and the right-hand form E002
	{"E003", "First aid", Safe},
	{"E004", "Emergency telephone", Safe},
	{"E007", "Evacuation assembly point", Safe}, // name and shape from memory
	{"E009", "Doctor", Safe},
	{"E011", "Eyewash station", Safe}, // name from memory
	{"E012", "Safety shower", Safe},   // name from memory
	{"E020", "Emergency stop button", Safe},

	{"F001", "Fire extinguisher", Fire},
	{"F002", "Fire hose reel", Fire},        // name and shape from memory
	{"F005", "Fire alarm call point", Fire}, // name from memory
	{"F016", "Fire blanket", Fire},

	{"GHS01", "Exploding bomb", Chemical},
	{"GHS02", "Flame", Chemical},
	{"GHS03", "Flame over circle", Chemical},
	{"GHS04", "Gas cylinder", Chemical},
	{"GHS05", "Corrosion", Chemical},
	{"GHS06", "Skull and crossbones", Chemical}, // name from memory: the list says "skull"
	{"GHS07", "Exclamation mark", Chemical},
	{"GHS08", "Health hazard", Chemical},
	{"GHS09", "Environment", Chemical},

	{"M001", "General mandatory action", Mandatory},
	{"M002", "Refer to instruction manual/booklet", Mandatory},
	{"M003", "Wear ear protection", Mandatory},
	{"M004", "Wear eye protection", Mandatory},
	{"M005", "Connect an earth terminal to the ground", Mandatory},
	{"M006", "Disconnect mains plug from electrical outlet", Mandatory},
	{"M007", "Opaque eye protection must be worn", Mandatory},
	{"M008", "Wear safety footwear", Mandatory},
	{"M009", "Wear protective gloves", Mandatory},
	{"M010", "Wear protective clothing", Mandatory},
	{"M011", "Wash your hands", Mandatory},
	{"M012", "Use handrail", Mandatory},
	{"M013", "Wear a face shield", Mandatory},
	{"M014", "Wear head protection", Mandatory},
	{"M015", "Wear high-visibility clothing", Mandatory},
	{"M016", "Wear a mask", Mandatory},
	{"M017", "Wear respiratory protection", Mandatory},
	{"M018", "Wear a safety harness", Mandatory},
	{"M019", "Wear a welding mask", Mandatory},
	{"M020", "Wear safety belts", Mandatory}, // name and shape from memory
	{"M021", "Disconnect before carrying out maintenance or repair", Mandatory},
	{"M022", "Use barrier cream", Mandatory}, // name and shape from memory
	{"M026", "Use protective apron", Mandatory},
	{"M027", "Install a guard", Mandatory}, // name and shape from memory
	{"M028", "Keep locked", Mandatory},
	{"M047", "Use breathing apparatus", Mandatory}, // name and shape from memory
	{"M048", "Use gas detector", Mandatory},        // name and shape from memory

	{"P001", "General prohibition", Prohibition}, // name from memory
	{"P002", "No smoking", Prohibition},          // name from memory
	{"P003", "No open flame", Prohibition},
	{"P004", "No thoroughfare", Prohibition},                                             // name from memory
	{"P006", "No access for forklift trucks and other industrial vehicles", Prohibition}, // name and shape from memory
	{"P007", "No access for people with active implanted cardiac devices", Prohibition},  // name from memory
	{"P008", "No metallic articles or watches", Prohibition},                             // name and shape from memory
	{"P010", "Do not touch", Prohibition},                                                // name from memory
	{"P011", "Do not extinguish with water", Prohibition},                                // name from memory
	{"P012", "No heavy load", Prohibition},                                               // name and shape from memory
	{"P013", "No activated mobile phone", Prohibition},                                   // name and shape from memory
	{"P014", "No access for people with metallic implants", Prohibition},                 // name and shape from memory
	{"P015", "No reaching in", Prohibition},                                              // name from memory
	{"P017", "No pushing", Prohibition},                                                  // name and shape from memory
	{"P019", "No stepping on surface", Prohibition},                                      // name from memory
	{"P022", "No eating or drinking", Prohibition},                                       // name and shape from memory
	{"P023", "Do not obstruct", Prohibition},                                             // name and shape from memory
	{"P024", "Do not walk or stand here", Prohibition},                                   // name and shape from memory
	{"P025", "Do not use this incomplete scaffold", Prohibition},                         // name from memory
	{"P027", "Do not use this lift for people", Prohibition},                             // name from memory
	{"P028", "Do not wear gloves", Prohibition},                                          // name from memory
	{"P031", "Do not alter the state of the switch", Prohibition},                        // name from memory
	{"P032", "Do not use for face grinding", Prohibition},                                // name and shape from memory
	{"P033", "Do not use for wet grinding", Prohibition},                                 // name and shape from memory
	{"P034", "Do not use with a hand-held grinding machine", Prohibition},                // name and shape from memory

	{"W001", "General warning sign", Warning},
	{"W002", "Explosive material", Warning},
	{"W003", "Radioactive material or ionizing radiation", Warning},
	{"W004", "Laser beam", Warning},
	{"W005", "Non-ionizing radiation", Warning},
	{"W006", "Magnetic field", Warning},
	{"W007", "Floor-level obstacle", Warning},
	{"W008", "Drop (fall)", Warning},
	{"W009", "Biological hazard", Warning},
	{"W010", "Low temperature/freezing conditions", Warning},
	{"W011", "Slippery surface", Warning},
	{"W012", "Electricity", Warning},
	{"W014", "Forklift trucks and other industrial vehicles", Warning},
	{"W015", "Overhead load", Warning},
	{"W016", "Toxic material", Warning},
	{"W017", "Hot surface", Warning},
	{"W018", "Automatic start-up", Warning},
	{"W019", "Crushing", Warning},
	{"W020", "Overhead obstacle", Warning},
	{"W021", "Flammable material", Warning},
	{"W022", "Sharp element", Warning},
	{"W023", "Corrosive substance", Warning},
	{"W024", "Crushing of hands", Warning},
	{"W025", "Counterrotating rollers", Warning},
	{"W026", "Battery charging", Warning},
	{"W027", "Optical radiation", Warning},
	{"W028", "Oxidizing substance", Warning},
	{"W029", "Pressurized cylinder", Warning},
	{"W035", "Falling objects", Warning},
	{"W036", "Fragile roof", Warning}, // name and shape from memory
	{"W038", "Sudden loud noise", Warning},
	{"W041", "Asphyxiating atmosphere", Warning}, // name and shape from memory
	{"W042", "Arc flash", Warning},               // name and shape from memory
}

// Find returns the sign with exactly this number. A number written in another
// way ("w12") is not found; Nearest says which one may have been meant.
func Find(number string) (Sign, bool) {
	i, ok := slices.BinarySearchFunc(table, number, func(s Sign, n string) int {
		return strings.Compare(s.Number, n)
	})
	if !ok {
		return Sign{}, false
	}
	return table[i], true
}

// All returns every sign, in order of number. The slice is the caller's own.
func All() []Sign { return slices.Clone(table) }

// SVG returns the whole drawing file of the sign, its name in a title element.
// It is nil for a sign that is not in the table.
func (s Sign) SVG() []byte {
	if _, ok := Find(s.Number); !ok {
		return nil
	}
	b, err := files.ReadFile(s.Number + ".svg")
	if err != nil {
		return nil
	}
	return b
}

// Inline returns the same drawing ready to stand in an HTML page: one svg
// element without prolog, title or line breaks. An empty class leaves the
// attribute out. The label is what a reader of the page without sight hears;
// an empty one gives the registered name, so that no sign is mute. It is empty
// for a sign that is not in the table.
func (s Sign) Inline(class, label string) string {
	drawing, known := drawings()[s.Number]
	if !known {
		return ""
	}
	if label == "" {
		label = s.Name
	}
	return inline(drawing, class, `role="img" aria-label="`+html.EscapeString(label)+`"`)
}

// Alert returns the safety alert symbol, a triangle with an exclamation mark
// cut out of it, ready to stand in an HTML page. It takes the colour of the
// text around it. It is hidden from screen readers, because the signal word it
// stands beside says the same.
func Alert() string { return inline(drawings()["alert"], "alert", `aria-hidden="true"`) }

// drawings are what stands in each drawing file's svg element, without title
// and line breaks, by sign: pages show the same few many times.
var drawings = sync.OnceValue(func() map[string]string {
	alert, _ := files.ReadFile("alert.svg")
	out := map[string]string{"alert": bare(string(alert))}
	for _, s := range table {
		out[s.Number] = bare(string(s.SVG()))
	}
	return out
})

func bare(svg string) string {
	_, svg, _ = strings.Cut(svg, "<svg")
	_, svg, _ = strings.Cut(svg, ">")
	if before, rest, ok := strings.Cut(svg, "<title>"); ok {
		_, after, _ := strings.Cut(rest, "</title>")
		svg = before + after
	}
	var b strings.Builder
	for line := range strings.Lines(svg) {
		b.WriteString(strings.TrimSpace(line))
	}
	return b.String()
}

// inline turns a drawing into an element for a page.
func inline(drawing, class, attrs string) string {
	if class != "" {
		attrs = `class="` + html.EscapeString(class) + `" ` + attrs
	}
	return "<svg " + attrs + ` viewBox="0 0 64 64">` + drawing
}

// Nearest returns the number of the sign that a number not found may have been
// meant for, to be offered in a message and never used unasked. A number
// written in another way ("w12", "GHS-5", "WO12") gives the sign itself; a
// registered name gives its sign; any other number of a known family
// gives the sign of that family that differs in one digit, and of those the one
// nearest in count. It is empty when no sign is that near.
func Nearest(number string) string {
	for _, s := range table {
		if strings.EqualFold(number, s.Name) {
			return s.Number
		}
	}
	letters, digits := split(number)
	if digits == "" {
		return ""
	}
	best, bestEdits, bestApart := "", 2, 0
	for _, s := range table {
		if string(s.Family) != letters {
			continue
		}
		_, have := split(s.Number)
		wanted := pad(digits, len(s.Number)-len(letters))
		edits, apart := distance(wanted, pad(have, len(wanted))), apart(wanted, have)
		if edits < bestEdits || edits == bestEdits && best != "" && apart < bestApart {
			best, bestEdits, bestApart = s.Number, edits, apart
		}
	}
	return best
}

// split parts a number into its letters, in capitals, and its digits without
// leading noughts ("0" if nothing but noughts). A letter O after the first
// letters of a family counts as a nought. Digits is empty if the text is not
// letters followed by one to five digits.
func split(number string) (letters, digits string) {
	t := strings.ToUpper(strings.Map(func(r rune) rune {
		if strings.ContainsRune(" -_.", r) {
			return -1
		}
		return r
	}, number))
	i := 0
	for i < len(t) && 'A' <= t[i] && t[i] <= 'Z' && (i == 0 || t[i] != 'O') {
		i++
	}
	letters, digits = t[:i], strings.ReplaceAll(t[i:], "O", "0")
	if digits == "" || len(digits) > 5 || strings.Trim(digits, "0123456789") != "" {
		return letters, ""
	}
	digits = strings.TrimLeft(digits, "0")
	if digits == "" {
		digits = "0"
	}
	return letters, digits
}

// pad puts noughts before digits up to width.
func pad(digits string, width int) string {
	if n := width - len(digits); n > 0 {
		return strings.Repeat("0", n) + digits
	}
	return digits
}

// distance counts the characters in which two texts of one length differ.
func distance(a, b string) int {
	n := 0
	for i := range a {
		if a[i] != b[i] {
			n++
		}
	}
	return n
}

// apart returns how far two counts of at most five digits are from each other.
func apart(a, b string) int {
	count := func(t string) int {
		n := 0
		for _, r := range t {
			n = 10*n + int(r-'0')
		}
		return n
	}
	d := count(a) - count(b)
	if d < 0 {
		return -d
	}
	return d
}
