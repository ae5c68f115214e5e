package fingerprint

import (
	"maps"
	"strings"
	"testing"

	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// worded is a procedure with words in every place that the shop can write some.
var worded = map[string]string{
	"shop.yaml":           "title: Shop\n",
	"register/tools.yaml": "wrench: { name: torque wrench, kind: other }\n",
	"pictures/seat.png":   "seat\n",
	"procedures/lid.md":   "---\ntitle: Lid off\nsummary: Take it off.\ntools: [wrench]\n---\nBefore a service.\n\n## Strip the press\n\n[All of it](time:9min) for one.\n\nBetween the lead and the steps.\n\n1. Undo it with the [](tool:wrench).\n\n   A second paragraph.\n\n   1. Lift the *left* end.\n\n| left | right |\n|---|---|\n| 4 | 5 |\n\n![A worn seat](../pictures/seat.png \"Seat, worn\")\n",
}

func wordsOfLid(t *testing.T, text string, sums map[string]string) string {
	t.Helper()
	files := maps.Clone(worded)
	files["procedures/lid.md"] = text
	m, found := bind.Manual(source.FromText(files))
	if len(found) > 0 {
		t.Fatalf("%q: %v", text, found)
	}
	return Words(m.Procedures[0], sums)
}

// Every word that the shop wrote for readers moves the hash of the words, and
// the pictures' bytes do; white space, Markdown's own marks and what settle
// writes do not.
func TestWordsOfAProcedure(t *testing.T) {
	text, sums := worded["procedures/lid.md"], map[string]string{"pictures/seat.png": "1"}
	first := wordsOfLid(t, text, sums)
	for _, was := range []string{"Lid", "Take it", "a service", "the press", "All of it", "for one", "Between", "Undo", "second", "left*", "A worn", "Seat, worn"} {
		if strings.Count(text, was) != 1 {
			t.Fatalf("%q stands there %d times", was, strings.Count(text, was))
		}
		if wordsOfLid(t, strings.Replace(text, was, "Other "+was, 1), sums) == first {
			t.Errorf("other words beside %q move nothing", was)
		}
	}
	if wordsOfLid(t, strings.Replace(text, "| 4 | 5", "| 45 | ", 1), sums) == first {
		t.Error("two cells are read as one word")
	}
	if wordsOfLid(t, text, map[string]string{"pictures/seat.png": "2"}) == first {
		t.Error("another picture moves nothing")
	}
	for was, is := range map[string]string{
		"[](tool:wrench)": "[torque wrench](tool:wrench)", "*left*": "**left**", "Before a service.": "Before  a\nservice.", "summary: Take it off.": "summary: >\n  Take it off.",
	} {
		if wordsOfLid(t, strings.Replace(text, was, is, 1), sums) != first {
			t.Errorf("%q for %q moves the words", is, was)
		}
	}
}

// Of several revisions the one that stands last in the file counts, of a
// translation the last in its language, however its tag is written.
func TestTheLastRevisionCounts(t *testing.T) {
	p, other := &model.Procedure{Entry: model.Entry{ID: "lid"}}, &model.Procedure{Entry: model.Entry{ID: "seat"}}
	row := func(n string, of *model.Procedure, language string) model.Revision {
		return model.Revision{Number: n, Procedure: model.Ref[model.Procedure]{ID: of.ID, To: of}, Language: language}
	}
	m := &model.Manual{
		Revisions:  []model.Revision{row("1", p, ""), row("2", p, ""), row("1", other, "")},
		Renditions: []model.Revision{row("1", p, "es"), row("2", p, "es"), row("3", p, "de"), row("1", other, "es")},
	}
	if r := Last(m, p); r == nil || r.Number != "2" {
		t.Errorf("the last revision is %v", r)
	}
	if r := Last(m, &model.Procedure{}); r != nil {
		t.Errorf("of what was never issued the last revision is %v", r)
	}
	text := &model.Procedure{Entry: model.Entry{ID: "lid"}, Language: "ES"}
	if r := LastRendition(m, text); r == nil || r.Number != "2" {
		t.Errorf("the last revision in Spanish is %v", r)
	}
	if r := LastRendition(m, &model.Procedure{Entry: model.Entry{ID: "lid"}, Language: "fr"}); r != nil {
		t.Errorf("in French it is %v", r)
	}
}
