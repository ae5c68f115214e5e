package finding

import (
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/width"

	"baybinder/generator/base/position"
)

// TextOptions say how much Text writes.
type TextOptions struct {
	All   bool    // every finding in order, not the first of each kind
	First []*Rule // from which others follow: their groups stand first
	Lines int     // a screenful; 0 is the usual one

	Tongue *Tongue // what the report around the findings is told in; nil is English
}

// Text writes the report of findings (see Report).
func Text(w io.Writer, list []Finding, o TextOptions) error {
	_, err := io.WriteString(w, Plain(Report(list, o)))
	return err
}

// Report tells of findings for people. All of them, it tells one by one in their
// order; else the first few of each kind under the kind's title, so that a
// first run fits on a screen and shows what is wrong rather than how often.
// The list is in its order already (see Sort).
func Report(list []Finding, o TextOptions) []Passage {
	r := report{tongue: cmp.Or(o.Tongue, english)}
	switch {
	case len(list) == 0:
	case o.All:
		for _, f := range list {
			r.finding(f)
		}
		r.same("\n")
	default:
		r.groups(list, o)
	}
	r.summary(list)
	return r.passages
}

// summary counts: "2 errors, 1 advice, in 3 files", and says how many of them
// need no hand.
func (r *report) summary(list []Finding) {
	if len(list) == 0 {
		r.phrase("nothing found")
		r.same("\n")
		return
	}
	files, settled := map[string]bool{}, 0
	for _, f := range list {
		files[f.At.Path()] = true
		if f.Settled {
			settled++
		}
	}
	errors := Errors(list)
	r.phrase("%s, %s, in %s", Count(errors, "%d error", "%d errors"), adviceOf(len(list)-errors), Count(len(files), "%d file", "%d files"))
	if settled > 0 {
		r.phrase("; baybinder settle mends %d of them", settled)
	}
	r.same("\n")
}

// adviceOf counts advice, which has no plural in English.
func adviceOf(n int) Words {
	if n == 1 {
		return Say("1 advice")
	}
	return Say("%d advice", n)
}

// finding tells of one: where and what, the line with a mark under the place, the
// mend, and the other places that matter. The words around one are in its own language,
// the line is the manual's.
func (r *report) finding(f Finding) {
	around := r.around(f)
	put := func(format string, args ...any) { r.add(f.Lang, fmt.Sprintf(format, args...)) }
	level, _ := around.Say(f.Level.says())
	put("%s%s: %s [%s]\n", address(f.At), level, Printable(f.Message), f.Code)
	r.line(f.At)
	if f.Mend != "" {
		mend, _ := around.Say(Say("mend: %s", Printable(f.Mend)))
		put("    %s\n", mend)
	}
	for _, p := range f.Related {
		put("    %s%s\n", address(p.At), Printable(p.Message))
	}
}

// address is "file:line:column: ", or nothing for what stands nowhere.
func address(at position.Pos) string {
	if at.File == nil {
		return ""
	}
	line, col := at.LineCol()
	return fmt.Sprintf("%s:%d:%d: ", Printable(at.Path()), line, col)
}

// A line is shown whole up to so many code points, and of a longer one so many
// before and behind the start of the place.
const (
	longest = 120
	before  = 50
	behind  = 70
)

// line is the line of a place and a mark under the place.
func (r *report) line(at position.Pos) {
	if at.File == nil {
		return
	}
	number, _ := at.LineCol()
	line := at.File.Line(number)
	if strings.TrimSpace(line) == "" {
		return
	}
	start := at.Start - at.File.Offset(number, 1)
	left, place, right := line[:start], line[start:min(start+at.End-at.Start, len(line))], line[min(start+at.End-at.Start, len(line)):]
	left, place, right = shorten(left, place, right)
	r.manual("    %s\n", strings.TrimRight(Printable(left+place+right), " "))
	r.manual("    %s%s\n", blank(left), strings.Repeat("^", max(1, columns(place))))
}

