package picture

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// What runs or fetches is told in the standards: scripts, event attributes and
// foreignObject in SVG 1.1, chapters 18, 23 and appendix; references in 5.3.2
// (xlink:href), SVG 2 16.1 (href), CSS Values 4.5 (url()), CSS Cascade 2
// (@import), SVG 1.1 19.2 (animate, set), XML 1.0 2.6 and 4.2 (processing
// instructions, entities), XML Base. The payloads were written for this table.
func TestWhatRunsOrFetchesIsRefused(t *testing.T) {
	const ns = ` xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"`
	for name, text := range map[string]string{
		"script":             `<svg` + ns + `><script>alert(1)</script></svg>`,
		"script, prefixed":   `<s:svg xmlns:s="http://www.w3.org/2000/svg"><s:script>alert(1)</s:script></s:svg>`,
		"script of a page":   `<svg` + ns + ` xmlns:h="http://www.w3.org/1999/xhtml"><h:script>alert(1)</h:script></svg>`,
		"script, odd space":  `<svg` + ns + ` xmlns:q="urn:q"><q:script>alert(1)</q:script></svg>`,
		"no space at all":    `<svg><script>alert(1)</script></svg>`,
		"script in metadata": `<svg` + ns + `><metadata><script>alert(1)</script></metadata></svg>`,
		"event":              `<svg` + ns + ` onload="alert(1)"/>`,
		"event in capitals":  `<svg` + ns + `><rect ONCLICK="alert(1)"/></svg>`,
		"event of animation": `<svg` + ns + `><animate onbegin="alert(1)"/></svg>`,
		"foreign object":     `<svg` + ns + `><foreignObject><p xmlns="http://www.w3.org/1999/xhtml">x</p></foreignObject></svg>`,
		"page in it":         `<svg` + ns + `><b xmlns="http://www.w3.org/1999/xhtml">x</b></svg>`,
		"handler":            `<svg` + ns + `><handler>alert(1)</handler></svg>`,
		"outside image":      `<svg` + ns + `><image xlink:href="https://example.com/a.png"/></svg>`,
		"outside image, 2":   `<svg` + ns + `><image href="//example.com/a.png"/></svg>`,
		"beside it":          `<svg` + ns + `><image href="../readings/people.csv"/></svg>`,
		"drawing in it":      `<svg` + ns + `><image href="data:image/svg+xml,%3Csvg/%3E"/></svg>`,
		"outside use":        `<svg` + ns + `><use href="other.svg#a"/></svg>`,
		"use of data":        `<svg` + ns + `><use href="data:image/png;base64,AA"/></svg>`,
		"link":               `<svg` + ns + `><a href="javascript:alert(1)"><text>x</text></a></svg>`,
		"link, spelled":      `<svg` + ns + `><a xlink:href="&#106;avascript:alert(1)"><text>x</text></a></svg>`,
		"link elsewhere":     `<svg` + ns + `><a href="https://example.com/"><text>x</text></a></svg>`,
		"style":              `<svg` + ns + `><style>rect { fill: url(https://example.com/a) }</style></svg>`,
		"style, quoted":      `<svg` + ns + `><style>rect { fill: URL( "https://example.com/a" ) }</style></svg>`,
		"style, escaped":     `<svg` + ns + `><style>rect { fill: \75rl(https://example.com/a) }</style></svg>`,
		"import":             `<svg` + ns + `><style>@import "https://example.com/a.css";</style></svg>`,
		"import in CDATA":    `<svg` + ns + `><style><![CDATA[@IMPORT "a.css";]]></style></svg>`,
		"import, parted":     `<svg` + ns + `><style>@imp<!-- x -->ort "a.css";</style></svg>`,
		"image set":          `<svg` + ns + `><style>rect { background: image-set("a.png" 1x) }</style></svg>`,
		"second url":         `<svg` + ns + `><rect style="fill: url(#a); mask: url(b.svg#c)"/></svg>`,
		"attribute":          `<svg` + ns + `><rect fill="url(https://example.com/a#b)"/></svg>`,
		"animated link":      `<svg` + ns + `><a href="#x"><animate attributeName="href" values="javascript:alert(1)"/></a></svg>`,
		"set link":           `<svg` + ns + `><a href="#x"><set attributeName="xlink:href" to="javascript:alert(1)"/></a></svg>`,
		"animated fill":      `<svg` + ns + `><rect><animate attributeName="fill" to="url(https://example.com/a)"/></rect></svg>`,
		"base":               `<svg` + ns + ` xml:base="https://example.com/"><use href="#a"/></svg>`,
		"entity":             `<!DOCTYPE svg [<!ENTITY a "x">]><svg` + ns + `><text>&a;</text></svg>`,
		"outside entity":     `<!DOCTYPE svg SYSTEM "https://example.com/a.dtd"><svg` + ns + `/>`,
		"stylesheet":         `<?xml-stylesheet href="https://example.com/a.xsl" type="text/xsl"?><svg` + ns + `/>`,
		"frame":              `<svg` + ns + `><iframe src="https://example.com/"/></svg>`,
		"another charset":    `<?xml version="1.0" encoding="UTF-7"?><svg` + ns + `/>`,
		"no UTF-8":           "<svg" + ns + "><text>\xff</text></svg>",
		"no XML":             `<svg` + ns + `><rect x=1></svg>`,
	} {
		if SVG([]byte(text)) == nil {
			t.Errorf("%s is let through: %s", name, text)
		}
	}
}

