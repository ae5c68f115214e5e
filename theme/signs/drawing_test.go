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
)

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
