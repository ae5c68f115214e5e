package write_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"baybinder/generator/command/write"
)

// demo is a copy of the demo manual on a desk.
func demo(t *testing.T, page string) *desk {
	t.Helper()
	folder := filepath.Join(t.TempDir(), "content")
	must(t, os.CopyFS(folder, os.DirFS("../../../content")))
	d := deskOf(t, folder)
	d.page = page
	return d
}

// Each step of the demo's procedures, written again as it stands, moves no byte;
// what stands in no step is never part of one.
func TestAStepAsItStandsMovesNothing(t *testing.T) {
	t.Parallel()
	d := demo(t, "procedures/replace-contactor-panel.html")
	d.must("open", write.Act{})
	before := d.file(d.sheet.File)
	for _, ph := range d.sheet.Phases {
		for _, s := range ph.Steps {
			if strings.TrimSpace(s.Text) == "" || strings.Contains(s.Text, "\n## ") {
				t.Errorf("%s reads %q", s.Number, s.Text)
			}
			d.must("try", write.Act{Do: "words", Step: s.Number, Text: s.Text})
			d.must("choices", write.Act{Step: s.Number, After: s.Number})
			d.must("save", write.Act{Do: "words", Step: s.Number, Text: s.Text})
		}
	}
	if d.file(d.sheet.File) != before || d.sheet.Back != nil {
		t.Error("the file changed")
	}
}
