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

var columns = Columns{Need: []string{"date", "who", "what"}}

func TestAppendNeverRewrites(t *testing.T) {
	cases := map[string]struct{ stands, want string }{
		"no file":       {"", "date,who,what\n2026-05-04,t-01,\"a, b\"\n"},
		"no last end":   {"date,who,what", "date,who,what\n2026-05-04,t-01,\"a, b\"\n"},
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
			must(t, Append(file, columns, []Row{Row{"date": "2026-05-04", "who": "t-01", "what": "a,\n b"}}, nil))
			if got := read1(t, file); got != c.want {
				t.Errorf("got %q, want %q", got, c.want)
			}
		})
	}
}

func TestWhatCannotBeReadOrIsRefusedStaysAsItWas(t *testing.T) {
	refused := errors.New("no")
	for _, stands := range []string{"date,who,what\n1,\"2", "date,who,what\n1,2\n", "date,who\n", "date,who,what\n", "date,who,what\n2026-01-01,t-02,x"} {
		file := filepath.Join(t.TempDir(), "rows.csv")
		must(t, os.WriteFile(file, []byte(stands), 0o644))
		err := Append(file, columns, []Row{Row{"what": "x"}}, func([]Row) error { return refused })
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
				if err := Append(file, columns, []Row{Row{"who": fmt.Sprint(who), "what": fmt.Sprint(n)}}, nil); err != nil {
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

// full is a file on a disk that takes only so many bytes more.
type full struct {
	text []byte
	room int
}

func (f *full) WriteAt(p []byte, at int64) (int, error) {
	n := min(len(p), f.room)
	f.text = append(f.text[:at], p[:n]...)
	if n < len(p) {
		return n, errors.New("no space left on device")
	}
	return n, nil
}

func (f *full) Truncate(size int64) error {
	f.text = f.text[:size]
	return nil
}

// However little the disk still takes, the row is there whole or not at all.
func TestARowIsAllOrNothing(t *testing.T) {
	const stands, row = "date,who\n", "2026-05-04,t-01\n"
	for room := range len(row) + 1 {
		f := &full{[]byte(stands), room}
		err := add(f, []byte(row), int64(len(stands)))
		want := stands
		if room == len(row) {
			want += row
		}
		if string(f.text) != want || (err == nil) != (want != stands) {
			t.Errorf("with room for %d: %v, and the file is %q", room, err, f.text)
		}
	}
}

// A file with nothing in it is one without rows.
func TestAnEmptyFile(t *testing.T) {
	file := filepath.Join(t.TempDir(), "rows.csv")
	must(t, os.WriteFile(file, nil, 0o644))
	must(t, Append(file, columns, []Row{Row{"who": "t-01"}}, nil))
	if got := read1(t, file); got != "date,who,what\n,t-01,\n" {
		t.Errorf("got %q", got)
	}
}

// Columns that came later are brought by a longer header line where they are
// first needed; what stands stays as it is, and each row names the one before.
func TestLaterColumnsAreAddedBehindWhatStands(t *testing.T) {
	later := Columns{Need: []string{"date", "who"}, Later: []string{"note", "after"}, After: "after"}
	file := filepath.Join(t.TempDir(), "rows.csv")
	const stands = "date,who\n2026-01-01,t-01\ndate,who\n2026-01-02,t-02\n"
	must(t, os.WriteFile(file, []byte(stands), 0o644))
	must(t, Append(file, later, []Row{{"date": "2026-01-03", "who": "t-03"}, {"date": "2026-01-04", "who": "t-04", "note": "n"}}, func(rows []Row) error {
		if len(rows) != 2 || rows[1]["who"] != "t-02" {
			t.Errorf("the rows that stand: %v", rows)
		}
		return nil
	}))
	// printf '2026-01-02\x1ft-02' | sha256sum and printf '2026-01-03\x1ft-03\x1f\x1fda4ae99e' | sha256sum
	want := stands + "date,who,note,after\n2026-01-03,t-03,,da4ae99e\n2026-01-04,t-04,n,21f68c50\n"
	if got := read1(t, file); got != want {
		t.Errorf("got %q, want %q", got, want)
	}
	before := read1(t, file)
	must(t, Append(file, later, []Row{{"date": "2026-01-05", "who": "t-01"}}, nil))
	if got := read1(t, file); !strings.HasPrefix(got, before) || strings.Count(got, "note,after") != 1 {
		t.Errorf("the header came again: %q", got)
	}
}
