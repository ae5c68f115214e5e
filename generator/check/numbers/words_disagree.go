package numbers

import (
	"slices"
	"strings"
	"unicode"

	"baybinder/generator/base/finding"
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
func wordsDisagree(p *model.Procedure, language string) []finding.Finding {
	words, known := ordersOf[mainLanguage(language)]
	if !known {
		return nil
	}
	var found []finding.Finding
	for _, s := range p.Steps {
		for b := range s.Blocks {
			for _, link := range s.Blocks[b].Links {
				if !link.Bad && link.Text != "" && link.Kind.Act != model.NoAct && link.To != nil && !link.To.Base().Lost("points", "name", "kind", model.Cutting) {
					found = append(found, words.disagree(link)...)
				}
			}
		}
	}
	return found
}

func mainLanguage(language string) string {
	main, _, _ := strings.Cut(strings.ToLower(language), "-")
	return main
}

// disagree is told of a link whose words order the opposite of its kind, and
// nowhere its own: who is to take the cover off and put the plug in is told
// both.
func (w *orders) disagree(link *model.Link) []finding.Finding {
	own, opposite := w.meant(link)
	if own == "" || strings.EqualFold(link.Text, link.To.Label()) { // a name is no order
		return nil
	}
	against := ""
	for _, c := range w.clauses(link.Text) {
		switch {
		case c.ordered(own) != "":
			return nil
		case against == "":
			against = c.ordered(opposite)
		}
	}
	if against == "" {
		return nil
	}
	return []finding.Finding{WordsDisagree.At(link.At, "the words say %q, and the link says %s: %s", against, link.Kind.Name+":", link.Kind.Says).
		WithMend("change the words or the link; the one that stays is what is done to the %s", link.To.Label())}
}

// meant gives the orders that a kind of link is, and those that are its
// opposite; none where it has no opposite.
func (w *orders) meant(link *model.Link) (own, opposite string) {
	switch link.Kind.Act {
	case model.Loosen:
		return w.undo + " " + w.open, w.tighten + " " + w.shut
	case model.Tighten:
		return w.tighten + " " + w.shut, w.undo + " " + w.open
	case model.Remove:
		return w.remove, w.fit
	case model.Refit:
		return w.fit + " " + w.placed, w.remove
	case model.Fill:
		return w.fill, w.drain
	case model.Drain:
		return w.drain + " " + w.emptied, w.fill
	case model.Lock:
		return w.lock, w.unlock
	case model.Unlock:
		return w.unlock, w.lock
	case model.Isolate:
		own, opposite = w.cut(link.To)
		return own + " " + w.pulled, opposite
	case model.Restore:
		opposite, own = w.cut(link.To)
		return own, opposite
	case model.TestLive:
		return w.on, w.off
	}
	return "", ""
}

// cut adds to the words for off and on those for open and close, where the
// names of the points that are moved say which is which.
func (w *orders) cut(n model.Named) (off, on string) {
	switch w.cutBy(n) {
	case opened:
		return w.off + " " + w.open, w.on + " " + w.shut
	case closed:
		return w.off + " " + w.shut, w.on + " " + w.open
	}
	return w.off, w.on
}

// cutBy says how the points that an act moves cut what they cut, where all say
// the same.
func (w *orders) cutBy(n model.Named) cutting {
	var how []cutting
	switch to := n.(type) {
	case *model.Point:
		how = append(how, w.cutting(to.Label()))
	case *model.Energy:
		for _, ref := range to.Points {
			if ref.To == nil || ref.To.Lost("name") {
				return unsaid
			}
			how = append(how, w.cutting(ref.To.Label()))
		}
	}
	if len(how) == 0 || slices.ContainsFunc(how, func(c cutting) bool { return c != how[0] }) {
		return unsaid
	}
	return how[0]
}

// cutting is how a point cuts an energy.
type cutting uint8

const (
	unsaid cutting = iota
	opened         // a switch, a vent valve
	closed         // a valve, an earthing switch
)

// cutting reads the name of a point by its noun: of "plug valve" the valve, of
// "switch of the vent" the switch.
func (w *orders) cutting(name string) cutting {
	words := plainWords(name)
	if end := slices.IndexFunc(words, func(x string) bool { return in(w.prepositions, x) }); end > 0 && !w.nounFirst {
		words = words[:end]
	}
	noun := w.noun(words)
	some := func(list string) bool {
		return slices.ContainsFunc(words, func(x string) bool { return in(list, x) })
	}
	switch {
	case noun == "":
		return unsaid
	case in(w.switches, noun) && some(w.earthing), in(w.valves, noun) && !some(w.vents):
		return closed
	case in(w.valves, noun) && some(w.blocks), in(w.switches, noun) && some(w.valves) && !w.nounFirst && in(w.valves, words[len(words)-1]):
		return unsaid // a double block and bleed in one name
	}
	return opened
}

// noun is the switch or the valve that a name names: the last word but for
// such as "left" and "Q1", in Spanish the first.
func (w *orders) noun(words []string) string {
	isNoun := func(x string) bool { return in(w.switches, x) || in(w.valves, x) }
	if w.nounFirst {
		if i := slices.IndexFunc(words, isNoun); i >= 0 {
			return words[i]
		}
		return ""
	}
	for _, x := range slices.Backward(words) {
		switch {
		case isNoun(x):
			return x
		case len(x) > 2 && !in(w.sides, x) && !strings.ContainsAny(x, "0123456789"):
			return ""
		}
	}
	return ""
}

// orders are the words of a language for acts and for the points where energy
// is cut. A bar stands where the thing may come between, as in take|off.
type orders struct {
	undo, tighten, open, shut, remove, fit, fill, drain, lock, unlock, off, on string

	placed, emptied, pulled string // orders of a kind that may be said of other things in its opposite

	joiners   string // what stands before a second order
	articles  string
	nouns     string // orders that are nouns as well: behind a joiner they need an object
	compounds string // what makes a noun of them: drain plug, lock off

	switches, valves, vents, earthing, blocks, sides, prepositions string
	nounFirst                                                      bool
}

var ordersOf = map[string]*orders{
	"en": {
		undo:      "undo loosen slacken unscrew untighten",
		tighten:   "tighten retighten torque nip|up do|up",
		open:      "open",
		shut:      "close shut",
		remove:    "remove detach dismount uninstall unplug disconnect take|off take|out take|away lift|off lift|out pull|off pull|out",
		fit:       "fit refit install reinstall mount attach reattach connect reconnect put|back put|on put|in plug|in",
		fill:      "fill refill top|up",
		drain:     "drain let|out",
		lock:      "lock padlock",
		unlock:    "unlock",
		off:       "isolate switch|off turn|off shut|off cut|off cut power|down",
		on:        "restore reconnect energise energize switch|on turn|on power|up plug|in",
		placed:    "place slide set lay",
		emptied:   "empty",
		pulled:    "pull unplug disconnect remove take|out",
		joiners:   "and",
		articles:  "the a an its your his her their it them this that these those both all each every",
		nouns:     "lock padlock fill drain fit mount torque",
		compounds: "off away plug valve cock tap screw hole cap port line hose pump pan level pipe tube bolt nut wrench ring point tray",
		switches:  "switch isolator breaker fuse plug disconnector disconnect",
		valves:    "valve cock tap", vents: "vent drain bleed dump", earthing: "earth earthing ground grounding", blocks: "block",
		sides:        "left right front rear upper lower top bottom one two three four main north south east west",
		prepositions: "of at for in on by behind under above beside near to from with",
	},
	"es": {
		undo:     "afloje aflojar afloja suelte soltar suelta desatornille desatornillar desatornilla desenrosque desenroscar desenrosca",
		tighten:  "apriete apretar aprieta reapriete reapretar atornille atornillar atornilla enrosque enroscar enrosca",
		open:     "abra abrir abre",
		shut:     "cierre cerrar cierra",
		remove:   "quite quitar quita saque sacar saca retire retirar retira desmonte desmontar desmonta desconecte desconectar desconecta desenchufe desenchufar desenchufa",
		fit:      "monte montar monta instale instalar instala conecte conectar conecta enchufe enchufar enchufa",
		fill:     "llene llenar llena rellene rellenar rellena",
		drain:    "vacíe vaciar vacía drene drenar drena",
		lock:     "bloquee bloquear bloquea",
		unlock:   "desbloquee desbloquear desbloquea",
		off:      "apague apagar apaga aísle aislar aísla corte cortar corta",
		on:       "encienda encender enciende conecte conectar conecta enchufe enchufar enchufa restablezca restablecer restablece",
		placed:   "ponga poner pon coloque colocar coloca vuelva",
		emptied:  "",
		pulled:   "desconecte desconectar desconecta desenchufe desenchufar desenchufa saque sacar saca tire",
		joiners:  "y e",
		articles: "el la los las un una su sus lo este esta estos estas ambos ambas todos todas cada",
		nouns:    "corte cierre saca retira llena monta",
		switches: "interruptor seccionador disyuntor fusible enchufe clavija",
		valves:   "válvula llave grifo", vents: "purga purgador venteo ventilación drenaje vaciado descarga desahogo", earthing: "tierra", blocks: "bloqueo",
		nounFirst: true,
	},
}

func in(list, word string) bool {
	for w := range strings.FieldsSeq(list) {
		if w == word {
			return true
		}
	}
	return false
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
	one := ordering{orders: w}
	closeOne := func(joined bool) {
		if len(one.words) > 0 {
			out = append(out, one)
		}
		one = ordering{orders: w, joined: joined}
	}
	for _, raw := range strings.Fields(text) {
		word := plainWord(raw)
		if in(w.joiners, word) {
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

// ordered is the order of a list with which a clause begins, as it stands.
func (c ordering) ordered(list string) string {
	for order := range strings.FieldsSeq(list) {
		head, tail, parted := strings.Cut(order, "|")
		switch {
		case c.words[0] != head || c.isNoun(head):
		case !parted:
			return c.raw[0]
		case c.hasTail(tail):
			return c.raw[0] + " … " + tail
		}
	}
	return ""
}

// isNoun says whether a word that can be a noun is one here: "take tag and
// lock off", "lock off".
func (c ordering) isNoun(head string) bool {
	if !in(c.nouns, head) {
		return false
	}
	if len(c.words) == 1 {
		return c.joined || c.more
	}
	return !in(c.articles, c.words[1]) && (c.joined || in(c.compounds, c.words[1]))
}

// hasTail says whether the second word of an order is in a clause, and is one:
// in "turn the key on the panel" it is none.
func (c ordering) hasTail(tail string) bool {
	for i, x := range c.words {
		if i > 0 && x == tail && (i == 1 || i+1 == len(c.words) || !in(c.articles, c.words[i+1])) {
			return true
		}
	}
	return false
}

func plainWords(text string) []string {
	var out []string
	for raw := range strings.FieldsSeq(text) {
		if w := plainWord(raw); w != "" {
			out = append(out, w)
		}
	}
	return out
}

func plainWord(w string) string {
	return strings.TrimFunc(strings.ToLower(w), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) })
}
