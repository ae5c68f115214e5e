package walk

import (
	"embed"
	"slices"
	"strings"
)

// Cases: for each code manuals in which it is found and the same manuals
// mended, as text archives named for the code: "left-loose-alone.txtar". They
// add their files to the shop of testdata/shop.
//
//go:embed testdata/*.txtar
var caseFiles embed.FS

// CasesOf are the cases of a code: the one of its own name, then the shortest
// first.
func CasesOf(code string) [][]byte {
	entries, err := caseFiles.ReadDir("testdata")
	if err != nil {
		return nil
	}
	var out [][]byte
	own, _ := caseFiles.ReadFile("testdata/" + code + ".txtar")
	for _, e := range entries {
		name := strings.TrimSuffix(e.Name(), ".txtar")
		if !strings.HasPrefix(name, code+"-") {
			continue
		}
		if data, err := caseFiles.ReadFile("testdata/" + e.Name()); err == nil {
			out = append(out, data)
		}
	}
	slices.SortStableFunc(out, func(a, b []byte) int { return len(a) - len(b) })
	if own != nil {
		out = slices.Insert(out, 0, own)
	}
	return out
}
