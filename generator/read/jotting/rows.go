package jotting

import (
	"regexp"
	"slices"
	"strings"
	"unicode"

	"baybinder/generator/language"
)

// sort is what a line of a text is.
type sort uint8

const (
	blank sort = iota
	words
	heading
	numbered
	bullet
	cells
	signal
)

// row is a line of a text, with what its marker says.
type row struct {
	kind   sort
	n      int // of the line
	indent int
	depth  int // of a numbered line: 2.1 is 2, (a) is 9
	text   string
	word   string // the signal word
	hash   bool   // a heading by #
	boxed  bool   // it stands in a list of tools
}

var (
	hashed   = regexp.MustCompile(`^#{1,6}\s+(.+?)\s*#*$`)
	outline  = regexp.MustCompile(`^(\d+(?:\.\d+)+)\.?\s+(.+)$`)
	number   = regexp.MustCompile(`^\d+\s*(?:[.)]|\.-)\s+(.+)$`)
	letter   = regexp.MustCompile(`^(?:\([a-zA-Z0-9]{1,2}\)|[a-z]\))\s+(.+)$`)
	chapter  = regexp.MustCompile(`^\d+\s+(\PL*\p{Lu}[^\p{Ll}]*)$`)
	dashed   = regexp.MustCompile(`^[-*+•·◦▪‣–—]\s+(.+)$`)
	ruled    = regexp.MustCompile(`^\|?[\s:|-]*-[\s:|-]*\|?$`)
	stepWord = regexp.MustCompile(`^(?i:(\pL+))\s+\d+[a-z]?\s*[:.)–—-]?\s+(.+)$`)
)

// classify says of each line what it is.
func classify(text string) []row {
	text = strings.TrimPrefix(strings.ReplaceAll(text, "\r\n", "\n"), "\uFEFF")
	var out []row
	for n, raw := range strings.Split(strings.TrimRight(text, "\n"), "\n") {
		out = append(out, rowOf(n, raw))
	}
	for i := range out {
		if out[i].kind == numbered && out[i].depth == 1 && headsLetters(out, i) {
			out[i].kind = heading
		}
	}
	box := false
	for i := range out {
		x := &out[i]
		switch {
		case x.kind == heading, x.kind == words && isToolbox(x.text):
			box = isToolbox(x.text)
			if box {
				x.kind = heading
			}
		case x.kind == numbered:
			box = false
		case x.kind == cells && !box && i > 0 && out[i-1].kind != cells:
			box = isToolbox(firstCell(x.text))
			x.boxed = box
		default:
			x.boxed = box && x.kind != blank && x.kind != signal
		}
	}
	return out
}

func rowOf(n int, raw string) row {
	text := strings.TrimSpace(raw)
	x := row{n: n, text: text, kind: words, indent: len(raw) - len(strings.TrimLeft(raw, " \t"))}
	if text == "" {
		x.kind = blank
		return x
	}
	switch m := []string(nil); {
	case hit(hashed, text, &m):
		x.kind, x.text, x.hash = heading, m[1], true
	case strings.HasPrefix(text, "|"):
		x.kind = cells
	case hit(chapter, text, &m):
		x.kind, x.text = heading, m[1]
	case hit(outline, text, &m):
		x.kind, x.text, x.depth = numbered, m[2], strings.Count(m[1], ".")
	case hit(letter, text, &m):
		x.kind, x.text, x.depth = numbered, m[1], 9
	case hit(number, text, &m):
		x.kind, x.text, x.depth = numbered, m[1], 1
	case hit(stepWord, text, &m) && isStepWord(m[1]):
		x.kind, x.text, x.depth = numbered, m[2], 1
	case hit(dashed, text, &m):
		x.kind, x.text = bullet, m[1]
	}
	if word, rest, is := signalIn(x.text); is && x.kind != cells {
		x.kind, x.word, x.text = signal, word, rest
		return x
	}
	if x.kind == words && looksLikeHeading(text) {
		x.kind = heading
	}
	return x
}

func hit(pattern *regexp.Regexp, text string, m *[]string) bool {
	*m = pattern.FindStringSubmatch(text)
	return *m != nil
}

func isStepWord(w string) bool {
	for _, l := range language.All() {
		if l.Jotted.Step[strings.ToLower(w)] {
			return true
		}
	}
	return false
}

// headsLetters says that a numbered line is the heading of lettered ones: it
// is short, orders nothing more, and they follow at once.
func headsLetters(list []row, i int) bool {
	if len(strings.Fields(list[i].text)) > 4 {
		return false
	}
	for _, x := range list[i+1:] {
		if x.kind != blank {
			return x.kind == numbered && x.depth == 9
		}
	}
	return false
}

// looksLikeHeading says that a line without a marker is one: in capitals, or
// short with a colon at its end.
func looksLikeHeading(text string) bool {
	fields := strings.Fields(text)
	if len(fields) > 9 {
		return false
	}
	letters := strings.ContainsFunc(text, unicode.IsLetter)
	if letters && !strings.ContainsFunc(text, unicode.IsLower) && len(text) > 3 && !strings.HasSuffix(text, ".") {
		return true
	}
	return strings.HasSuffix(text, ":") && len(fields) <= 6
}

// isToolbox says that a heading begins a list of tools.
func isToolbox(text string) bool {
	list := tokens(text, nil)
	if len(list) == 0 {
		return false
	}
	for _, l := range language.All() {
		j := &l.Jotted
		if !j.Toolbox[list[0].word] && !j.Toolbox[unaccented(j.Toolbox, list[0].word)] {
			continue
		}
		rest := strings.TrimRight(strings.TrimSpace(text[list[0].end:]), ":. ")
		small := strings.ToLower(rest)
		if rest == "" && (len(list) == 1) || slices.ContainsFunc(j.Contents, func(c string) bool { return strings.Contains(small, c) }) {
			return true
		}
	}
	return false
}

// unaccented is the word of a set that is a word without its accents.
func unaccented(set map[string]bool, word string) string {
	for w := range set {
		if plain(w) == word {
			return w
		}
	}
	return ""
}

func firstCell(text string) string {
	cell, _, _ := strings.Cut(strings.TrimPrefix(text, "|"), "|")
	return strings.TrimSpace(cell)
}

var signalLine = func() *regexp.Regexp {
	var all []string
	for _, l := range language.All() {
		all = append(all, l.Signals...)
	}
	return regexp.MustCompile(`^[*_⚠\s]*(` + strings.Join(all, "|") + `)[*_]*\s*(?:[:!–—-][*_\s]*(.*)|[*_]*)$`)
}()

// signalIn finds the signal word with which a line begins.
func signalIn(text string) (word, rest string, is bool) {
	m := signalLine.FindStringSubmatch(text)
	if m == nil {
		return "", "", false
	}
	return m[1], strings.TrimLeft(m[2], "!–—- "), true
}
