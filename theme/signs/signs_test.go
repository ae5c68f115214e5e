package signs

import (
	"bytes"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// Known: SEEN.

// seen holds the names of ISO 7010, names as listed in a public graphics
// package and an encyclopaedia article. Names that no list confirmed are not
// here.
const seen = `
E001 Emergency exit
E003 First aid
E004 Emergency telephone
E009 Doctor
E020 Emergency stop button
F001 Fire extinguisher
F016 Fire blanket
M001 General mandatory action
M002 Refer to instruction manual/booklet
M003 Wear ear protection
M004 Wear eye protection
M005 Connect an earth terminal to the ground
M006 Disconnect mains plug from electrical outlet
M007 Opaque eye protection must be worn
M008 Wear safety footwear
M009 Wear protective gloves
M010 Wear protective clothing
M011 Wash your hands
M012 Use handrail
M013 Wear a face shield
M014 Wear head protection
M015 Wear high-visibility clothing
M016 Wear a mask
M017 Wear respiratory protection
M018 Wear a safety harness
M019 Wear a welding mask
M021 Disconnect before carrying out maintenance or repair
M026 Use protective apron
M028 Keep locked
P003 No open flame
W001 General warning sign
W002 Explosive material
W003 Radioactive material or ionizing radiation
W004 Laser beam
W005 Non-ionizing radiation
W006 Magnetic field
W007 Floor-level obstacle
W008 Drop (fall)
W009 Biological hazard
W010 Low temperature/freezing conditions
W011 Slippery surface
W012 Electricity
W014 Forklift trucks and other industrial vehicles
W015 Overhead load
W016 Toxic material
W017 Hot surface
W018 Automatic start-up
W019 Crushing
W020 Overhead obstacle
W021 Flammable material
W022 Sharp element
W023 Corrosive substance
W024 Crushing of hands
W025 Counterrotating rollers
W026 Battery charging
W027 Optical radiation
W028 Oxidizing substance
W029 Pressurized cylinder
W035 Falling objects
W038 Sudden loud noise
`

// seenGHS holds the names of the GHS pictograms as a public list gives them,
// but for GHS06, which it shortens.
const seenGHS = `
GHS01 Exploding bomb
GHS02 Flame
GHS03 Flame over circle
GHS04 Gas cylinder
GHS05 Corrosion
GHS07 Exclamation mark
GHS08 Health hazard
GHS09 Environment
`

func TestNames(t *testing.T) {
	n := 0
	for line := range strings.Lines(seen + seenGHS) {
		number, name, ok := strings.Cut(strings.TrimSpace(line), " ")
		if !ok {
			continue
		}
		n++
		s, ok := Find(number)
		if !ok {
			t.Errorf("%s: not found", number)
		} else if s.Name != name {
			t.Errorf("%s: %q, want %q", number, s.Name, name)
		}
	}
	if n != 68 {
		t.Errorf("%d names compared, want 68", n)
	}
}

// A sheet in circulation gives these numbers other meanings. They are wrong.
func TestNotTheBadCopy(t *testing.T) {
	for number, wrong := range map[string][]string{
		"W002": {"atmosphere"},
		"W012": {"vehicle", "truck"},
		"W018": {"load", "overhead"},
		"W021": {"slip"},
		"M006": {"hear", "ear "},
	} {
		s, ok := Find(number)
		if !ok {
			t.Fatalf("%s: not found", number)
		}
		drawn, err := parse(s.SVG())
		if err != nil {
			t.Fatal(err)
		}
		for _, w := range wrong {
			if strings.Contains(strings.ToLower(s.Name), w) || strings.Contains(strings.ToLower(drawn.title), w) {
				t.Errorf("%s is %q, drawn as %q, the meaning of the bad copy", number, s.Name, drawn.title)
			}
		}
	}
}

func TestTable(t *testing.T) {
	all := All()
	if len(all) != 82 {
		t.Errorf("%d signs, want 82", len(all))
	}
	for i, s := range all {
		if i > 0 && all[i-1].Number >= s.Number {
			t.Errorf("%s stands after %s", s.Number, all[i-1].Number)
		}
		letters := strings.TrimRight(s.Number, "0123456789")
		if letters != string(s.Family) {
			t.Errorf("%s: family %q", s.Number, s.Family)
		}
		if s.Name == "" {
			t.Errorf("%s has no name", s.Number)
		}
		if got, ok := Find(s.Number); !ok || got != s {
			t.Errorf("Find(%q) = %v, %v", s.Number, got, ok)
		}
	}
	all[0].Name = "changed"
	if All()[0].Name == "changed" {
		t.Error("All hands out the table itself")
	}
	for _, number := range []string{"", "w012", "W12", "W013", "W0120", "alert", "Electricity"} {
		if s, ok := Find(number); ok {
			t.Errorf("Find(%q) = %v", number, s)
		}
	}
}

func TestEveryRowADrawingAndEveryDrawingARow(t *testing.T) {
	entries, err := files.ReadDir(".")
	if err != nil {
		t.Fatal(err)
	}
	drawn := map[string]bool{}
	for _, e := range entries {
		number := strings.TrimSuffix(e.Name(), ".svg")
		if number == "alert" { // no registered sign
			continue
		}
		drawn[number] = true
		if _, ok := Find(number); !ok {
			t.Errorf("%s: a drawing without a row", e.Name())
		}
	}
	for _, s := range All() {
		if !drawn[s.Number] {
			t.Errorf("%s: a row without a drawing", s.Number)
		}
	}
	if (Sign{Number: "alert"}).SVG() != nil || (Sign{}).SVG() != nil || (Sign{Number: "W013"}).Inline("", "") != "" {
		t.Error("a drawing for a sign that is not in the table")
	}
}

// ---- reading a drawing ----

type shape struct {
	name         string
	attr         map[string]string
	fill, stroke string // as inherited; "" if nothing says
}

type drawing struct {
	title  string
	shapes []shape
	colour map[string]bool
}

var allowed = map[string][]string{
	"svg":     {"xmlns", "viewBox"},
	"title":   {},
	"g":       {"transform"},
	"path":    {"d"},
	"circle":  {"cx", "cy", "r"},
	"ellipse": {"cx", "cy", "rx", "ry"},
	"rect":    {"x", "y", "width", "height", "rx"},
	"line":    {"x1", "y1", "x2", "y2"},
	"polygon": {"points"},
}

var paint = []string{"fill", "fill-rule", "stroke", "stroke-width", "stroke-linecap", "stroke-linejoin"}

// parse reads a drawing and refuses whatever a drawing must not hold.
func parse(svg []byte) (drawing, error) {
	d := drawing{colour: map[string]bool{}}
	type level struct{ name, fill, stroke string }
	var open []level
	dec := xml.NewDecoder(bytes.NewReader(svg))
	for {
		tok, err := dec.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return d, err
		}
		switch tok := tok.(type) {
		case xml.StartElement:
			name := tok.Name.Local
			if tok.Name.Space != "http://www.w3.org/2000/svg" {
				return d, fmt.Errorf("element %s of namespace %q", name, tok.Name.Space)
			}
			own, ok := allowed[name]
			if !ok {
				return d, fmt.Errorf("element %s", name)
			}
			if (name == "svg") != (len(open) == 0) {
				return d, fmt.Errorf("element %s at depth %d", name, len(open))
			}
			var here level
			if len(open) > 0 {
				here = open[len(open)-1]
			}
			here.name = name
			sh := shape{name: name, attr: map[string]string{}}
			for _, a := range tok.Attr {
				key := a.Name.Local
				if a.Name.Space != "" {
					return d, fmt.Errorf("attribute %s:%s", a.Name.Space, key)
				}
				if !slices.Contains(own, key) && (len(own) == 0 || name == "svg" || !slices.Contains(paint, key)) {
					return d, fmt.Errorf("attribute %s on %s", key, name)
				}
				if strings.Contains(a.Value, "url") || strings.Contains(a.Value, ":") && key != "xmlns" {
					return d, fmt.Errorf("attribute %s=%q", key, a.Value)
				}
				sh.attr[key] = a.Value
				switch key {
				case "fill":
					here.fill = a.Value
				case "stroke":
					here.stroke = a.Value
				}
			}
			if name == "svg" && sh.attr["viewBox"] != "0 0 64 64" {
				return d, fmt.Errorf("viewBox %q", sh.attr["viewBox"])
			}
			open = append(open, here)
			if name == "svg" || name == "g" || name == "title" {
				break
			}
			sh.fill, sh.stroke = here.fill, here.stroke
			if sh.fill == "" {
				return d, fmt.Errorf("a %s whose fill is left to the page", name)
			}
			for _, c := range []string{sh.fill, sh.stroke} {
				if c != "" && c != "none" {
					d.colour[c] = true
				}
			}
			d.shapes = append(d.shapes, sh)
		case xml.EndElement:
			open = open[:len(open)-1]
		case xml.CharData:
			text := strings.TrimSpace(string(tok))
			if len(open) > 0 && open[len(open)-1].name == "title" {
				d.title += text
			} else if text != "" {
				return d, fmt.Errorf("text %q", text)
			}
		default:
			return d, fmt.Errorf("%T in the file", tok)
		}
	}
	if len(d.shapes) == 0 {
		return d, errors.New("nothing drawn")
	}
	return d, nil
}

