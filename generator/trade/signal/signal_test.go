package signal

import (
	"testing"

	"baybinder/generator/language/words"
)

// Known: SEEN, FROM MEMORY.

// The table is typed from the definitions of ANSI Z535.4-2007, 4.14.1 to
// 4.14.4, as quoted in a standards adviser's page on signal words.
func TestOf(t *testing.T) {
	for _, c := range []struct {
		harm, happens string
		want          Word
	}{
		{"death", "will", Danger},
		{"death", "could", Warning},
		{"serious-injury", "will", Danger},
		{"serious-injury", "could", Warning},
		{"minor-injury", "could", Caution},
		{"minor-injury", "will", Caution}, // from memory: Z535.4 annex E
		{"damage", "will", Notice},
		{"damage", "could", Notice},
		{"", "will", None},
	} {
		if got := Of(c.harm, c.happens); got != c.want {
			t.Errorf("%s that %s follow: %v, want %v", c.harm, c.happens, got, c.want)
		}
	}
}

// Raising the harm, or what follows from could to will, never lowers the word.
func TestRaisingNeverLowers(t *testing.T) {
	harms := []string{"damage", "minor-injury", "serious-injury", "death"}
	for i, harm := range harms {
		if Of(harm, "will") < Of(harm, "could") {
			t.Errorf("%s: will is below could", harm)
		}
		if i > 0 && Of(harm, "could") < Of(harms[i-1], "could") {
			t.Errorf("%s is below %s", harm, harms[i-1])
		}
	}
}

// The alert symbol "shall not" stand with NOTICE (ANSI Z535.4-2007, 4.14.4, as
// quoted).
func TestAlertSymbol(t *testing.T) {
	if Notice.Injures() || !Caution.Injures() || !Warning.Injures() || !Danger.Injures() {
		t.Error("the alert symbol belongs to DANGER, WARNING and CAUTION alone")
	}
}

// What follows is left unsaid where it could follow, and the working says so.
func TestWorkingOfWhatIsLeftUnsaid(t *testing.T) {
	say := &words.Safety{Formula: "by harm", Put: "%s %s", Harms: map[string]string{"death": "death"}, Happens: map[string]string{"could": "could follow", "will": "will follow"}}
	for happens, put := range map[string]string{"": "death could follow", "could": "death could follow", "will": "death will follow"} {
		if w := Explain(say, "death", happens, "WARNING"); w.Put != put {
			t.Errorf("%q: %q, want %q", happens, w.Put, put)
		}
	}
}