// shorten cuts a long line down to what stands around the place.
func shorten(left, place, right string) (string, string, string) {
	if utf8.RuneCountInString(left+place+right) <= longest {
		return left, place, right
	}
	if n := utf8.RuneCountInString(left); n > before {
		left = "…" + string([]rune(left)[n-before:])
	}
	if utf8.RuneCountInString(place) > behind {
		return left, string([]rune(place)[:behind]), "…"
	}
	if n := utf8.RuneCountInString(place) + utf8.RuneCountInString(right); n > behind {
		right = string([]rune(right)[:behind-utf8.RuneCountInString(place)]) + "…"
	}
	return left, place, right
}

// Printable is a text with every sign that would move a terminal's cursor or
// colour its screen made visible, line ends too. Tabs stay.
func Printable(text string) string {
	return strings.Map(func(r rune) rune {
		if r == '\n' || IsControl(r) || unicode.Is(unicode.Bidi_Control, r) {
			return '\ufffd'
		}
		return r
	}, text)
}

// IsControl says that a sign steers what shows it and has no place in a text: a
// control, but no tab and no line end.
func IsControl(r rune) bool { return unicode.IsControl(r) && r != '\t' && r != '\n' }

// blank is as wide as a text in a terminal: a tab for each tab, so that what
// follows stands under what follows.
func blank(text string) string {
	var b strings.Builder
	for _, r := range text {
		if r == '\t' {
			b.WriteByte('\t')
			continue
		}
		b.WriteString(strings.Repeat(" ", wide(r)))
	}
	return b.String()
}

func columns(text string) int {
	n := 0
	for _, r := range text {
		n += wide(r)
	}
	return n
}

// wide is the columns of a terminal that a sign takes: none for an accent that
// stands on the sign before it, two for East Asian ones.
func wide(r rune) int {
	switch width.LookupRune(r).Kind() {
	case width.EastAsianWide, width.EastAsianFullwidth:
		return 2
	}
	if unicode.In(r, unicode.Mn, unicode.Me) {
		return 0
	}
	return 1
}

// screenful is how many lines a group view takes where no other number is
// given.
const screenful = 40

// mostOfAKind is how many of each kind a group view shows at most.
const mostOfAKind = 3

// group is the findings of one code.
type group struct {
	rule *Rule
	list []Finding
}

// groups are the findings by code: kinds with errors first, of these the ones
// from which others follow, then in the order in which they are met.
func groups(list []Finding, first []*Rule) []group {
	at := map[*Rule]int{}
	var out []group
	for _, f := range list {
		i, known := at[f.Rule]
		if !known {
			i = len(out)
			at[f.Rule] = i
			out = append(out, group{rule: f.Rule})
		}
		out[i].list = append(out[i].list, f)
	}
	follows := func(g group) int { // 0 where others follow from it, else 1
		if slices.Contains(first, g.rule) {
			return 0
		}
		return 1
	}
	slices.SortStableFunc(out, func(a, b group) int {
		return cmp.Or(min(Errors(b.list), 1)-min(Errors(a.list), 1), follows(a)-follows(b))
	})
	return out
}

// groups tells as many of each kind as fit on a screen, and names the kinds for
// which there is no room at all.
func (r *report) groups(list []Finding, o TextOptions) {
	room := o.Lines
	if room == 0 {
		room = screenful
	}
	all := groups(list, o.First)
	each := mostOfAKind
	for each > 1 && r.some(all, each).lines() > room {
		each--
	}
	shown := len(all)
	for shown > 1 && r.some(all[:shown], each).lines() > room {
		shown--
	}
	r.take(r.some(all[:shown], each))
	if rest := all[shown:]; len(rest) > 0 {
		var names []string
		for _, g := range rest {
			names = append(names, fmt.Sprintf("%s (%d)", g.rule.Code, len(g.list)))
		}
		r.phrase("and of other kinds: %s: check --all", strings.Join(names, ", "))
		r.same("\n\n")
	}
}

// some are groups by themselves, so many of each.
func (r *report) some(all []group, each int) *report {
	r = &report{tongue: r.tongue}
	for _, g := range all {
		r.phrase(g.rule.Title)
		r.same("\n")
		for _, f := range g.list[:min(each, len(g.list))] {
			r.finding(f)
		}
		if more := len(g.list) - each; more > 0 {
			r.phrase("and %d more of this kind: check --all", more)
			r.same("\n")
		}
		r.same("\n")
	}
	return r
}
