package settle

import (
	"slices"
	"testing"
	"unicode/utf8"

	"baybinder/generator/base/patch"
)

// FuzzWords fills the empty links of a hostile procedure: what it leads to stays,
// and a second time there is nothing to do. Each input is a small manual that is
// bound twice: some hundreds a second, not a thousand.
func FuzzWords(f *testing.F) {
	for _, body := range []string{"[](tool:hammer)", "> [ ](<tool:hammer>) `x`", "[][m]\n\n[m]: tool:hammer\n", "|[](tool:tick)|\n|---|\n", "[\n](tool:hammer)\\", "a [](tool:hammer)[](tool:tester) **b"} {
		f.Add(body)
	}
	shop := map[string]string{}
	for _, file := range shared() {
		shop[file.Name] = string(file.Data)
	}
	f.Fuzz(func(t *testing.T, body string) {
		if !utf8.ValidString(body) || len(body) > 1<<12 {
			t.Skip() // what is not UTF-8 is not read at all
		}
		before := textOf(shop, "## Work\n\n1. "+body+"\n")
		before.words()
		after := textOf(shop, patch.Applied(before.procedure.File, before.inserts).Text)
		after.words()
		if len(after.inserts) > 0 {
			t.Errorf("%q became %q, and that %v", body, after.procedure.File.Text, after.inserts)
		}
		if !slices.Equal(ids(before.procedure), ids(after.procedure)) {
			t.Errorf("%q became %q: a link leads elsewhere", body, after.procedure.File.Text)
		}
	})
}
