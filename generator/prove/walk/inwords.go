package walk

import (
	"iter"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/language"
	"baybinder/generator/model"
)

// ActInWords is told at the verb.
var ActInWords = rule{
	Code:       "act-in-words",
	Level:      finding.Advice,
	Acceptable: true,
	Title:      "An act that is said in words only",
	Why:        "What is not typed is not checked: the order of this act is yours to judge.",
	Mend:       "Make a link of it.",
}

// name is what a machine's file calls a thing, word by word.
type name struct {
	words []string
	of    sort
	named model.Named
}

// spokenNames are the names that a step's words can name, by their first word.
func spokenNames(l *layout) map[string][]name {
	out := map[string][]name{}
	for _, i := range l.things {
		of := i.sort
		switch of {
		case aPoint:
			of = anEnergy
		case aFastening:
			of = aFastener
		case anEnergy, aPart, aFastener, aFluid, aSetting, aTool:
		default:
			continue
		}
		words := bare(strings.Fields(i.named.Label()))
		if len(words) > 0 && !i.named.Base().Lost("name") && !named(out[words[0]], i.named) {
			out[words[0]] = append(out[words[0]], name{words, of, i.named})
		}
	}
	return out
}

func named(list []name, n model.Named) bool {
	for _, x := range list {
		if x.named == n {
			return true
		}
	}
	return false
}

// bare makes words comparable: small, without the signs around them.
func bare(words []string) []string {
	out := make([]string, 0, len(words))
	for _, w := range words {
		if w = bareWord(w); w != "" {
			out = append(out, w)
		}
	}
	return out
}

