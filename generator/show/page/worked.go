package page

import (
	"html"
	"strings"

	"baybinder/generator/trade/working"
)

// A computed number stands in a page's texts between private signs, with its
// working before it. Once the page is written it becomes a link to that working
// at the page's foot. One function, Worked, makes such a number; what counts the
// lines beside it, or is an ordinal, needs none.
const (
	worksOut = "\ue003" // its working follows
	isShown  = "\ue004" // the number follows
	wasShown = "\ue005" // it ends
	between  = "\ue006" // the texts of a working
	footHere = "\ue007" // where the workings go
)

// Worked is a number that leads to its working; "" stays "".
func Worked(text string, c Computed) string {
	if text == "" || !c.Working.Known() {
		return text
	}
	w := &c.Working
	var out strings.Builder
	out.Grow(len(c.Title) + len(w.Formula) + len(w.Put) + len(w.Result) + len(w.Source) + len(text) + 8*len(between))
	sign := worksOut
	put := func(fields ...string) {
		for _, f := range fields {
			out.WriteString(sign)
			out.WriteString(bare(f))
			sign = between
		}
	}
	put(c.Title, w.Formula, w.Put, w.Result, w.Source)
	for _, t := range w.Terms {
		put("t", t.Sign, t.Words, t.Value)
	}
	for _, a := range w.Assumes {
		put("a", a)
	}
	sign = isShown
	put(text)
	out.WriteString(wasShown)
	return out.String()
}

// Unworked is a text whose numbers lead nowhere: on paper, and where it is read
// out of its place.
func Unworked(text string) string { return bare(text) }

// FootHere is where the workings of a page go.
func FootHere() string { return footHere }

// Workings are the computed numbers of a page, at its foot.
type Workings struct {
	Title  string // over all of them
	Source string // before each source
	List   []Computed
}

// unpacked is a working from the texts before its number, as they stand in markup.
func unpacked(markup string) Computed {
	fields := strings.Split(html.UnescapeString(markup), between)
	c := Computed{Title: fields[0], Working: working.Working{Formula: fields[1], Put: fields[2], Result: fields[3], Source: fields[4]}}
	for rest := fields[5:]; len(rest) > 1; {
		if rest[0] == "a" {
			c.Working.Assumes, rest = append(c.Working.Assumes, rest[1]), rest[2:]
			continue
		}
		c.Working.Terms, rest = append(c.Working.Terms, working.Term{Sign: rest[1], Words: rest[2], Value: rest[3]}), rest[4:]
	}
	return c
}

// bare is a text in which no number is led from to its working.
func bare(text string) string {
	if !strings.Contains(text, worksOut) && !strings.Contains(text, isShown) {
		return text
	}
	var out strings.Builder
	for {
		before, rest, is := strings.Cut(text, worksOut)
		out.WriteString(before)
		if !is {
			break
		}
		if _, text, is = strings.Cut(rest, isShown); !is {
			break
		}
	}
	return strings.ReplaceAll(out.String(), wasShown, "")
}
