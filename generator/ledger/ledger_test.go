package ledger

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
)

var columns = []string{"date", "who", "what"}

func TestAppendNeverRewrites(t *testing.T) {
	cases := map[string]struct{ stands, want string }{
		"no file":       {"", "date,who,what\n2026-05-04,t-01,\"a, b\"\n"},
		"no last end":   {"date,who,what\n2026-01-01,t-02,x", "date,who,what\n2026-01-01,t-02,x\n2026-05-04,t-01,\"a, b\"\n"},
		"CRLF":          {"date,who,what\r\n", "date,who,what\r\n2026-05-04,t-01,\"a, b\"\r\n"},
		"another order": {"what,date,who\n", "what,date,who\n\"a, b\",2026-05-04,t-01\n"},
		"byte-order":    {"\ufeffdate,who,what\n", "\ufeffdate,who,what\n2026-05-04,t-01,\"a, b\"\n"},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			file := filepath.Join(t.TempDir(), "deep", "rows.csv")
			if c.stands != "" {
				must(t, os.MkdirAll(filepath.Dir(file), 0o755))
				must(t, os.WriteFile(file, []byte(c.stands), 0o644))
			}
			must(t, Append(file, columns, Row{"date": "2026-05-04", "who": "t-01", "what": "a,\n b"}, nil))
			if got := read1(t, file); got != c.want {
				t.Errorf("got %q, want %q", got, c.want)
			}
		})
	}
}

func TestWhatCannotBeReadOrIsRefusedStaysAsItWas(t *testing.T) {
	refused := errors.New("no")
	for _, stands := range []string{"date,who,what\n1,\"2", "date,who,what\n1,2\n", "date,who\n", "date,who,what\n"} {
		file := filepath.Join(t.TempDir(), "rows.csv")
		must(t, os.WriteFile(file, []byte(stands), 0o644))
		err := Append(file, columns, Row{"what": "x"}, func([]Row) error { return refused })
		if err == nil || read1(t, file) != stands {
			t.Errorf("%q: %v, and the file is %q", stands, err, read1(t, file))
		}
	}
}

func TestManyAtOnceLoseNothing(t *testing.T) {
	file := filepath.Join(t.TempDir(), "rows.csv")
	var all sync.WaitGroup
	for who := range 2 {
		all.Go(func() {
			for n := range 50 {
				if err := Append(file, columns, Row{"who": fmt.Sprint(who), "what": fmt.Sprint(n)}, nil); err != nil {
					t.Error(err)
				}
			}
		})
	}
	all.Wait()
	text := read1(t, file)
	if n := strings.Count(text, "\n"); n != 101 {
		t.Errorf("%d lines, want the header and 100 rows", n)
	}
	for who := range 2 {
		for n := range 50 {
			if !strings.Contains(text, fmt.Sprintf("\n,%d,%d\n", who, n)) {
				t.Errorf("row %d of %d is lost", n, who)
			}
		}
	}
}

func must(t *testing.T, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

func read1(t *testing.T, file string) string {
	t.Helper()
	data, err := os.ReadFile(file)
	must(t, err)
	return string(data)
}