func bareWord(w string) string {
	if smallLetters(w) {
		return w
	}
	return strings.TrimFunc(strings.ToLower(w), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
}

// smallLetters says that a word is a bare one as most are.
func smallLetters(w string) bool {
	for i := range len(w) {
		if w[i] < 'a' || w[i] > 'z' {
			return false
		}
	}
	return true
}

// actsInWords finds the steps that say an act of a thing of the machine and have no
// link for an act of it. In a language that the program does not speak there are
// none to be found.
func actsInWords(p *model.Procedure, l *layout, t *tongue) []finding.Finding {
	if len(l.spoken) == 0 || t == nil {
		return nil
	}
	var out []finding.Finding
	for _, s := range p.Steps {
		if hasUnread(s) {
			continue
		}
		typed := hasAct(s)
		for _, b := range s.Blocks {
			if b.Role != model.Said {
				continue
			}
			act := t.saidAct(spokenText(&b), l.spoken, func(a *said) bool {
				return (!typed || a.alone) && !a.ofLink(&b) && !slices.ContainsFunc(a.maybe, func(n model.Named) bool { return typedNearby(s, n) })
			})
			if act == nil {
				continue
			}
			f := ActInWords.At(act.at(&b), "%q is said of the %s in words only", act.raw, act.named.Label()).
				WithMend("make a link of it: %s", act.mend())
			f.Fixes = act.fixes(b, f.At)
			out = append(out, f)
			break
		}
	}
	return out
}

func hasAct(s *model.Step) bool {
	for _, l := range s.Links {
		if l.Kind.Act != model.NoAct {
			return true
		}
	}
	return false
}

// hasUnread says that a link of a step could not be bound: it may be the act.
func hasUnread(s *model.Step) bool {
	return slices.ContainsFunc(s.Links, func(l *model.Link) bool { return l.Bad })
}

// typedNearby says that a step, or one above or below it, has an act of the thing or
// of what it goes with, or performs something whole.
func typedNearby(s *model.Step, n model.Named) bool {
	for up := s; up != nil; up = up.Parent {
		if actsOn(up, n) {
			return true
		}
	}
	return actsBelow(s, n)
}

func actsBelow(s *model.Step, n model.Named) bool {
	for _, sub := range s.Subs {
		if actsOn(sub, n) || actsBelow(sub, n) {
			return true
		}
	}
	return false
}

func actsOn(s *model.Step, n model.Named) bool {
	for _, l := range s.Links {
		if l.Kind.Act == model.NoAct {
			continue
		}
		if l.To == n || l.Kind.Act == model.Reverse || l.Kind.Act == model.Call || goesWith(n, l) {
			return true
		}
	}
	return false
}

// goesWith says that the act of a link does to a thing what its words say: a point
// is moved by the act on an energy that it cuts, a fastener comes loose with its
// part, or, where no part is held by it, while a circuit is bled, and a line lets
// out what it carries. What could not be read of them may say so of any.
func goesWith(n model.Named, l *model.Link) bool {
	switch to := l.To.(type) {
	case *model.Energy:
		return to.Lost("points") && n.Base().Lost(model.Cutting) || slices.ContainsFunc(leads(to.Points), func(p *model.Point) bool { return cutsOr(p, n) })
	case *model.Point:
		return cutsOr(to, n)
	case *model.Part:
		f, is := n.(*model.Fastener)
		return is && (contains(f.Holds, to) || to.Lost("held-by")) || n == model.Named(to.Carries.To) || to.Lost("carries") && n.Base().Lost(model.Running)
	case *model.Fluid:
		f, is := n.(*model.Fastener)
		return is && l.Kind.Act == model.Bleed && len(f.Holds) == 0
	}
	return false
}

// cutsOr says that a thing is a point, or an energy that the point cuts.
func cutsOr(p *model.Point, n model.Named) bool {
	if n == model.Named(p) {
		return true
	}
	e, is := n.(*model.Energy)
	return is && (slices.Contains(p.Cuts, e) || e.Lost("points"))
}

// said is an act that a text orders.
type said struct {
	verb
	raw   string        // the verb as it stands in the text
	nth   int           // how often it has stood there before by itself
	named model.Named   // what has the longest name of those that stand there
	maybe []model.Named // all of them: "cover" and "cover bolt" of "the cover bolts"
	alone bool          // the name ends there: "the cover", and not "the cover gasket"
}

// ofLink says that the order stands in the words of a link that acts on something
// whose name has this one in it: "[Take the fan out](remove:fan-unit)", beside an
// energy that is called fan.
func (s *said) ofLink(b *model.Block) bool {
	return slices.ContainsFunc(b.Links, func(l *model.Link) bool {
		return l.Kind.Act != model.NoAct && l.To != nil && slices.Contains(strings.Fields(l.Text), s.raw) &&
			within(bare(strings.Fields(s.named.Label())), bare(strings.Fields(l.To.Label())))
	})
}

// within says that words stand in a row among others.
func within(words, others []string) bool {
	for i := range others {
		if len(words) > 0 && i+len(words) <= len(others) && slices.Equal(others[i:i+len(words)], words) {
			return true
		}
	}
	return false
}

// mend is the link that the words could be; where that depends on the thing,
// both.
func (s *said) mend() string {
	var out []string
	for kind := range strings.FieldsSeq(s.kind) {
		out = append(out, "["+s.raw+" …]("+kind+":"+s.named.Base().ID+")")
	}
	return strings.Join(out, " or ")
}

// entryMark stands before each word of the name of what a link names: such a
// word is no order, whatever it says.
const entryMark = "\x01"

// spokenText is the words of a block, with what its links name called by its
// name.
func spokenText(b *model.Block) string {
	if len(b.Links) == 0 {
		return b.Plain
	}
	var out strings.Builder
	out.Grow(2 * len(b.Plain)) // names are longer than what the writer calls them
	for r := range b.Runs() {
		out.WriteString(r.Words())
		if r.Link != nil {
			writeSpoken(&out, r.Link)
		}
	}
	return out.String()
}

// writeSpoken writes the words of a link: of a thing of the machine its name, of
// an entry its words, both marked.
func writeSpoken(out *strings.Builder, l *model.Link) {
	text, marked := saidIn(l)
	if !marked {
		out.WriteString(text)
		return
	}
	between := ""
	for word := range strings.FieldsSeq(text) {
		out.WriteString(between)
		out.WriteString(entryMark)
		out.WriteString(word)
		between = " "
	}
}

// saidIn is what a link says, and whether that is the name of what it names.
func saidIn(l *model.Link) (text string, marked bool) {
	switch to := l.To.(type) {
	case *model.Hazard, *model.Hold, *model.Supply, *model.Role:
		return l.Text, !isOrder(l)
	case *model.Tool, *model.Point, *model.Energy, *model.Part, *model.Fastener, *model.Fluid, *model.Setting:
		if !l.Bad && l.Kind.Act == model.NoAct {
			return to.Label(), true
		}
	}
	return l.Text, false
}

// isOrder says whether the words of a link are its writer's and not the name
// of what it names: "[Open the valve and measure](hold:pressure)".
func isOrder(l *model.Link) bool {
	switch l.To.(type) {
	case *model.Hazard, *model.Hold:
		return l.Text != "" && !strings.Contains(strings.ToLower(l.Text), strings.ToLower(l.To.Label()))
	}
	return false
}

// saidAct looks for the first order in a text that counts: a verb at the beginning
// of a clause and, beside it, the name of something that the verb is said of.
func (t *tongue) saidAct(text string, names map[string][]name, counts func(*said) bool) *said {
	begins, at := true, 0
	for raw := range strings.FieldsSeq(text) {
		at += strings.Index(text[at:], raw) + len(raw)
		plain := bareWord(raw)
		if plain == "" {
			continue
		}
		if begins && !endsClause(raw) && !strings.HasPrefix(raw, entryMark) {
			if s := t.ordered(raw, plain, text[at:], names); s != nil && counts(s) {
				for range whole(text[:at-len(raw)], s.bareRaw()) {
					s.nth++
				}
				return s
			}
		}
		begins = endsClause(raw) || t.Joiners[plain]
	}
	return nil
}

func endsClause(word string) bool { return strings.IndexByte(".,;:!?)", word[len(word)-1]) >= 0 }

// ordered is what a verb orders of the things that are named behind it; nil where
// none is.
func (t *tongue) ordered(raw, plain, rest string, names map[string][]name) *said {
	verbs := t.byHead[plain]
	if len(verbs) == 0 {
		return nil
	}
	s := &said{raw: raw}
	longest := 0
	behind := clause(rest)
	for _, v := range verbs {
		for _, n := range t.beside(behind, v, names) {
			s.maybe = append(s.maybe, n.named)
			if len(n.words) > longest {
				longest, s.verb, s.named, s.alone = len(n.words), v, n.named, n.alone
			}
		}
	}
	if s.named == nil {
		return nil
	}
	return s
}

// besides is a name behind a verb, and whether it ends there.
type besides struct {
	name
	alone bool
}

// beside are the things that are named in the rest of a verb's clause, with nothing
// but an article between.
func (t *tongue) beside(rest []string, v verb, names map[string][]name) []besides {
	near := t.pastLittle(rest)
	early := len(v.tail) > 0 && len(near) >= len(v.tail) && slices.Equal(near[:len(v.tail)], v.tail)
	if early {
		rest = near[len(v.tail):]
	}
	rest = t.pastCounts(rest)
	if len(rest) == 0 {
		return nil
	}
	var out []besides
	for _, n := range t.namesFrom(names, rest[0]) {
		if n.of != v.of || !t.startsWith(rest, n.words) {
			continue
		}
		behind := t.pastLittle(rest[len(n.words):])
		if len(v.tail) > 0 && !early {
			if t.late(v, behind) {
				out = append(out, besides{n, false})
				continue
			}
			if !t.parted(v, behind) {
				continue
			}
			behind = t.pastLittle(behind[len(v.tail):])
		}
		out = append(out, besides{n, len(behind) == 0 || t.After[behind[0]] || t.Joiners[behind[0]] || isNumber(behind[0])})
	}
	return out
}

// pastLittle are the words behind those that change nothing of an order: "undo
// only the bolts", "take the cover fully off".
func (t *tongue) pastLittle(words []string) []string {
	for len(words) > 0 && t.Little[words[0]] {
		words = words[1:]
	}
	return words
}

// pastCounts are the words from the name of a thing on: behind articles, counts and
// little words, "all of the", "only two of its".
func (t *tongue) pastCounts(words []string) []string {
	skips := func(w string) bool { return t.Articles[w] || t.Little[w] || isNumber(w) }
	for i, w := range words {
		if !skips(w) && (i == 0 || !language.IsOf(w)) {
			return words[i:]
		}
	}
	return nil
}

// namesFrom are the names that begin with a word, or whose only word it is in
// the plural.
func (t *tongue) namesFrom(names map[string][]name, word string) []name {
	out := names[word]
	for _, ending := range t.Plurals {
		if one, is := strings.CutSuffix(word, ending); is {
			out = append(out[:len(out):len(out)], names[one]...)
		}
	}
	return out
}

// clause is the words up to the end of the clause, as bare makes them.
func clause(text string) []string {
	out := make([]string, 0, 8) // most clauses have no more
	for w := range strings.FieldsSeq(text) {
		if plain := bareWord(w); plain != "" {
			out = append(out, plain)
		}
		if endsClause(w) {
			break
		}
	}
	return out
}

func isNumber(w string) bool { return w[0] >= '0' && w[0] <= '9' }

// startsWith compares a name with the words of a text, which may stand in the
// plural: "cover bolts", "tornillos de la tapa".
func (t *tongue) startsWith(words, name []string) bool {
	if len(words) < len(name) {
		return false
	}
	for i, w := range name {
		if words[i] != w && !t.plural(words[i], w) {
			return false
		}
	}
	return true
}

// plural says that a word is several of another.
func (t *tongue) plural(word, one string) bool {
	ending, is := strings.CutPrefix(word, one)
	return is && slices.Contains(t.Plurals, ending)
}

// parted says whether the other words of a verb stand behind the thing: "put the
// pin in", and not "put the pin in the tray".
func (t *tongue) parted(v verb, behind []string) bool {
	n := len(v.tail)
	if len(behind) < n || !slices.Equal(behind[:n], v.tail) {
		return false
	}
	switch {
	case len(behind) == n || !t.Parts[v.tail[n-1]]:
		return true
	case t.Late: // "ziehen Sie die Schrauben nach oben"
		return t.After[behind[n]] || t.Joiners[behind[n]]
	}
	return !t.Articles[behind[n]]
}

// late says whether the other word of a verb ends the order, with more between it
// and the thing: "ziehen Sie die Mutter mit 30 N·m an", and not "nicht an".
func (t *tongue) late(v verb, behind []string) bool {
	if end := slices.IndexFunc(behind, func(w string) bool { return t.Joiners[w] }); end >= 0 {
		behind = behind[:end]
	}
	last := len(behind) - 1
	return t.Late && last > 0 && len(v.tail) == 1 && behind[last] == v.tail[0] && !slices.ContainsFunc(behind, t.denies)
}

// fixes make a link of the words from the verb to the end of the thing's name,
// one for each kind that it could be; none where the words hold a link already.
func (s *said) fixes(b model.Block, verb position.Pos) []finding.Fix {
	if verb == b.At {
		return nil
	}
	rest := b.At.File.Text[verb.Start:b.At.End]
	i := strings.Index(strings.ToLower(rest), strings.ToLower(s.named.Label()))
	if i < 0 {
		return nil
	}
	end := i + len(s.named.Label())
	for end < len(rest) && unicode.IsLetter(rune(rest[end])) {
		end++ // the plural
	}
	if strings.ContainsAny(rest[:end], "[]()<>*_`\\\n") {
		return nil
	}
	var out []finding.Fix
	for kind := range strings.FieldsSeq(s.kind) {
		out = append(out, finding.Fix{At: verb.Part(0, end), Text: "[" + rest[:end] + "](" + kind + ":" + s.named.Base().ID + ")"})
	}
	return out
}

// at is the place of the verb in the source: the same word may stand before it as
// well, in the words of a link, in an address, or inside a longer one.
func (s *said) at(b *model.Block) position.Pos {
	at := b.At
	for n, place := range whole(wordsWritten(b), s.bareRaw()) {
		at = b.At.Part(place, place+len(s.bareRaw()))
		if n == s.nth {
			break
		}
	}
	return at
}

// bareRaw is the verb as it stands in the text, without what ends its clause.
func (s *said) bareRaw() string { return strings.TrimRight(s.raw, ".,;:!?)") }

// wordsWritten is a block's text as it is written, with a space in place of each byte
// that is no word of it: of the addresses of links, and of what a link calls by the
// thing's own name.
func wordsWritten(b *model.Block) string {
	text := []byte(b.At.Text())
	for _, l := range b.Links {
		from := l.At.Start - b.At.Start
		if _, marked := saidIn(l); !marked {
			from += max(strings.LastIndex(l.At.Text(), "]("), 0)
		}
		for i := max(from, 0); i < min(l.At.End-b.At.Start, len(text)); i++ {
			text[i] = ' '
		}
	}
	return string(text)
}

// whole are the places where a word stands in a text by itself.
func whole(text, word string) iter.Seq2[int, int] {
	return func(yield func(int, int) bool) {
		inside := func(r rune) bool { return unicode.IsLetter(r) || string(r) == entryMark }
		for n, at := 0, 0; ; {
			i := strings.Index(text[at:], word)
			if i < 0 || word == "" {
				return
			}
			i, at = at+i, at+i+len(word)
			before, _ := utf8.DecodeLastRuneInString(text[:i])
			behind, _ := utf8.DecodeRuneInString(text[at:])
			if inside(before) || inside(behind) {
				continue
			}
			if !yield(n, i) {
				return
			}
			n++
		}
	}
}
