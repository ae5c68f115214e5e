package procedure

import (
	"testing"

	"baybinder/generator/model"
)

// Words of a wait behind the end of a sentence are one of their own where they begin
// as one: a hold's own name, which settle writes there, does not, nor do words whose
// hold could not be read, of which nobody knows.
func TestWordsOfAWaitAreASentenceOrItsName(t *testing.T) {
	cure := &model.Hold{Common: model.Common{Name: "Cure time"}}
	for _, c := range []struct {
		link model.Link
		want bool
	}{
		{model.Link{Text: "Wait 10 min", To: cure}, true},
		{model.Link{Text: "Über Nacht stehen lassen", To: cure}, true},
		{model.Link{Text: "Cure time", To: cure}, false},
		{model.Link{Text: "10 min", To: cure}, false},
		{model.Link{Text: "settling", To: cure}, false},
		{model.Link{Text: "", To: cure}, false},
		{model.Link{Text: "Wait 10 min"}, false},
	} {
		if got := begins(&c.link); got != c.want {
			t.Errorf("%q: %v", c.link.Text, got)
		}
	}
}