func (s shape) num(key string) float64 {
	v, err := strconv.ParseFloat(s.attr[key], 64)
	if err != nil {
		return math.NaN()
	}
	return v
}

func (s shape) points() (p [][2]float64) {
	for _, pair := range strings.Fields(s.attr["points"]) {
		x, y, _ := strings.Cut(pair, ",")
		fx, errX := strconv.ParseFloat(x, 64)
		fy, errY := strconv.ParseFloat(y, 64)
		if errX != nil || errY != nil {
			return nil
		}
		p = append(p, [2]float64{fx, fy})
	}
	return p
}

// ---- what shape and colour say ----

const (
	yellow = "#ffd100"
	blue   = "#005387"
	red    = "#c8102e"
	green  = "#00843d"
	black  = "#000"
	white  = "#fff"
)

// agrees says whether a drawing has the shape and the colours that ISO 7010
// gives the family, or that the GHS gives its pictograms.
func agrees(d drawing, f Family) error {
	ground := d.shapes[0]
	var picture string
	var also []string
	frame := func(ok bool, what string) error {
		if !ok {
			return fmt.Errorf("%s: the first shape is %s %v, want %s", f, ground.name, ground.attr, what)
		}
		return nil
	}
	var err error
	rest := d.shapes[1:]
	switch f {
	case Warning:
		picture, also = black, []string{yellow}
		p := ground.points()
		ok := len(p) == 3 && ground.fill == yellow && ground.stroke == black &&
			p[0][0] == 32 && p[1][1] == p[2][1] && p[0][1] < p[1][1] && p[1][0]+p[2][0] == 64 && p[1][0]-p[2][0] > 50
		err = frame(ok, "a yellow triangle on its base with a black border")
	case Mandatory:
		picture, also = white, []string{blue}
		ok := ground.name == "circle" && ground.fill == blue && ground.num("cx") == 32 && ground.num("cy") == 32 && ground.num("r") > 28
		err = frame(ok, "a blue disc")
	case Safe, Fire:
		colour := green
		if f == Fire {
			colour = red
		}
		picture, also = white, []string{colour}
		ok := ground.name == "rect" && ground.fill == colour && ground.num("width") == ground.num("height") && ground.num("width") > 58
		err = frame(ok, "a square of "+colour)
	case Chemical:
		picture, also = black, []string{red, white}
		p := ground.points()
		ok := len(p) == 4 && ground.fill == white && ground.stroke == red
		for _, q := range p {
			ok = ok && (q[0] == 32) != (q[1] == 32) && math.Abs(q[0]-32)+math.Abs(q[1]-32) > 27
		}
		err = frame(ok, "a white square on its point with a red border")
	case Prohibition:
		picture, also = black, []string{red, white}
		ok := ground.name == "circle" && ground.fill == white && ground.num("cx") == 32 && ground.num("cy") == 32
		err = frame(ok, "a white disc")
		if len(rest) < 2 {
			return errors.New("no ring and bar")
		}
		ring, bar := rest[len(rest)-2], rest[len(rest)-1]
		rest = rest[:len(rest)-2]
		if ring.name != "circle" || ring.fill != "none" || ring.stroke != red || ring.num("r") != ground.num("r") {
			return fmt.Errorf("no red ring, but %s %v", ring.name, ring.attr)
		}
		if bar.name != "line" || bar.stroke != red || bar.num("x1") != bar.num("y1") || bar.num("x2") != bar.num("y2") || bar.num("x1") >= bar.num("x2") {
			return fmt.Errorf("no red bar from upper left to lower right, but %s %v", bar.name, bar.attr)
		}
	default:
		return fmt.Errorf("no such family: %q", f)
	}
	if err != nil {
		return err
	}
	for c := range d.colour {
		if c != picture && !slices.Contains(also, c) {
			return fmt.Errorf("%s: colour %s", f, c)
		}
	}
	for _, s := range rest {
		if s.fill == picture || s.stroke == picture {
			return nil
		}
	}
	return fmt.Errorf("%s: no picture in %s", f, picture)
}

