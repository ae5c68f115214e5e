package signs

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"
)

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
