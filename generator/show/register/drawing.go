package register

import (
	"fmt"
	"html"
	"strings"

	"baybinder/generator/model"
	"baybinder/generator/show/page"
)

// The drawing's measures, in its own units: two boxes side by side fill the
// width of a phone with letters of 16.
const (
	drawingWidth = 360
	boxWidth     = 164
	boxHeight    = 64
	rowGap       = 34
	boxesInARow  = 2
	lineLetters  = 16
)

// drawn is a part with the place of its box.
type drawn struct {
	part *model.Part
	x, y int
}

// underDrawing draws the parts of a machine and what they are under, in
// layers, what comes off first at the top; "" where no part is under another.
func underDrawing(m *model.Machine, label string) page.HTML {
	boxes, height := placeBoxes(layers(m))
	if len(boxes) == 0 {
		return ""
	}
	at := map[*model.Part]drawn{}
	for _, b := range boxes {
		at[b.part] = b
	}
	var svg strings.Builder
	fmt.Fprintf(&svg, `<svg class="drawing" role="img" aria-label="%s" viewBox="0 0 %d %d">`, html.EscapeString(label), drawingWidth, height)
	for _, b := range boxes {
		for _, u := range b.part.Under {
			if above, known := at[u.To]; known {
				drawLine(&svg, above, b)
			}
		}
	}
	for _, b := range boxes {
		drawBox(&svg, b)
	}
	svg.WriteString(`</svg>`)
	return page.HTML(svg.String())
}

// placeBoxes gives every part its place: a layer is one or more rows.
func placeBoxes(layers [][]*model.Part) (boxes []drawn, height int) {
	y := 2
	for _, layer := range layers {
		for from := 0; from < len(layer); from += boxesInARow {
			row := layer[from:min(from+boxesInARow, len(layer))]
			left := (drawingWidth - len(row)*boxWidth - (len(row)-1)*28) / 2
			for i, p := range row {
				boxes = append(boxes, drawn{p, left + i*(boxWidth+28), y})
			}
			y += boxHeight + 12
		}
		y += rowGap - 12
	}
	return boxes, max(y-rowGap+2, 2)
}

// drawLine draws that the lower part is under the upper.
func drawLine(svg *strings.Builder, upper, lower drawn) {
	x1, y1, x2, y2 := upper.x+boxWidth/2, upper.y+boxHeight, lower.x+boxWidth/2, lower.y
	fmt.Fprintf(svg, `<path d="M%d %dC%d %d %d %d %d %d"/>`, x1, y1, x1, y1+rowGap/2, x2, y2-rowGap/2, x2, y2)
}

func drawBox(svg *strings.Builder, b drawn) {
	fmt.Fprintf(svg, `<rect x="%d" y="%d" width="%d" height="%d" rx="4"/>`, b.x, b.y, boxWidth, boxHeight)
	lines := wrapWords(b.part.Label(), lineLetters)
	y := b.y + boxHeight/2 + 6 - (len(lines)-1)*9
	for i, line := range lines {
		fmt.Fprintf(svg, `<text x="%d" y="%d">%s</text>`, b.x+boxWidth/2, y+i*18, html.EscapeString(line))
	}
}
