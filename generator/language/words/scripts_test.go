package words

import (
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"testing"
)

// The scripts say every word of the table, and no other.
func TestScriptsAndTableAgree(t *testing.T) {
	files, err := filepath.Glob("../../../theme/scripts/*.js")
	if err != nil || len(files) == 0 {
		t.Fatal("no scripts", err)
	}
	said := map[string]bool{}
	for _, f := range files {
		text, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range regexp.MustCompile(`\bw\.([A-Z]\w+)|\bwords\.([A-Z]\w+)|'([A-Z][a-z]+(?:[A-Z][a-z]+)+)'`).FindAllStringSubmatch(string(text), -1) {
			said[m[1]+m[2]+m[3]] = true
		}
	}
	table := reflect.TypeFor[Bay]()
	for i := range table.NumField() {
		if name := table.Field(i).Name; !said[name] {
			t.Errorf("no script says %s", name)
		}
		delete(said, table.Field(i).Name)
	}
	for name := range said {
		if name != "QuotaExceededError" {
			t.Errorf("a script says %s, which no table has", name)
		}
	}
}
