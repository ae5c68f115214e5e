package needed

import (
	"runtime"
	"testing"
)

// told is a test that notes how it ended, and ends as one does.
type told struct {
	testing.TB
	how string
}

func (t *told) Helper()               {}
func (t *told) Fatalf(string, ...any) { t.how = "failed"; runtime.Goexit() }
func (t *told) Skipf(string, ...any)  { t.how = "skipped"; runtime.Goexit() }

func TestJudge(t *testing.T) {
	for _, c := range []struct {
		ci, want string
		there    bool
	}{
		{"", "skipped", false}, {"true", "failed", false}, {"1", "failed", false}, {"", "", true}, {"true", "", true},
	} {
		t.Setenv("CI", c.ci)
		got, done := &told{}, make(chan struct{})
		go func() {
			defer close(done)
			Judge(got, c.there, "a judge")
		}()
		if <-done; got.how != c.want {
			t.Errorf("CI=%q, there %t: %q, want %q", c.ci, c.there, got.how, c.want)
		}
	}
}
