package ledger

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// FuzzAppend adds a row to whatever stands in a file: what stands is never
// changed, and either the row can be read back or nothing was written.
func FuzzAppend(f *testing.F) {
	for _, stands := range []string{
		"", "\n", "\ufeff", "date,who,what", "date,who,what\n", "date,who,what\r\n1,2,3\r\n", "date,who,what\n1,\"2", "who\n1", "date,date,what\n",
		"date,who,what\n1,2,3\n\n\n", "\"da\nte\",who,what\n", "date,who,what\n1,2,3\r", "\x00,\x00\n",
	} {
		f.Add(stands, "t-01", "a, \"b\"\nc")
	}
	f.Fuzz(func(t *testing.T, stands, who, what string) {
		file := filepath.Join(t.TempDir(), "rows.csv")
		if stands != "" {
			must(t, os.WriteFile(file, []byte(stands), 0o644))
		}
		want := Row{"who": strings.Join(strings.Fields(who), " "), "what": strings.Join(strings.Fields(what), " ")}
		err := Append(file, columns, []Row{Row{"who": who, "what": what}}, nil)
		now := read1(t, file)
		if !strings.HasPrefix(now, stands) || err != nil && now != stands {
			t.Fatalf("%v: %q became %q", err, stands, now)
		}
		if err != nil {
			return
		}
		was, _ := read([]byte(stands), columns)
		is, err := read([]byte(now), columns)
		if err != nil || len(is.rows) != len(was.rows)+1 {
			t.Fatalf("%d rows became %d: %v in %q", len(was.rows), len(is.rows), err, now)
		}
		after := is.byColumn()
		if last := after[len(after)-1]; last["who"] != want["who"] || last["what"] != want["what"] {
			t.Fatalf("%q was added and %q is read in %q", want, last, now)
		}
	})
}
