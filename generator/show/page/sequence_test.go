package page

import (
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// Five wheel nuts go 1, 3, 5, 2, 4 round the circle: the usual step rule
// (derived, not printed in a handbook).
func TestSequenceDrawing(t *testing.T) {
	drawing := string(SequenceDrawing([]string{"star"}, 5, "star"))
	if n := strings.Count(drawing, "<circle"); n != 5 {
		t.Fatalf("%d circles", n)
	}
	x, y := onCircle(2, 5)
	second := circleOf(2, drawing)
	if !strings.Contains(second, "cx=\""+strconv.Itoa(x)+"\" cy=\""+strconv.Itoa(y)+"\"") {
		t.Errorf("the second nut is not the third round the circle: %s", second)
	}
	if SequenceDrawing([]string{"left", "right"}, 2, "") != "" {
		t.Error("an order in words is drawn")
	}
}

// No fastener of a drawing lies over another, nor over its edge, however many
// there are.
func TestSequenceDrawingHasRoom(t *testing.T) {
	circles := regexp.MustCompile(`<circle cx="(\d+)" cy="(\d+)" r="(\d+)"/>`)
	for _, kind := range []string{"star", "spiral"} {
		for n := 2; n <= 24; n += 2 {
			drawing := string(SequenceDrawing([]string{kind}, n, kind))
			var size int
			_, err := fmt.Sscanf(drawing[strings.Index(drawing, "viewBox"):], `viewBox="0 0 %d`, &size)
			all := circles.FindAllStringSubmatch(drawing, -1)
			if err != nil || len(all) != n {
				t.Fatalf("%s of %d: %d circles, %v", kind, n, len(all), err)
			}
			var at [][3]float64
			for _, c := range all {
				x, _ := strconv.ParseFloat(c[1], 64)
				y, _ := strconv.ParseFloat(c[2], 64)
				r, _ := strconv.ParseFloat(c[3], 64)
				if min(x, y) < r || max(x, y)+r > float64(size) {
					t.Errorf("%s of %d: a circle at %v, %v is cut off", kind, n, x, y)
				}
				for _, o := range at {
					if math.Hypot(x-o[0], y-o[1]) <= r+o[2] {
						t.Errorf("%s of %d: circles at %v, %v and %v, %v touch", kind, n, x, y, o[0], o[1])
					}
				}
				at = append(at, [3]float64{x, y, r})
			}
		}
	}
}

// circleOf is the drawing's n-th circle.
func circleOf(n int, drawing string) string {
	parts := strings.Split(drawing, "<circle")
	return parts[n]
}

// A star and a spiral are words of the format: a page says them in its language. An
// order of the shop's own is in the shop's words.
func TestOrdersAreSaidInTheLanguage(t *testing.T) {
	for _, c := range []struct{ language, sequence, want string }{
		{"en", "star", "sequence: star"},
		{"de", "star", "Reihenfolge: Stern, über Kreuz"},
		{"de", "spiral", "Reihenfolge: Spirale von der Mitte aus"},
		{"de", "[oben, unten]", "Reihenfolge: oben, unten"},
		{"de", "[star, unten]", "Reihenfolge: star, unten"},
		{"es", "star", "secuencia: en estrella, en cruz"},
	} {
		s := siteOf(t, map[string]string{
			"shop.yaml":       "title: T\nlanguage: " + c.language + "\n",
			"machines/m.yaml": "name: M\nfasteners:\n  bolt: { name: B, sequence: " + c.sequence + " }\n",
		})
		if got := s.InOrder(s.Manual.Machines[0].Fasteners[0]); got != c.want {
			t.Errorf("%s in %s: %q, want %q", c.sequence, c.language, got, c.want)
		}
	}
}
