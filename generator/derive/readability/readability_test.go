package readability

import (
	"math"
	"testing"
)

// Known: SEEN, FROM MEMORY.

// The two sentences of the encyclopaedia's article on the formula, from memory;
// the values to three places follow from the formula and the counts. The counts
// themselves are given: 13 words, 24 syllables; six and six.
func TestTheWorkedExamples(t *testing.T) {
	for _, x := range []struct {
		text  string
		want  Count
		ease  float64 // as printed
		grade float64
		off   float64
	}{
		{"The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.", Count{Words: 13, Sentences: 1, Longest: 13, Spoken: 13, Syllables: 24}, 37.5, 11.26, .05},
		{"The cat sat on the mat.", Count{Words: 6, Sentences: 1, Longest: 6, Spoken: 6, Syllables: 6}, 116, -1.45, .2},
	} {
		c := NewReader("en").Read(x.text)
		if c != x.want {
			t.Errorf("%q: %+v, want %+v", x.text, c, x.want)
		}
		ease, known := Ease(x.want, "en")
		if !known || math.Abs(ease-x.ease) > x.off {
			t.Errorf("%q: ease %.3f, want %.1f", x.text, ease, x.ease)
		}
		if grade, known := Grade(x.want, "en"); !known || math.Abs(grade-x.grade) > .005 {
			t.Errorf("%q: grade %.3f, want %.2f", x.text, grade, x.grade)
		}
	}
}

// By hand from the formula, which is from memory: 100 words in 10 sentences of
// 200 syllables.
func TestSpanishByHand(t *testing.T) {
	ease, known := Ease(Count{Words: 100, Sentences: 10, Spoken: 100, Syllables: 200}, "es")
	if want := 206.835 - 62.3*2 - 10; !known || math.Abs(ease-want) > 1e-9 {
		t.Errorf("%v, want %v", ease, want)
	}
}

func TestNoFigureWithoutWordsOrFormula(t *testing.T) {
	c := NewReader("de").Read("Den Deckel abnehmen. Die Schraube lösen.")
	if _, known := Ease(c, "de"); known || c.Words != 6 || c.Longest != 3 || c.Sentences != 2 {
		t.Errorf("German: %+v, known %v", c, known)
	}
	for _, text := range []string{"", " . ", "35 N·m", "K1"} {
		c := NewReader("en").Read(text)
		if ease, known := Ease(c, "en"); known {
			t.Errorf("%q has an ease of %v", text, ease)
		}
		if _, known := Grade(c, "en"); known {
			t.Errorf("%q has a grade", text)
		}
	}
}

// What counts as a word and a sentence is ASD-STE100's rules of counting as
// the advice on sentences takes them (DEVELOPERS.md).
func TestWordsAndSentences(t *testing.T) {
	for _, x := range []struct {
		text                              string
		words, sentences, longest, spoken int
	}{
		{"Tighten it to 35 N·m.", 4, 1, 4, 3},                       // an amount is one word, without syllables
		{"Set 20 to 25 bar. Wait.", 3, 2, 2, 2},                     // a range is one
		{"Turn 2.5 times.", 3, 1, 3, 2},                             // the point ends nothing
		{"Undo the four M8x1.25 bolts on K1.", 7, 1, 7, 5},          // codes
		{"Put it on the axle-stand.", 5, 1, 5, 5},                   // a hyphen joins
		{"Press \"Reset all. Now.\" Wait.", 3, 2, 2, 2},             // quotes are one word
		{"Press `start pump` twice.", 3, 1, 3, 2},                   // code too
		{"Open it (the valve beside the pump) slowly.", 3, 1, 3, 3}, // brackets are not counted
		{"Open it (slowly.\nWait.", 4, 2, 3, 4},                     // what nothing closes is a sign
		{"Look: it is dry; wait — go.", 6, 4, 3, 6},
		{"One line\nanother line", 4, 2, 2, 4},
		{"Don't use the and/or switch's end.", 6, 1, 6, 6},
		{"…!?.-()\"", 0, 0, 0, 0},
	} {
		c := NewReader("en").Read(x.text)
		if c.Words != x.words || c.Sentences != x.sentences || c.Longest != x.longest || c.Spoken != x.spoken {
			t.Errorf("%q: %+v, want words %d, sentences %d, longest %d, spoken %d", x.text, c, x.words, x.sentences, x.longest, x.spoken)
		}
	}
}

// A reader that has met words counts as a fresh one does.
func TestAReaderKeepsNothingOfATextBefore(t *testing.T) {
	texts := []string{"Tighten 35 N·m and wait. Go", "The cat sat (on the mat", "", "Mechanism 5 bar"}
	used := NewReader("en")
	for range 2 {
		for _, text := range texts {
			if got, want := used.Read(text), NewReader("en").Read(text); got != want {
				t.Errorf("%q: %+v, and fresh %+v", text, got, want)
			}
		}
	}
}

// FuzzRead reads anything without a fault, and counts no more words than runes.
func FuzzRead(f *testing.F) {
	for _, text := range []string{"Set 20 to 25 bar (or less).", "\"", "`a", "é’", "«x» — 5 °C\xff", "qu'a-"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		for _, language := range []string{"en", "es", "de"} {
			c := NewReader(language).Read(text)
			if c.Words > len(text) || c.Sentences > c.Words || c.Longest > c.Words || c.Spoken > c.Words || language != "de" && c.Syllables < c.Spoken {
				t.Errorf("%q in %s: %+v", text, language, c)
			}
		}
	})
}
