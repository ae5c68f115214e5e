package nearest

import "testing"

func TestOf(t *testing.T) {
	tools := []string{"torque-wrench-5-25", "torque-wrench-20-100", "socket-13", "socket-10", "rubber-gloves", "two-pole-tester", "rag"}
	for _, c := range []struct{ word, want, why string }{
		{"sokcet-13", "socket-13", "two letters swapped count as one"},
		{"socket13", "socket-13", "a letter left out"},
		{"Socket-13", "socket-13", "capitals are no difference"},
		{"sockets-10", "socket-10", "a letter too many"},
		{"socket-11", "socket-13", "of two that are as near the first stands"},
		{"gloves", "rubber-gloves", "the only one that has all parts"},
		{"tester-two-pole", "two-pole-tester", "the parts in another order"},
		{"torque-wrench", "", "two have all parts: neither is offered"},
		{"hammer", "", "nothing is near"},
		{"reg", "rag", "one letter of a short word"},
		{"bog", "", "two letters of a short word are another word"},
		{"", "", "nothing was written"},
		{"x", "", "a word of one letter is near to nothing"},
	} {
		if got := Of(c.word, tools); got != c.want {
			t.Errorf("Of(%q) = %q, want %q: %s", c.word, got, c.want, c.why)
		}
	}
	if got := Of("señal", []string{"senal", "canal"}); got != "senal" {
		t.Errorf("an accent is one letter: got %q", got)
	}
	if got := Of("tool", nil); got != "" {
		t.Errorf("nothing to choose from: got %q", got)
	}
}

// The distances are those of the textbook definition: insertions, deletions,
// substitutions and swaps of neighbours, no letter touched twice.
func TestDistance(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want int
	}{
		{"kitten", "sitting", 3}, // the example by which the Levenshtein distance is usually taught
		{"ca", "abc", 3},         // where optimal string alignment differs from the unrestricted distance, 2
		{"ab", "ba", 1},
		{"", "abc", 3},
		{"abc", "abc", 0},
	} {
		if got := distance([]rune(c.a), []rune(c.b), 10); got != c.want {
			t.Errorf("distance(%q, %q) = %d, want %d", c.a, c.b, got, c.want)
		}
	}
}
