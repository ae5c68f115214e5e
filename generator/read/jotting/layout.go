package jotting

import (
	"regexp"
	"slices"
	"strings"
	"unicode"

	"baybinder/generator/language"
	"baybinder/generator/read/syntax"
)

// Document is a text parted into what a procedure has.
type Document struct {
	Title  string
	Intro  []Piece // a toolbox among them
	Phases []*Phase
}

// Phase is a heading with its steps.
type Phase struct {
	Title string // "" where the text has no heading
	Line  int
	Prose []Piece
	Steps []*Step
}

// Step is one item of a list, or a line of a text that has none.
type Step struct {
	Pieces []Piece
	Subs   []*Step
}

// Piece is a line of the text without its marker.
type Piece struct {
	Text    string
	Line    int // from 0
	Bullet  bool
	Toolbox bool   // an entry of a list of tools
	Apart   bool   // a paragraph of its own
	Signal  string // the signal word that stood in front of it
	Reading
}

// Pieces are all lines that the document has, in reading order.
func (d *Document) Pieces(yield func(*Piece) bool) {
	each := func(list []Piece) bool {
		for i := range list {
			if !yield(&list[i]) {
				return false
			}
		}
		return true
	}
	var steps func([]*Step) bool
	steps = func(list []*Step) bool {
		for _, s := range list {
			if !each(s.Pieces) || !steps(s.Subs) {
				return false
			}
		}
		return true
	}
	if !each(d.Intro) {
		return
	}
	for _, ph := range d.Phases {
		if !each(ph.Prose) || !steps(ph.Steps) {
			return
		}
	}
}

// Lay parts a text, and reads its steps. r may be nil: then no words are links.
func Lay(text string, r *Reader) *Document {
	l := &layout{reader: r, lines: classify(text), out: &Document{}}
	l.marked = slices.ContainsFunc(l.lines, func(x row) bool { return x.kind == numbered || x.kind == bullet && !x.boxed })
	l.title()
	for l.i < len(l.lines) {
		l.line(l.lines[l.i])
		l.i++
	}
	l.settleSignals()
	l.read()
	return l.out
}

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

// layout is a text on its way to a document.
type layout struct {
	reader  *Reader
	lines   []row
	i       int
	marked  bool // it has a list: lines without a marker are no steps
	out     *Document
	phase   *Phase
	step    *Step
	depth   int     // of the step
	apart   bool    // an empty line stands in front
	signals []Piece // that belong to the next step
	open    bool    // the last of them goes on
}

// title takes the first line, where it is one.
func (l *layout) title() {
	for l.i < len(l.lines) && l.lines[l.i].kind == blank {
		l.i++
	}
	if l.i == len(l.lines) {
		return
	}
	first := l.lines[l.i]
	alone := l.i+1 < len(l.lines) && l.lines[l.i+1].kind == blank
	switch {
	case first.kind == heading && !isToolbox(first.text):
		if !first.hash && !alone && !strings.HasSuffix(first.text, ":") && l.i+1 < len(l.lines) && l.lines[l.i+1].kind == numbered {
			return // it is the heading of those steps
		}
	case first.kind != words, len(strings.Fields(first.text)) > 12:
		return
	case !alone && (l.ordersSomething(first.text) || strings.HasSuffix(first.text, ".")):
		return
	}
	l.out.Title = strings.TrimRight(first.text, ".: ")
	l.i++
}

// ordersSomething says that a line has an act; nothing is remembered of it.
func (l *layout) ordersSomething(text string) bool {
	if l.reader == nil {
		return false
	}
	r := *l.reader
	return slices.ContainsFunc(r.Step(text, nil).Links, func(x Link) bool { return x.Act })
}

func (l *layout) line(x row) {
	switch {
	case x.kind == blank:
		l.apart, l.open = true, false
		return
	case x.kind == heading:
		l.begin(x)
	case x.boxed || x.kind == cells:
		l.prose(x)
	case x.kind == signal:
		l.signal(x)
	case x.kind == numbered, x.kind == bullet && l.isStep(x), x.kind == words && !l.marked && !l.open:
		l.newStep(x)
	default:
		l.more(x)
	}
	l.apart = false
}

// begin begins a phase. A heading that leads to no step is words.
func (l *layout) begin(x row) {
	l.open = false
	title := strings.TrimRight(x.text, ": ")
	if isToolbox(x.text) || !l.leadsToStep() {
		x.kind = words
		if l.phase == nil {
			l.out.Intro = append(l.out.Intro, Piece{Text: x.text, Line: x.n, Apart: true})
			return
		}
	}
	l.phase, l.step = &Phase{Title: title, Line: x.n}, nil
	l.out.Phases = append(l.out.Phases, l.phase)
}

// leadsToStep says that a step stands before the next heading.
func (l *layout) leadsToStep() bool {
	for _, x := range l.lines[l.i+1:] {
		switch {
		case x.kind == heading:
			return false
		case x.kind == numbered, x.kind == bullet && !x.boxed, x.kind == words && !l.marked:
			return true
		}
	}
	return false
}

// isStep says that a bullet is a step and no part of one.
func (l *layout) isStep(x row) bool {
	return l.step == nil || l.depth == 0 && x.indent == 0
}

