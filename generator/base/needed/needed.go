// Package needed says what a test does whose outside judge is not installed.
package needed

import (
	"os"
	"testing"
)

// InCI says that no judge may be missing: under CI, whatever it is set to.
// A judge that never ran proves nothing.
func InCI() bool { return os.Getenv("CI") != "" }

// Judge skips a test where its judge, or a file that it judges, is not there, and
// fails it where judges are required.
func Judge(t testing.TB, there bool, what string) {
	t.Helper()
	switch {
	case there:
	case InCI():
		t.Fatalf("%s is missing: .ci/test installs what the tests need", what)
	default:
		t.Skipf("%s is missing: bash .ci/test installs what the tests need", what)
	}
}
