package numbers

import (
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"baybinder/generator/base/finding"
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"baybinder/generator/model"
)

// WordsDisagree is told at the link.
var WordsDisagree = finding.Rule{
	Code:  "words-disagree",
	Level: finding.Advice,
	Title: "A link whose words order the opposite",
	Why:   "The hands do what the words say; the order of the job was checked by what the link says.",
	Mend:  "Change the words, or the link: [Undo the bolts](loosen:…), [tighten the bolts](tighten:…).",
}

// wordsDisagree looks for orders in the words of links that are the opposite of
// their kind.
func wordsDisagree(j *job) []finding.Finding {
	spoken := language.Known(j.language())
	if spoken == nil {
		return nil
	}
	words := orders{Acts: spoken.Acts, job: j}
	var original map[string]bool
	if j.of.Original != nil {
		original = addressesOf(j.of.Original)
	}
	var found []finding.Finding
	for _, s := range j.of.Steps {
		for b := range s.Blocks {
			for _, link := range s.Blocks[b].Links {
				if !link.Bad && link.To != nil && (original == nil || original[link.Address]) && !link.To.Base().Lost("points", "name", "kind", model.Cutting) {
					found = append(found, words.disagree(link)...)
				}
			}
		}
	}
	return found
}

// addressesOf are the addresses of the links in a procedure's steps. A translation's
// link that its original has nowhere is told by translation-differs, at its step.
func addressesOf(p *model.Procedure) map[string]bool {
	out := map[string]bool{}
	for _, s := range p.Steps {
		for b := range s.Blocks {
			for _, l := range s.Blocks[b].Links {
				out[l.Address] = true
			}
		}
	}
	return out
}

// disagree is told of a link whose words order the opposite of its kind, and
// nowhere its own: who is to take the cover off and put the plug in is told
// both.
func (w *orders) disagree(link *model.Link) []finding.Finding {
	own, opposite := w.meant(link)
	if own == "" && w.leftIn(link.Kind.Act) == "" || strings.EqualFold(link.Text, link.To.Label()) { // a name is no order
		return nil
	}
	hangs, takesDown := w.hung(link.Kind.Act)
	down, up := w.levers(link)
	leftOut := w.leftIn(link.Kind.Act)
	against, all := "", w.clauses(link.Text)
	for _, c := range all {
		switch {
		case c.ordered(own) != "", c.ordered(hangs) != "", c.isLever(down):
			return nil
		case against == "":
			if against = c.ordered(opposite); against != "" && link.Kind.Act == model.Renew && !c.isOf(link.To.Label(), opposite) {
				against = "" // a puller is fitted to what is taken off
			}
			if against == "" && c.Ends(c.Hung, c.object(takesDown)) {
				against = c.ordered(takesDown)
			}
			if against == "" && c.wholly(link, all, leftOut) {
				against = c.ordered(leftOut)
			}
			if against == "" && c.isLever(up) {
				against = c.ordered(up)
			}
			if against == "" && pulls(link) && c.onlyNames(link.To.Label()) {
				against = c.ordered(w.Pulled)
			}
		}
	}
	if against == "" {
		return nil
	}
	return []finding.Finding{WordsDisagree.At(link.At, "the words say %q, and the link says %s: %s", against, link.Kind.Name, finding.Say(link.Kind.Says)).
		WithMend("change the words or the link; the one that stays is what is done to the %s", link.To.Label())}
}

// meant gives the orders that a kind of link is, and those that are its
// opposite; none where it has no opposite.
func (w *orders) meant(link *model.Link) (own, opposite string) {
	switch link.Kind.Act {
	case model.Loosen:
		return w.Undo + " " + w.Open, w.Tighten + " " + w.Shut
	case model.Tighten:
		return w.Tighten + " " + w.Shut, w.Undo + " " + w.Open
	case model.Remove:
		return w.Remove, w.Fit
	case model.Renew:
		return w.Remove + " " + w.Undo + " " + w.Renewed, w.Fit
	case model.Refit:
		return w.Fit + " " + w.Placed, w.Remove
	case model.Fill:
		return w.Fill, w.Drain
	case model.Drain:
		return w.Drain + " " + w.Emptied, w.Fill
	case model.Lock:
		return w.Lock, w.Unlock
	case model.Unlock:
		return w.Unlock, w.Lock
	case model.Isolate:
		own, opposite = w.cut(link.To)
		return own + " " + w.Pulled, opposite
	case model.Restore:
		opposite, own = w.cut(link.To)
		return own, opposite
	case model.TestLive:
		return w.On, w.Off
	case model.NoAct, model.Release, model.Prove, model.Cap, model.Mark, model.Place, model.Clear,
		model.Alter, model.Reset, model.Bleed, model.Dry, model.Call, model.Reverse: // no other kind orders the opposite
	}
	return "", ""
}

// hung gives for a lock what is said of hanging it, and of taking it off: the
// same the other way round for its coming off.
func (w *orders) hung(act model.Act) (own, opposite string) {
	switch act {
	case model.Lock:
		return w.Fit + " " + w.Placed, w.Remove
	case model.Unlock:
		return w.Remove, w.Fit + " " + w.Placed
	default: // nothing else is done to a lock
		return "", ""
	}
}