func TestShapeAndColourAgreeWithTheNumber(t *testing.T) {
	families := []Family{Warning, Mandatory, Prohibition, Safe, Fire, Chemical}
	bodies := map[string]string{}
	for _, s := range All() {
		svg := s.SVG()
		d, err := parse(svg)
		if err != nil {
			t.Errorf("%s: %v", s.Number, err)
			continue
		}
		if d.title != s.Name {
			t.Errorf("%s: title %q, want %q", s.Number, d.title, s.Name)
		}
		if n := len(svg); n < 200 || n > 2048 {
			t.Errorf("%s: %d bytes", s.Number, n)
		}
		_, body, _ := strings.Cut(string(svg), "</title>")
		if other := bodies[body]; other != "" {
			t.Errorf("%s and %s are one drawing", other, s.Number)
		}
		bodies[body] = s.Number
		for _, f := range families {
			err := agrees(d, f)
			switch {
			case s.Number == "P001" && f == Prohibition:
				// The one sign with no picture: ring and bar are all of it.
				if err == nil || !strings.Contains(err.Error(), "no picture") {
					t.Errorf("P001: %v", err)
				}
			case f == s.Family && err != nil:
				t.Errorf("%s: %v", s.Number, err)
			case f != s.Family && err == nil:
				t.Errorf("%s passes as one of family %s", s.Number, f)
			}
		}
	}
}

