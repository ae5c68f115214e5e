package write_test

import (
	"maps"
	"net/http"
	"testing"

	"baybinder/generator/command/write"
)

// The shop's name and language are said in a page; of its file nothing else
// changes.
func TestAShopIsSaidInAPage(t *testing.T) {
	t.Parallel()
	files := maps.Clone(shop)
	files["shop.yaml"] = "# ours\ntitle: Shop   # so far\nreview-every: 12 months\n"
	d := newDesk(t, files)
	_, told := d.questioned("machines", write.Asked{Page: "index.html"})
	if told.Shop == nil || told.Shop.Title != "Shop" || told.Shop.Language != "en" || len(told.Shop.Languages) < 3 || told.Shop.Languages[1] != (write.Option{ID: "es", Label: "Español"}) {
		t.Fatalf("it is told %+v", told.Shop)
	}
	state := told.Shop.State
	for name, c := range map[string]struct {
		fields answers
		state  string
		why    string
	}{
		"no name":        {answers{"title": {" "}, "language": {"en"}}, state, "NoWords"},
		"no language":    {answers{"title": {"Shop"}, "language": {"xx"}}, state, "CannotNow"},
		"an older state": {answers{"title": {"Shop"}, "language": {"de"}}, "old", "FileChanged"},
	} {
		if status, told := d.questioned("shop", write.Asked{Page: "index.html", State: c.state, Fields: c.fields}); status == http.StatusOK || told.Why != c.why {
			t.Errorf("%s: %d %s, want %s", name, status, told.Why, c.why)
		}
	}
	if status, told := d.questioned("shop", write.Asked{Page: "index.html", State: state, Fields: answers{"title": {"Werft: Nord"}, "language": {"de"}}}); status != http.StatusOK || told.Page != "index.html" {
		t.Fatalf("%d %s %s", status, told.Why, told.More)
	}
	if got, want := d.file("shop.yaml"), "# ours\ntitle: \"Werft: Nord\"   # so far\nreview-every: 12 months\nlanguage: de\n"; got != want {
		t.Errorf("it is\n%s\nwant\n%s", got, want)
	}
	if status, _ := d.questioned("undo", write.Asked{Page: "index.html"}); status != http.StatusOK || d.file("shop.yaml") != files["shop.yaml"] {
		t.Errorf("undone: %d\n%s", status, d.file("shop.yaml"))
	}
}