// leftIn are the orders that are the opposite of leaving a tool in place, and of
// taking it away: a tool is fitted and removed as a part is.
func (w *orders) leftIn(act model.Act) string {
	switch act {
	case model.Place:
		return w.Remove
	case model.Clear:
		return w.Fit + " " + w.Placed
	default: // no other act is done to a tool
		return ""
	}
}

// wholly says that a link orders one thing of the tool that it names, and nothing
// more: who takes the chocks out of the box puts them under the wheels.
func (c ordering) wholly(link *model.Link, all []ordering, orders string) bool {
	t, is := link.To.(*model.Tool)
	spoken := language.Known(c.job.language())
	if !is || spoken == nil || len(all) != 1 {
		return false
	}
	named := false
	for _, word := range c.words {
		switch {
		case c.names(t.Label(), spoken.Stem(word), spoken.Stem):
			named = true
		case shape.Among(c.Articles, word), spoken.Verbs.Articles[word], spoken.Verbs.Little[word], spoken.Numbers.Spelled[word] > 0, hasFigure(word), shape.Among(strings.ReplaceAll(orders, "|", " "), word):
		default:
			return false
		}
	}
	return named
}

// names says that a word, by its stem, is one of a name, or the end of one: "Keile"
// of an "Unterlegkeil".
func (c ordering) names(name, stem string, stemOf func(string) string) bool {
	return slices.ContainsFunc(shape.PlainWords(name), func(word string) bool {
		return stemOf(word) == stem || c.Glued && strings.HasSuffix(stemOf(word), stem)
	})
}

// levers are the orders that move the lever of a switch: to off and to on.
func (w *orders) levers(link *model.Link) (own, opposite string) {
	if w.cutBy(link.To) != shape.Opened {
		return "", ""
	}
	switch link.Kind.Act {
	case model.Isolate:
		return w.Down, w.Up
	case model.Restore, model.TestLive:
		return w.Up, w.Down
	default: // no other act moves a switch
		return "", ""
	}
}

// isLever says that a clause orders one of these of a switch, by a word for one: the
// load that is let down is none.
func (c ordering) isLever(orders string) bool {
	return orders != "" && c.ordered(orders) != "" && c.Ends(c.Switches, c.object(orders))
}

// pulls says that pulling is the opposite of what a link does: of a connector that
// is put in.
func pulls(link *model.Link) bool {
	p, is := link.To.(*model.Part)
	return is && p.Kind == "connector" && link.Kind.Act == model.Refit
}

// onlyNames says that a clause orders something of a thing and says nothing more:
// "pull the plug", and not "pull the plug up to the lid".
func (c ordering) onlyNames(name string) bool {
	names := shape.PlainWords(name)
	for _, word := range c.words {
		if !shape.Among(c.Articles, word) && !shape.Among(c.Switches, word) && !language.IsOf(word) && !slices.Contains(names, word) && !shape.Among(c.Pulled, word) {
			return false
		}
	}
	return true
}

// object is the word for what one of the orders of a clause is done to, "" where it
// names none: the lock of "take your lock off", the key of "take the key out of the
// lock".
func (c ordering) object(orders string) string {
	words, last := c.words[1:], len(c.words)-1
	if slices.ContainsFunc(strings.Fields(orders), c.endsIn) {
		words = c.words[:last]
	}
	for _, word := range words {
		if !shape.Among(c.Articles, word) && !shape.Among(c.Fresh, word) && !strings.Contains(orders, "|"+word) {
			return word
		}
	}
	return ""
}

// isOf says that what one of the orders is done to is a thing, by a word of its name
// or the end of one, "Dichtung" of a "Deckeldichtung".
func (c ordering) isOf(name, orders string) bool {
	object := c.object(orders)
	return object == "" || slices.ContainsFunc(shape.PlainWords(name), func(word string) bool {
		return word == object || c.Glued && strings.HasSuffix(word, object)
	})
}

// cut adds to the words for off and on those for open and close, where the
// names of the points that are moved say which is which.
func (w *orders) cut(n model.Named) (off, on string) {
	switch w.cutBy(n) {
	case shape.Opened:
		return w.Off + " " + w.Open, w.On + " " + w.Shut
	case shape.Closed:
		return w.Off + " " + w.Shut, w.On + " " + w.Open
	case shape.Unsaid:
	}
	return w.Off, w.On
}

// cutBy says how the points that an act moves cut what they cut, where all say
// the same.
func (w *orders) cutBy(n model.Named) shape.Cutting {
	var how []shape.Cutting
	switch to := n.(type) {
	case *model.Point:
		how = append(how, w.pointCuts(to))
	case *model.Energy:
		for _, ref := range to.Points {
			if ref.To == nil || ref.To.Lost("name") {
				return shape.Unsaid
			}
			how = append(how, w.pointCuts(ref.To))
		}
	}
	if len(how) == 0 || slices.ContainsFunc(how, func(c shape.Cutting) bool { return c != how[0] }) {
		return shape.Unsaid
	}
	return how[0]
}

