package syntax

import (
	"fmt"
	"strings"
	"testing"

	"baybinder/generator/base/position"
)

// Definitions as CommonMark 0.31.2, 4.7, has them; what looks like one in code
// or inside a paragraph is none.
func TestDefinitions(t *testing.T) {
	text := "---\ntitle: x\n---\nSee [a] and [b].\n\n[a]: tool:broom\n[b]: <see:other#step> \"A title\"\n[c]:\n  hold:wait\n\n" +
		"1. Do it.\n\n   [d]: tool:mop\n\n```\n[e]: tool:no\n```\n\n    [f]: tool:no\n\nIn words\n[g]: tool:no\n"
	var got []string
	for _, d := range Definitions(position.NewFile("procedures/x.md", text)) {
		line, col := d.At.LineCol()
		got = append(got, fmt.Sprintf("%d:%d %s", line, col, d.At.Text()))
	}
	want := "6:6 tool:broom, 7:7 see:other#step, 9:3 hold:wait, 13:9 tool:mop"
	if strings.Join(got, ", ") != want {
		t.Errorf("got  %s\nwant %s", strings.Join(got, ", "), want)
	}
}
