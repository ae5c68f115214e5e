package decode

import (
	"regexp"
	"strconv"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/read/syntax"
)

// BadID is told where an id is made, not where it is named.
var BadID = finding.Rule{
	Code:  "bad-id",
	Title: "An id that cannot be used",
	Why:   "Ids stand in links, file names and addresses on every machine of the shop, so they are plain.",
	Mend:  "Use a to z, 0 to 9 and single hyphens, at most 64 characters, and none of the names that Windows keeps for itself (con, nul …).",
}

// ID judges an id that is made here.
func (d *Decoder) ID(id string, at position.Pos) bool {
	if why := BadIDWhy(id); !why.IsZero() {
		f := BadID.At(at, "the id %s %s", strconv.Quote(id), why)
		switch better := syntax.PlainID(id); {
		case better != "" && BadIDWhy(better).IsZero():
			return d.add(f.WithMend("write %s", better))
		case better == id:
			return d.add(f.WithMend("take another name"))
		}
		return d.add(f.WithMend("use a to z, 0 to 9 and single hyphens"))
	}
	return true
}

// LongestID is how many characters an id has at most.
const LongestID = 64

// BadIDWhy says what is wrong with an id; no words where nothing is.
func BadIDWhy(id string) finding.Words {
	switch {
	case len(id) > LongestID:
		return finding.Say("is longer than 64 characters")
	case syntax.PlainID(id) != id || id == "":
		return finding.Say("is not a to z, 0 to 9 and single hyphens")
	case len(id) <= 4 && windowsName.MatchString(id):
		return finding.Say("is a name that Windows keeps for itself")
	}
	return finding.Words{}
}

// WindowsKeeps is a pattern of the device names that no file may have on
// Windows, whatever its ending.
const WindowsKeeps = "con|prn|aux|nul|com[0-9]|lpt[0-9]"

var windowsName = regexp.MustCompile("^(?:" + WindowsKeeps + ")$")
