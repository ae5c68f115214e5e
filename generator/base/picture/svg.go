package picture

import (
	"encoding/xml"
	"errors"
	"io"
	"slices"
	"strings"
	"unicode/utf8"

	"baybinder/generator/base/finding"
)

// Fault is what in a drawing is refused, and where: a byte offset.
type Fault struct {
	At  int
	Why finding.Words
}

// SVG looks through a drawing (SVG 1.1 and 2) for what would run or fetch
// something when it is opened by itself: it is nil where there is nothing. Of
// elements those are let through that draw; of references those to the drawing
// itself and to pictures that it holds.
func SVG(data []byte) *Fault {
	if !utf8.Valid(data) {
		return &Fault{0, finding.Say("its text is not UTF-8, so it cannot be looked through")}
	}
	d := xml.NewDecoder(strings.NewReader(string(data)))
	d.CharsetReader = sameText
	s := &scan{}
	for {
		at := int(d.InputOffset())
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return nil
		}
		if err != nil {
			return &Fault{at, finding.Say("it cannot be read as XML")}
		}
		if why := s.token(token); !why.IsZero() {
			return &Fault{at, why}
		}
	}
}

// sameText lets a declaration pass that names a subset of UTF-8.
func sameText(name string, r io.Reader) (io.Reader, error) {
	if strings.EqualFold(name, "us-ascii") || strings.EqualFold(name, "ascii") {
		return r, nil
	}
	return nil, errors.New("not UTF-8")
}

// scan is where a look through a drawing stands.
type scan struct {
	open  []xml.Name
	style strings.Builder // of the style that is open: a comment parts it and not its meaning
}

func (s *scan) token(token xml.Token) finding.Words {
	switch t := token.(type) {
	case xml.StartElement:
		s.open = append(s.open, t.Name)
		return element(t)
	case xml.EndElement:
		s.open = s.open[:max(0, len(s.open)-1)]
		if strings.EqualFold(t.Name.Local, "style") {
			why := styled(s.style.String())
			s.style.Reset()
			return why
		}
	case xml.ProcInst:
		if t.Target != "xml" {
			return finding.Say("it holds the processing instruction %s", t.Target)
		}
	case xml.Directive:
		return doctype(string(t))
	case xml.CharData:
		if n := len(s.open); n > 0 && strings.EqualFold(s.open[n-1].Local, "style") {
			s.style.Write(t)
		}
	}
	return finding.Words{}
}

// doctype lets the document types of the standard's own versions pass, which
// drawing programs write and no browser fetches. What stands in brackets could
// make a harmless word into anything.
func doctype(text string) finding.Words {
	_, ids, public := strings.Cut(text, "PUBLIC")
	if !strings.HasPrefix(text, "DOCTYPE") || strings.ContainsAny(text, "[]") ||
		strings.Contains(text, "SYSTEM") || public && !strings.HasPrefix(strings.TrimSpace(ids), `"-//W3C//DTD SVG 1.`) {
		return finding.Say("its document type declares entities, or is not SVG's own")
	}
	return finding.Words{}
}

// draws are the elements of SVG that are let through: those of SVG 1.1 and 2
// without script, foreignObject, handlers, and links to elsewhere (a is judged
// by its href).
var draws = words(`svg g defs symbol use switch a title desc metadata style view
	path rect circle ellipse line polyline polygon text tspan textPath tref altGlyph
	image linearGradient radialGradient meshgradient meshpatch meshrow stop pattern hatch hatchpath solidcolor solidColor
	clipPath mask marker filter animate animateTransform animateMotion animateColor mpath set cursor
	flowRoot flowRegion flowPara flowSpan
	font font-face font-face-name font-face-src glyph missing-glyph hkern vkern
	feBlend feColorMatrix feComponentTransfer feComposite feConvolveMatrix feDiffuseLighting feDisplacementMap
	feDistantLight feDropShadow feFlood feFuncA feFuncB feFuncG feFuncR feGaussianBlur feImage feMerge feMergeNode
	feMorphology feOffset fePointLight feSpecularLighting feSpotLight feTile feTurbulence`)