func (l *layout) newStep(x row) {
	if l.phase == nil {
		l.phase = &Phase{}
		l.out.Phases = append(l.out.Phases, l.phase)
	}
	for _, text := range l.parts(x) {
		s := &Step{Pieces: append(l.signals, Piece{Text: text, Line: x.n})}
		l.signals, l.open = nil, false
		if parent := l.parent(x); parent != nil {
			parent.Subs = append(parent.Subs, s)
		} else {
			l.phase.Steps = append(l.phase.Steps, s)
			l.depth = x.depth
		}
		l.step = s
	}
}

// parts are the sentences of a line of a text that has no list: each is a step.
func (l *layout) parts(x row) []string {
	if l.marked {
		return []string{x.text}
	}
	var out []string
	begin := 0
	for i, w := range tokens(x.text, nil) {
		if i > 0 && w.stop == sentenceEnd {
			out = append(out, strings.TrimSpace(x.text[begin:w.start]))
			begin = w.start
		}
	}
	return append(out, strings.TrimSpace(x.text[begin:]))
}

// parent is the step that a numbered line stands below.
func (l *layout) parent(x row) *Step {
	if x.kind != numbered || l.step == nil || len(l.phase.Steps) == 0 || x.depth <= l.depth {
		return nil
	}
	return l.phase.Steps[len(l.phase.Steps)-1]
}

// more adds a line to the step, or to what stands before the steps.
func (l *layout) more(x row) {
	p := Piece{Text: x.text, Line: x.n, Bullet: x.kind == bullet, Apart: l.apart}
	switch {
	case l.open:
		last := &l.signals[len(l.signals)-1]
		last.Text = strings.TrimSpace(last.Text + " " + p.Text)
	case l.step != nil:
		l.step.Pieces = append(l.step.Pieces, p)
	default:
		l.prose(x)
	}
}

func (l *layout) prose(x row) {
	p := Piece{Text: x.text, Line: x.n, Bullet: x.kind == bullet, Apart: l.apart, Toolbox: x.boxed && !ruled.MatchString(x.text)}
	if l.phase == nil {
		l.out.Intro = append(l.out.Intro, p)
		return
	}
	if l.step != nil && !x.boxed {
		l.step.Pieces = append(l.step.Pieces, p)
		return
	}
	l.phase.Prose = append(l.phase.Prose, p)
}

// signal keeps a warning for the step that it stands before; one that is
// indented stands in its step.
func (l *layout) signal(x row) {
	p := Piece{Text: x.text, Line: x.n, Apart: true, Signal: x.word}
	if l.step != nil && x.indent > 0 {
		l.step.Pieces = append(l.step.Pieces, p)
		return
	}
	l.signals, l.open = append(l.signals, p), x.text == ""
}

// settleSignals gives what stood behind the last step to that step.
func (l *layout) settleSignals() {
	switch {
	case len(l.signals) == 0:
	case l.step != nil:
		l.step.Pieces = append(l.step.Pieces, l.signals...)
	default:
		l.out.Intro = append(l.out.Intro, l.signals...)
	}
}

// read recognises what the pieces say.
func (l *layout) read() {
	if l.reader == nil {
		return
	}
	for i := range l.out.Intro {
		l.readThings(&l.out.Intro[i])
	}
	for _, ph := range l.out.Phases {
		for i := range ph.Prose {
			l.readThings(&ph.Prose[i])
		}
		l.readSteps(ph.Steps)
	}
}

// readThings recognises what a list of tools names; prose stays words.
func (l *layout) readThings(p *Piece) {
	if p.Toolbox {
		r := *l.reader
		p.Links = slices.DeleteFunc(r.Step(p.Text, nil).Links, func(x Link) bool { return x.Act })
	}
}

func (l *layout) readSteps(steps []*Step) {
	for _, s := range steps {
		l.reader.Begin()
		for i := range s.Pieces {
			if p := &s.Pieces[i]; p.Signal == "" {
				p.Reading = l.reader.Read(p.Text, Quoted(p.Text))
				l.reversal(p)
			}
		}
		l.readSteps(s.Subs)
	}
}

// reversal offers the refit of the last phase before this one that took
// anything off.
func (l *layout) reversal(p *Piece) {
	small := plain(p.Text)
	for _, phrase := range l.reader.tongue.Jotted.Reverse {
		at := strings.Index(small, plain(phrase))
		if at < 0 || len(small) != len(p.Text) {
			continue
		}
		if id := l.strips(p); id != "" {
			p.Offers = append(p.Offers, Offer{at, at + len(plain(phrase)), []string{"reverse:" + id}, Reversal})
		}
		return
	}
}

// strips is the id of the last phase in front of a piece in which parts come
// off.
func (l *layout) strips(before *Piece) string {
	id := ""
	for _, ph := range l.out.Phases {
		off := false
		done := false
		one := &Document{Phases: []*Phase{ph}}
		for p := range one.Pieces {
			done = done || p == before
			off = off || slices.ContainsFunc(p.Links, func(x Link) bool { return x.Kind == "remove" || x.Kind == "disconnect" || x.Kind == "renew" })
		}
		if done {
			return id
		}
		if off && ph.Title != "" {
			id = syntax.PhaseID(ph.Title)
		}
	}
	return id
}

// Quoted says which bytes of a text stand between backticks, or in an address.
func Quoted(text string) func(int) bool {
	places := quoted.FindAllStringIndex(text, -1)
	if places == nil {
		return nil
	}
	return func(i int) bool {
		return slices.ContainsFunc(places, func(p []int) bool { return i >= p[0] && i < p[1] })
	}
}

var quoted = regexp.MustCompile("`[^`]*`|\\[[^\\]]*\\]\\([^)]*\\)|<[^>]*>|https?://\\S+")
