package page

import (
	"fmt"
	"strconv"
	"strings"
)

// Part is one page of a list that is too long for one page.
type Part struct {
	Name    string // its number, from 1
	Address string
	Here    bool
}

// PartAt is the path of a part of a list, from 0: the first has the list's own.
func PartAt(list string, i int) string {
	if i == 0 {
		return list
	}
	return fmt.Sprintf("%s-%d.html", strings.TrimSuffix(list, ".html"), i+1)
}

// PartsOf leads from one part of a list to all of its n parts; none where there
// is one alone. They stand in the same folder.
func PartsOf(list string, here, n int) []Part {
	if n < 2 {
		return nil
	}
	base := list[strings.LastIndex(list, "/")+1:]
	out := make([]Part, n)
	for i := range out {
		out[i] = Part{Name: strconv.Itoa(i + 1), Address: PartAt(base, i), Here: i == here}
	}
	return out
}

// PartOf says that a page is a part of a list.
func PartOf(list, here string) bool {
	number, is := strings.CutPrefix(here, strings.TrimSuffix(list, ".html")+"-")
	if !is {
		return false
	}
	_, err := strconv.Atoi(strings.TrimSuffix(number, ".html"))
	return err == nil
}
