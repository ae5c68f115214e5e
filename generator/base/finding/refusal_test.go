package finding_test

import (
	"errors"
	"io/fs"
	"testing"

	"baybinder/generator/base/finding"
)

// An error in words is told in another language with all the errors in it; what has
// no words, such as an error of the system, stands as it is.
func TestARefusalIsToldInALanguage(t *testing.T) {
	german := &finding.Tongue{Lang: "de", Texts: map[string]string{
		"there is no part %s":      "es gibt kein Teil %s",
		"nothing was written: %s":  "nichts wurde geschrieben: %s",
		"the file is another's":    "die Datei gehört einem anderen",
		"%s has no part %s at all": "kein Teil %[2]s in %[1]s",
	}}
	part := finding.Refuse("there is no part %s", "lid")
	for _, c := range []struct {
		err               error
		english, inGerman string
	}{
		{part, "there is no part lid", "es gibt kein Teil lid"},
		{finding.Refuse("nothing was written: %s", part), "nothing was written: there is no part lid", "nichts wurde geschrieben: es gibt kein Teil lid"},
		{finding.Refuse("nothing was written: %s", fs.ErrExist), "nothing was written: file already exists", "nichts wurde geschrieben: file already exists"},
		{finding.Refuse("%s has no part %s at all", "press", "lid"), "press has no part lid at all", "kein Teil lid in press"},
		{errors.Join(part, finding.Refuse("the file is another's")), "there is no part lid\nthe file is another's", "es gibt kein Teil lid\ndie Datei gehört einem anderen"},
		{finding.Refuse("nothing was written: %s", errors.Join(part, fs.ErrExist)), "nothing was written: there is no part lid\nfile already exists", "nichts wurde geschrieben: es gibt kein Teil lid\nfile already exists"},
		{fs.ErrExist, "file already exists", "file already exists"},
		{errors.New("50 % of it"), "50 % of it", "50 % of it"},
		{finding.Refuse("it knows no such word"), "it knows no such word", "it knows no such word"},
	} {
		if c.err.Error() != c.english {
			t.Errorf("%q, want %q", c.err.Error(), c.english)
		}
		if got, _ := german.Say(finding.Told(c.err)); got != c.inGerman {
			t.Errorf("%q, want %q", got, c.inGerman)
		}
	}
	if err := finding.Refuse("nothing was written: %s", errors.Join(part, fs.ErrExist)); !errors.Is(err, fs.ErrExist) || errors.Is(err, fs.ErrClosed) {
		t.Errorf("%v does not know what it stands on", err)
	}
}