func TestWhatDrawsIsLetThrough(t *testing.T) {
	const head = `<?xml version="1.0" encoding="UTF-8" standalone="no"?>
<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">
`
	for name, text := range map[string]string{
		"bare":      `<svg/>`,
		"exported":  head + `<svg xmlns="http://www.w3.org/2000/svg" version="1.1"><g id="a"/></svg>`,
		"notes":     `<svg xmlns="http://www.w3.org/2000/svg" xmlns:n="urn:notes"><n:view n:zoom="2"/><metadata><n:RDF><n:Work n:about=""/></n:RDF></metadata></svg>`,
		"gradient":  `<svg xmlns="http://www.w3.org/2000/svg"><linearGradient id="a"/><rect fill="url(#a)" style="stroke:url('#a')"/></svg>`,
		"within":    `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"><use xlink:href="#a"/><a href="#b"/></svg>`,
		"held":      `<svg xmlns="http://www.w3.org/2000/svg"><image href="data:image/png;base64,AAAA"/></svg>`,
		"style":     `<svg xmlns="http://www.w3.org/2000/svg"><style>.a { fill: none; font-family: "Sans" }</style></svg>`,
		"animation": `<svg xmlns="http://www.w3.org/2000/svg"><rect><animate attributeName="x" from="0" to="9" begin="0s" dur="1s"/></rect></svg>`,
		"words":     `<svg xmlns="http://www.w3.org/2000/svg"><text>script: url(x) onload="a" C:\plans</text></svg>`,
	} {
		if fault := SVG([]byte(text)); fault != nil {
			t.Errorf("%s is refused: %s", name, fault.Why)
		}
	}
}

// The demo's own drawings and signs draw and do nothing else.
func TestOurOwnDrawings(t *testing.T) {
	names, _ := filepath.Glob("../../../content/pictures/*.svg")
	signs, _ := filepath.Glob("../../../theme/signs/*.svg")
	if len(names) == 0 || len(signs) == 0 {
		t.Fatal("there are no drawings to look at")
	}
	for _, name := range append(names, signs...) {
		data, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		if fault := SVG(data); fault != nil {
			t.Errorf("%s: %s", name, fault.Why)
		}
	}
}

func TestTheFaultStandsAtItsElement(t *testing.T) {
	text := "<svg>\n  <rect/>\n  <script/>\n</svg>"
	if fault := SVG([]byte(text)); fault == nil || fault.At != strings.Index(text, "<script") {
		t.Errorf("got %v", fault)
	}
}

func TestKinds(t *testing.T) {
	for name, want := range map[string]bool{
		"pictures/a.PNG": true, "pictures/a.svg": true, "pictures/a.html": false, "pictures/a.svgz": false,
		"pictures/a": false, "pictures/a.js": false, "pictures/a.xhtml": false, "pictures/a.pdf": true,
	} {
		if Kind(name) != want {
			t.Errorf("Kind(%s) is %v", name, !want)
		}
	}
}

// FuzzSVG looks through what is not nicely made: it never panics, and what has
// a script's tag in it is never let through.
func FuzzSVG(f *testing.F) {
	f.Add(`<svg xmlns="http://www.w3.org/2000/svg"><script/></svg>`)
	f.Add(`<svg><style>a{fill:url(#b)}</style><image href="data:image/png,"/></svg>`)
	f.Add(`<!DOCTYPE svg [<!ENTITY a "b">]><svg onload="a"/>`)
	f.Fuzz(func(t *testing.T, text string) {
		fault := SVG([]byte(text))
		if fault != nil && (fault.At < 0 || fault.At > len(text)) {
			t.Fatalf("the fault is outside of the text: %d", fault.At)
		}
		plain := !strings.Contains(text, "<!") && !strings.Contains(text, "<?") && !strings.ContainsAny(text, `"'`)
		if fault == nil && plain && strings.Contains(text, "<script>") {
			t.Fatalf("let through: %q", text)
		}
	})
}
