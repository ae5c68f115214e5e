package finding

import "testing"

// Known: FROM MEMORY.

// The signs are those with which a cell is a formula in common spreadsheets
// (common practice against formulas in CSV; from memory, no standard).
func TestCell(t *testing.T) {
	for text, want := range map[string]string{
		"=1+1":                     "'=1+1",
		"+1+1":                     "'+1+1",
		"-1+1":                     "'-1+1",
		"@SUM(A1)":                 "'@SUM(A1)",
		"\t=1":                     "'\t=1",
		"\r=1":                     "'\ufffd=1",
		"\n=1":                     "'\ufffd=1",
		"=HYPERLINK(\"http://a\")": "'=HYPERLINK(\"http://a\")",
		"-20":                      "-20",
		"+1.5":                     "+1.5",
		"-1,000":                   "-1,000",
		"-20 °C":                   "'-20 °C",
		"--":                       "'--",
		"a=b":                      "a=b",
		"oil 46":                   "oil 46",
		"":                         "",
		"bolt\x1b[31m":             "bolt\ufffd[31m",
	} {
		if got := Cell(text); got != want {
			t.Errorf("Cell(%q) is %q, want %q", text, got, want)
		}
	}
}
