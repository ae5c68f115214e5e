package main

import (
	"fmt"
	"go/parser"
	"go/token"
	"testing"
)

const sample = `package p

func f(a, b int) bool {
	if a < b {
		g("x" + "y")
	}
	return a+1 == 2 && true || x == math.Inf(1) || x == -1
}
`

// TestSites: each place gives one change, and what is changed still parses.
func TestSites(t *testing.T) {
	list, err := sitesOf("p.go", []byte(sample))
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, m := range list {
		got = append(got, fmt.Sprintf("%d %s>%s", m.line, m.was, m.text))
		if _, err := parser.ParseFile(token.NewFileSet(), "p.go", m.apply([]byte(sample)), 0); err != nil {
			t.Errorf("%q for %q: %v", m.text, m.was, err)
		}
	}
	want := []string{"4 a < b>!(a < b)", "4 <><=", `5 g("x" + "y")>`, "7 +>-", "7 1>2", "7 ==>!=", "7 2>3", "7 &&>||", "7 true>false", "7 ||>&&", "7 ==>!=", "7 >-", "7 ||>&&", "7 ==>!=", "7 -1>0"}
	if fmt.Sprint(got) != fmt.Sprint(want) {
		t.Errorf("%q, want %q", got, want)
	}
}
