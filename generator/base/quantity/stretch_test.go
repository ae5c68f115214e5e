package quantity

import (
	"errors"
	"regexp"
	"testing"
)

// The seconds are by hand: an hour has 3600.
func TestStretch(t *testing.T) {
	for text, want := range map[string]struct {
		least, most float64
		printed     string
	}{
		"10 min":           {600, 0, "10 min"},
		"about 10 min":     {600, 0, "10 min"},
		"24 to 72 h":       {86400, 259200, "24 to 72 h"},
		"30 min to 2 h":    {1800, 7200, "30 min to 2 h"},
		"1 h 30 min":       {5400, 0, "1 h 30 min"},
		"72 to 24 h":       {-1, 0, ""},
		"10 bar to 20 bar": {-1, 0, ""},
		"at most 10 min":   {-1, 0, ""},
		"10 ± 1 min":       {-1, 0, ""},
		"24 - 72 h":        {-1, 0, ""},
		"":                 {-1, 0, ""},
	} {
		s, err := ParseStretch(text, Duration)
		if (err != nil) != (want.least < 0) {
			t.Errorf("%q: %v", text, err)
			continue
		}
		matches := regexp.MustCompile(StretchPattern(Duration)).MatchString(text)
		if ordered := text != "72 to 24 h"; matches != (err == nil) && ordered {
			t.Errorf("%q: the pattern says %t", text, matches)
		}
		if err == nil && (s.Least.Base() != want.least || s.Most.Base() != want.most || s.String() != want.printed) {
			t.Errorf("%q: %v, %v, %q", text, s.Least.Base(), s.Most.Base(), s.String())
		}
	}
}

func TestStretchMendsADash(t *testing.T) {
	_, err := ParseStretch("24 - 72 h", Duration)
	e := new(Error)
	if !errors.As(err, &e) || e.Mend().String() != "write 24 to 72 h" {
		t.Errorf("%v", err)
	}
}
