package walk

import (
	"slices"
	"strings"

	"baybinder/generator/language"
	"baybinder/generator/language/shape"
)

// sorts are what verbs are said of.
var sorts = map[shape.Thing]sort{
	shape.Part: aPart, shape.Fastener: aFastener, shape.Energy: anEnergy, shape.Fluid: aFluid, shape.Setting: aSetting, shape.Tool: aTool,
}

// verb is one word for an act, by the link kind that it could be and by what it
// is said of.
type verb struct {
	head string
	tail []string // words that stand behind the head, or behind the thing
	kind string
	of   sort
}

// tongue is how a language orders acts.
type tongue struct {
	*shape.Verbs
	byHead map[string][]verb // the verbs that begin with a word
	denies func(word string) bool
}

// tongues are those of the languages, by code.
var tongues = func() map[string]*tongue {
	out := map[string]*tongue{}
	for _, l := range language.All() {
		out[l.Code] = newTongue(&l.Verbs, l.Denials)
	}
	return out
}()

func newTongue(verbs *shape.Verbs, denials []string) *tongue {
	t := &tongue{Verbs: verbs, byHead: map[string][]verb{}, denies: func(word string) bool { return slices.Contains(denials, word) }}
	for _, v := range verbs.Said {
		for said := range strings.FieldsSeq(v.Said) {
			words := strings.Split(said, "|")
			t.byHead[words[0]] = append(t.byHead[words[0]], verb{words[0], words[1:], v.Kind, sorts[v.Of]})
		}
	}
	return t
}

// tongueOf is that of a tag; nil where the program does not speak it.
func tongueOf(tag string) *tongue {
	if l := language.Known(tag); l != nil {
		return tongues[l.Code]
	}
	return nil
}