// The two checks above refuse what they are there to refuse.
func TestTheChecksCanFail(t *testing.T) {
	s, _ := Find("W012")
	good := string(s.SVG())
	change := func(from, to string) string {
		if !strings.Contains(good, from) {
			t.Fatalf("no %s in W012", from)
		}
		return strings.Replace(good, from, to, 1)
	}
	end := func(what string) string { return change("</svg>", what+"</svg>") }
	for name, bad := range map[string]string{
		"style attribute": change("<g ", `<g style="fill:#000" `),
		"style element":   end("<style>g{fill:red}</style>"),
		"script":          end("<script>1</script>"),
		"handler":         change("<g ", `<g onclick="1" `),
		"id":              change("<g ", `<g id="a" `),
		"class":           change("<g ", `<g class="a" `),
		"xlink":           change("<g ", `<g xmlns:x="http://www.w3.org/1999/xlink" x:href="#a" `),
		"use":             end(`<use href="#a"/>`),
		"image":           end(`<image href="a.png"/>`),
		"text":            end(`<text>W</text>`),
		"loose text":      end("W"),
		"foreign element": end(`<p xmlns="http://www.w3.org/1999/xhtml"/>`),
		"outside paint":   change(`fill="#000"`, `fill="url(#a)"`),
		"comment":         end("<!-- x -->"),
		"prolog":          `<?xml version="1.0"?>` + good,
		"viewBox":         change("0 0 64 64", "0 0 72 64"),
		"page's fill":     change(`<g fill="#000">`, "<g>"),
		"unclosed":        change("</g>", ""),
		"empty":           `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64"><title>x</title></svg>`,
	} {
		if _, err := parse([]byte(bad)); err == nil {
			t.Errorf("%s: let through", name)
		}
	}
	for name, bad := range map[string]string{
		"blue disc in it":    end(`<circle cx="32" cy="42" r="5" fill="#005387"/>`),
		"orange":             change(yellow, "#ff8200"),
		"no border":          change(`stroke="#000"`, `stroke="none"`),
		"on its head":        change("32,6 61,57 3,57", "32,57 61,6 3,6"),
		"four corners":       change("32,6 61,57 3,57", "32,6 61,57 32,60 3,57"),
		"no picture":         change(`<g fill="#000">`, `<g fill="#ffd100">`),
		"not a number there": change("32,6", "32,a"),
	} {
		d, err := parse([]byte(bad))
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if agrees(d, Warning) == nil {
			t.Errorf("%s: let through", name)
		}
	}
	s, _ = Find("P003")
	good = string(s.SVG())
	bar := good[strings.Index(good, "<line"):strings.Index(good, "</svg>")]
	for name, bad := range map[string]string{
		"no bar":        change(bar, ""),
		"bar mirrored":  change(`x1="12.2" y1="12.2" x2="51.8" y2="51.8"`, `x1="51.8" y1="12.2" x2="12.2" y2="51.8"`),
		"bar in black":  change(bar, strings.Replace(bar, red, black, 1)),
		"under picture": end(`<circle cx="32" cy="32" r="9" fill="#000"/>`),
	} {
		d, err := parse([]byte(bad))
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if agrees(d, Prohibition) == nil {
			t.Errorf("%s: let through", name)
		}
	}
}

