package page

import "testing"

func TestBorrowedWordsAreMarkedAroundWhatIsFilledIn(t *testing.T) {
	for text, want := range map[string]string{
		"Fetch":             borrows + "Fetch" + closes,
		"rev %s · %s":       borrows + "rev " + closes + "%s · %s",
		"Only if %s: %s.":   borrows + "Only if " + closes + "%s: %s.",
		"%d of %d":          "%d" + borrows + " of " + closes + "%d",
		"%.0f · grade %.0f": "%.0f" + borrows + " · grade " + closes + "%.0f",
		"{0} on {1}":        "{0}" + borrows + " on " + closes + "{1}",
		"%s":                "%s",
	} {
		if got := borrowed(text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

func TestOnlyAnUnknownLanguageBorrows(t *testing.T) {
	for tag, want := range map[string]string{"en": "Fetch", "en-GB": "Fetch", "es-MX": "Traer", "fr": borrows + "Fetch" + closes} {
		if got := Speaking(tag).Words.Fetch; got != want {
			t.Errorf("%s: %q, want %q", tag, got, want)
		}
	}
	if got := Speaking("en").Words.Fetch; got != "Fetch" {
		t.Error("the words of English were marked")
	}
}
