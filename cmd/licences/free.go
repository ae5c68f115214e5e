package main

import (
	"fmt"
	"slices"

	"github.com/google/licensecheck"
)

// known is the share of a text's words, in percent, that known licences must
// make up: below it something of its own is written there, which a person reads.
const known = 75

// notice are the licences, by their names in the SPDX list, that ask for no more
// than that their text goes with the program (OFL-1.1 is that of fonts: they may
// go with any program, and are not sold by themselves).
var notice = []string{"0BSD", "Apache-2.0", "BSD-2-Clause", "BSD-3-Clause", "CC0-1.0", "ISC", "MIT", "OFL-1.1", "Unlicense", "Zlib"}

// Free names the licences (as SPDX does) that a text consists of. Its error says
// why the text may not go along: too little of it is known, or a licence asks for
// more than a notice.
func Free(text []byte) ([]string, error) {
	covered := licensecheck.Scan(text)
	var ids []string
	for _, m := range covered.Match {
		ids = append(ids, m.ID)
		if !slices.Contains(notice, m.ID) {
			return ids, fmt.Errorf("%s is not among those that ask for no more than a notice", m.ID)
		}
	}
	if covered.Percent < known {
		return ids, fmt.Errorf("only %.0f %% of it is a known licence", covered.Percent)
	}
	return ids, nil
}
