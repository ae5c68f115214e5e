package register

import (
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"baybinder/generator/model"
)

// What a part is under stands higher than the part, on any machine: the
// drawing is a topological order read from the top.
func TestWhatIsOnTopIsDrawnHigher(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := &model.Machine{}
		n := rapid.IntRange(1, 20).Draw(t, "parts")
		for i := range n {
			p := &model.Part{}
			p.ID = fmt.Sprint("part-", i)
			for j := range i {
				if rapid.IntRange(0, 3).Draw(t, "under") == 0 {
					above := m.Parts[j]
					p.Under = append(p.Under, model.Ref[model.Part]{ID: above.ID, To: above})
					above.Over = append(above.Over, p)
				}
			}
			m.Parts = append(m.Parts, p)
		}
		boxes, height := placeBoxes(layers(m))
		at := map[*model.Part]drawn{}
		for _, b := range boxes {
			at[b.part] = b
			if b.y+boxHeight > height || b.x < 0 || b.x+boxWidth > drawingWidth {
				t.Fatalf("%s is outside the drawing", b.part.ID)
			}
		}
		for _, p := range m.Parts {
			_, drawnAtAll := at[p]
			if related := len(p.Under)+len(p.Over) > 0; related != drawnAtAll {
				t.Fatalf("%s drawn: %v, with others above or below: %v", p.ID, drawnAtAll, related)
			}
			for _, u := range p.Under {
				if at[u.To].y >= at[p].y {
					t.Fatalf("%s is under %s and not drawn lower", p.ID, u.ID)
				}
			}
		}
		overlaps(t, boxes)
	})
}

func overlaps(t *rapid.T, boxes []drawn) {
	for i, a := range boxes {
		for _, b := range boxes[:i] {
			if a.x < b.x+boxWidth && b.x < a.x+boxWidth && a.y < b.y+boxHeight && b.y < a.y+boxHeight {
				t.Fatalf("%s and %s overlap", a.part.ID, b.part.ID)
			}
		}
	}
}

func TestWrapWords(t *testing.T) {
	for text, want := range map[string]int{"lid": 1, "separator element": 2, "a very long name for one small part of it": 3} {
		if got := wrapWords(text, lineLetters); len(got) != want {
			t.Errorf("%q: %q", text, got)
		}
	}
}