const (
	svgSpace  = "http://www.w3.org/2000/svg"
	pageSpace = "http://www.w3.org/1999/xhtml"
	mathSpace = "http://www.w3.org/1998/Math/MathML"
)

// runs are names that no element has in any space: drawing programs note things
// in spaces of their own, and a browser may take a space for another than we do.
var runs = words("script foreignobject handler listener iframe frame object embed html body form input button link base meta audio video applet svg")

func element(e xml.StartElement) finding.Words {
	switch own := e.Name.Space == svgSpace || e.Name.Space == ""; {
	case own && !slices.Contains(draws, e.Name.Local), strings.Contains(e.Name.Local, ":"):
		return finding.Say("it holds the element %s", e.Name.Local)
	case !own && (e.Name.Space == pageSpace || e.Name.Space == mathSpace || slices.Contains(runs, strings.ToLower(e.Name.Local))):
		return finding.Say("it holds the element %s", e.Name.Local)
	}
	for _, a := range e.Attr {
		if why := attribute(e, a); !why.IsZero() {
			return why
		}
	}
	return finding.Words{}
}

func attribute(e xml.StartElement, a xml.Attr) finding.Words {
	name, value := strings.ToLower(a.Name.Local), a.Value
	switch {
	case a.Name.Space == "xmlns" || a.Name.Space == "" && name == "xmlns":
		return finding.Words{}
	case strings.HasPrefix(name, "on"):
		return finding.Say("its element %s runs something: %s", e.Name.Local, a.Name.Local)
	case name == "base" && a.Name.Space != "":
		return finding.Say("it moves its references elsewhere: xml:base")
	case name == "href" || name == "src":
		return reference(e, value)
	case name == "ping" || name == "srcset" || name == "srcdoc" || name == "action" || name == "formaction":
		return finding.Say("its element %s leads elsewhere: %s", e.Name.Local, a.Name.Local)
	case name == "attributename" && moves(value):
		return finding.Say("its element %s changes %s", e.Name.Local, value)
	}
	return styled(value)
}

// moves says that an animation would change where something leads, or what it
// runs.
func moves(attribute string) bool {
	name := strings.ToLower(strings.TrimSpace(attribute))
	if i := strings.LastIndexByte(name, ':'); i >= 0 {
		name = name[i+1:]
	}
	return name == "href" || name == "src" || name == "base" || strings.HasPrefix(name, "on")
}

// reference judges where an href leads: into the drawing, or to a picture that
// stands in it.
func reference(e xml.StartElement, to string) finding.Words {
	to = strings.TrimSpace(to)
	if to == "" || strings.HasPrefix(to, "#") || (e.Name.Local == "image" || e.Name.Local == "feImage") && held(to) {
		return finding.Words{}
	}
	return finding.Say("its element %s leads out of the drawing", e.Name.Local)
}

// held says that an address is a picture of dots, or a font, that stands in it.
func held(address string) bool {
	address = strings.ToLower(address)
	for _, kind := range []string{"image/png", "image/jpeg", "image/jpg", "image/gif", "image/webp", "font/"} {
		if strings.HasPrefix(address, "data:"+kind) {
			return true
		}
	}
	return false
}

// fetches are the words of CSS that name a resource beside url(): CSS Images 4,
// CSS Cascade, and what older browsers knew.
var fetches = []string{"@import", "image(", "image-set(", "src(", "expression(", "-moz-binding", "javascript:"}

// styled judges a text that may be CSS: a style, or a value such as
// fill="url(#grey)".
func styled(text string) finding.Words {
	low := strings.ToLower(text)
	for _, word := range fetches {
		if strings.Contains(low, word) {
			return finding.Say("its style leads out of the drawing: %s", word)
		}
	}
	if strings.Contains(low, `\`) && (strings.Contains(low, "(") || strings.Contains(low, "@")) {
		return finding.Say(`its style hides a word behind \`)
	}
	for {
		_, rest, found := strings.Cut(low, "url(")
		if !found {
			return finding.Words{}
		}
		to := strings.TrimLeft(rest, " \t\n\r\"'")
		if !strings.HasPrefix(to, "#") && !held(to) {
			return finding.Say("its style leads out of the drawing: url()")
		}
		low = rest
	}
}

func words(text string) []string { return strings.Fields(text) }