// pointCuts reads a point's name, which is in the shop's language; where that says
// nothing, its name in the language of the page.
func (w *orders) pointCuts(p *model.Point) shape.Cutting {
	m := w.job.manual
	if own := language.Known(m.Shop.Language); own != nil {
		if how := own.Acts.Cutting(p.Label()); how != shape.Unsaid {
			return how
		}
	}
	if words := m.WordsOf("machines/"+w.job.of.For.ID, p.ID, w.job.language()); words != nil && len(words.Texts["name"]) == 1 {
		return w.Cutting(words.Texts["name"][0])
	}
	return shape.Unsaid
}

// orders are the words of a language for acts, and the procedure that says them.
type orders struct {
	shape.Acts

	job *job
}

// ordering is a clause of a link's words, where an order can begin.
type ordering struct {
	*orders
	words  []string
	raw    []string
	joined bool // it stands behind "and"
	more   bool // another stands behind it
}

// clauses parts a link's words at commas and at "and".
func (w *orders) clauses(text string) []ordering {
	var out []ordering
	all := strings.Fields(text)
	one := ordering{orders: w, words: make([]string, 0, len(all)), raw: make([]string, 0, len(all))}
	closeOne := func(joined bool) {
		one.dropAgain()
		if len(one.words) > 0 {
			out = append(out, one)
		}
		n := len(one.words) // the next stands behind it in the same room
		one = ordering{orders: w, joined: joined, words: one.words[n:], raw: one.raw[n:]}
	}
	for _, raw := range all {
		word := shape.PlainWord(raw)
		if shape.Among(w.Joiners, word) {
			one.more = true
			closeOne(true)
			continue
		}
		if word != "" {
			one.words, one.raw = append(one.words, word), append(one.raw, strings.TrimRight(raw, ",;:."))
		}
		if strings.HasSuffix(raw, ",") || strings.HasSuffix(raw, ";") || strings.HasSuffix(raw, ":") {
			closeOne(false)
		}
	}
	closeOne(false)
	return out
}

// endsIn says that a clause ends in an order, where the language has it so. What has
// a capital there is a noun: "vor dem Ausschalten".
func (c ordering) endsIn(order string) bool {
	last := len(c.words) - 1
	first, _ := utf8.DecodeRuneInString(c.raw[last])
	return c.Late && last > 0 && c.words[last] == order && unicode.IsLower(first)
}

// ordered is the order of a list with which a clause begins, or ends, as it stands.
func (c ordering) ordered(list string) string {
	for order := range strings.FieldsSeq(list) {
		head, tail, parted := strings.Cut(order, "|")
		switch {
		case !parted && c.endsIn(head):
			return c.raw[len(c.raw)-1]
		case !c.isOrder(c.words[0], head) || c.isNoun(head):
		case !parted:
			return c.raw[0]
		case c.hasTail(tail):
			return c.raw[0] + " … " + tail
		}
	}
	return ""
}

// dropAgain takes away what stands before an order and changes nothing of it.
func (c *ordering) dropAgain() {
	for again := range strings.FieldsSeq(c.Again) {
		if n := strings.Count(again, "|") + 1; len(c.words) > n && strings.Join(c.words[:n], "|") == again && strings.HasSuffix(c.bare(c.words[n]), "r") {
			c.words, c.raw = c.words[n:], c.raw[n:]
			return
		}
	}
}

// isOrder says that a word is an order, as it stands or with what the language glues
// behind it.
func (c ordering) isOrder(word, order string) bool {
	return word == order || c.Clitics != "" && c.bare(word) != word && c.bare(word) == unstressed.Replace(order)
}

// bare is a word without what is glued behind it, and without the accent that this
// gave it: "ábrala" is "abra". A word that has nothing there stays as it is.
func (a *orders) bare(word string) string {
	for clitic := range strings.FieldsSeq(a.Clitics) {
		if order, has := strings.CutSuffix(word, clitic); has {
			return unstressed.Replace(order)
		}
	}
	return word
}

var unstressed = strings.NewReplacer("á", "a", "é", "e", "í", "i", "ó", "o", "ú", "u")

// isNoun says whether a word that can be a noun is one here: "take tag and
// lock off", "lock off".
func (c ordering) isNoun(head string) bool {
	if !shape.Among(c.Nouns, head) {
		return false
	}
	if len(c.words) == 1 {
		return c.joined || c.more
	}
	return !shape.Among(c.Articles, c.words[1]) && (c.joined || shape.Among(c.Compounds, c.words[1]))
}

// hasTail says whether the second word of an order is in a clause, and is one:
// in "turn the key on the panel" it is none.
func (c ordering) hasTail(tail string) bool {
	behind := c.words[1:]
	for i, x := range behind {
		if x == tail && (i == 0 || i+1 == len(behind) || !shape.Among(c.Articles, behind[i+1])) {
			return true
		}
	}
	return false
}