func TestInline(t *testing.T) {
	for _, s := range All() {
		in := s.Inline("sign", `5 < 6 "volts" & more`)
		want := `<svg class="sign" role="img" aria-label="5 &lt; 6 &#34;volts&#34; &amp; more" viewBox="0 0 64 64"><`
		if !strings.HasPrefix(in, want) {
			t.Errorf("%s: begins %.120s", s.Number, in)
			continue
		}
		for _, no := range []string{"<?xml", "<title", "xmlns", "\n", "><title", s.Number} {
			if strings.Contains(in, no) {
				t.Errorf("%s: %q in %s", s.Number, no, in)
			}
		}
		// Put back what the file has and the page has not: the shapes must be the same.
		back := `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64"><` + strings.TrimPrefix(in, want)
		got, err := parse([]byte(back))
		if err != nil {
			t.Errorf("%s: %v", s.Number, err)
			continue
		}
		file, err := parse(s.SVG())
		if err != nil {
			t.Fatal(err)
		}
		if fmt.Sprint(got.shapes) != fmt.Sprint(file.shapes) {
			t.Errorf("%s: not the drawing of the file", s.Number)
		}
	}
	s, _ := Find("M013")
	if in := s.Inline("", ""); !strings.HasPrefix(in, `<svg role="img" aria-label="Wear a face shield" viewBox=`) {
		t.Errorf("begins %.80s", in)
	}
	if in := s.Inline(`a" onload="x`, ""); strings.Contains(in, `onload="`) {
		t.Errorf("class not escaped: %.80s", in)
	}
}

func TestAlert(t *testing.T) {
	in := Alert()
	if !strings.HasPrefix(in, `<svg class="alert" aria-hidden="true" viewBox="0 0 64 64"><path`) || !strings.HasSuffix(in, "</svg>") {
		t.Errorf("%s", in)
	}
	b, err := files.ReadFile("alert.svg")
	if err != nil {
		t.Fatal(err)
	}
	d, err := parse(b)
	if err != nil {
		t.Fatal(err)
	}
	if len(d.colour) != 1 || !d.colour["currentColor"] {
		t.Errorf("colours %v", d.colour)
	}
	if strings.Count(d.shapes[0].attr["d"], "z") != 3 || d.shapes[0].attr["fill-rule"] != "evenodd" {
		t.Error("the mark is not cut out of the triangle")
	}
}

func TestNearest(t *testing.T) {
	for in, want := range map[string]string{
		"W012": "W012", "w12": "W012", "W-012": "W012", " w 12 ": "W012", "WO12": "W012", "W0012": "W012", "W.012": "W012",
		"GHS5": "GHS05", "ghs-05": "GHS05", "GHS005": "GHS05", "GHSO5": "GHS05",
		"W013":        "W012", // one digit from many signs, one count from two: the lower
		"W030":        "W035", // one digit, five counts
		"W112":        "W012",
		"M020":        "M021",
		"P032":        "P031",
		"E002":        "E001",
		"electricity": "W012", "No smoking": "P002",
		"W999": "", "GHS10": "", "X012": "", "012": "", "W": "", "": "", "W01A": "", "W123456": "", "banana": "", "W-": "", "WΩ12": "",
	} {
		if got := Nearest(in); got != want {
			t.Errorf("Nearest(%q) = %q, want %q", in, got, want)
		}
	}
	for _, s := range All() {
		if got := Nearest(strings.ToLower(s.Number)); got != s.Number {
			t.Errorf("Nearest of %s in small letters = %q", s.Number, got)
		}
		if got := Nearest(s.Name); got != s.Number {
			t.Errorf("Nearest(%q) = %q, want %q", s.Name, got, s.Number)
		}
	}
}

// A sign whose name alone is known is not drawn.
func TestUndrawnNames(t *testing.T) {
	for number, name := range Undrawn() {
		if _, drawn := Find(number); drawn || name == "" {
			t.Errorf("%s, %q, is drawn or has no name", number, name)
		}
	}
}
