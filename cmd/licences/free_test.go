package main

import (
	"os"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/needed"
)

// The texts are those that Debian has for its packages, and our own.
func TestFree(t *testing.T) {
	for _, c := range []struct{ file, id, why string }{
		{"../../LICENSE", "MIT", ""},
		{"/usr/share/common-licenses/BSD", "BSD-3-Clause", ""},
		{"/usr/share/common-licenses/Apache-2.0", "Apache-2.0", ""},
		{"/usr/share/common-licenses/GPL-3", "GPL-3.0", "no more than a notice"},
		{"/usr/share/common-licenses/LGPL-2.1", "LGPL-2.1", "no more than a notice"},
		{"/usr/share/common-licenses/MPL-2.0", "MPL-2.0", "no more than a notice"},
	} {
		text, err := os.ReadFile(c.file)
		needed.Judge(t, err == nil, c.file)
		ids, err := Free(text)
		if !slices.Contains(ids, c.id) || (err == nil) != (c.why == "") || err != nil && !strings.Contains(err.Error(), c.why) {
			t.Errorf("%s: %v, %v; want %s, %q", c.file, ids, err, c.id, c.why)
		}
	}
	if ids, err := Free([]byte("You may use this on Tuesdays.")); err == nil {
		t.Errorf("words of nobody's are %v", ids)
	}
}

// Each module of the program may go along, and a module without a licence is told.
func TestAll(t *testing.T) {
	text, err := all("../baybinder")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{"== baybinder", "== Go and its library", "== github.com/yuin/goldmark v1", "MIT", "BSD-3-Clause", "Apache-2.0"} {
		if !strings.Contains(text, name) {
			t.Errorf("the licences do not name %q", name)
		}
	}
	if _, err := (module{Path: "x", Dir: t.TempDir()}).licence(); err == nil {
		t.Error("a module without a licence may go along")
	}
}
