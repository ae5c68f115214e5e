// Package search makes the site's search index: files that a browser loads one by one, with script tags, as a query needs them.
//
// A query reads the list of shards (main), one shard of words for each word
// (w-PREFIX: every form with its stem, every stem with its documents; where a
// prefix has too many words for one file, only those no longer than it, and
// the best documents of all), and the chunks of document names (d-N) that the
// hits stand in; the list of words (words) only where a word found nothing. The stems are Snowball's; the
// browser has no stemmer: a form that no page holds loses letters at its end
// until a stem is met.
package search

import (
	"bytes"
	"cmp"
	"encoding/json"
	"maps"
	"math"
	"slices"
	"sort"
	"strconv"
	"strings"
	"unicode"

	"github.com/kljensen/snowball"
	"golang.org/x/text/unicode/norm"
)

// Document is a page that the search can find.
type Document struct {
	Name, Address, Note string
	Language            string // "" for the manual's own
	Texts               []Text
}

// Text is what a page is found by, and how much that weighs.
type Text struct {
	Weight int
	Text   string
}

// Serials are the serial numbers of a machine's units.
type Serials struct {
	From, To      int
	Name, Address string
}

const (
	chunk     = 8        // documents whose names stand in one file: hits lie far apart
	mostPosts = 2000     // documents kept for one stem, the heaviest
	fullShard = 40 << 10 // bytes from which a shard is divided
	mostWords = 12000    // words in the list that slips are looked up in
	longest   = 4        // letters in a shard's name
	shown     = 6        // hits that are shown while somebody types
	mostBegin = 300      // documents kept for a prefix that is divided, the heaviest
)

// Files makes the index's files, by path in the site's folder of it. Documents
// of one language stand together, those of the manual's own first.
func Files(language string, documents []Document, serials []Serials) map[string][]byte {
	b := newBuilder(language)
	b.docs = documents
	for i := range documents {
		b.add(i, &documents[i])
	}
	out := map[string][]byte{}
	for from := 0; from < len(documents); from += chunk {
		names := []name{}
		for i := from; i < min(from+chunk, len(documents)); i++ {
			names = append(names, nameOf(&documents[i]))
		}
		put(out, "d-"+strconv.Itoa(from/chunk), names)
	}
	shards := b.shards(out)
	rows := [][4]any{}
	for _, s := range serials {
		rows = append(rows, [4]any{s.From, s.To, s.Name, s.Address})
	}
	put(out, "main", map[string]any{"docs": len(documents), "chunk": chunk, "shards": shards, "serials": rows, "languages": spans(language, documents)})
	put(out, "words", strings.Join(b.commonest(), " "))
	return out
}

// spans say from which document on which language is spoken.
func spans(language string, documents []Document) [][2]any {
	out := [][2]any{{0, language}}
	for i := 1; i < len(documents); i++ {
		if l := documents[i].Language; l != documents[i-1].Language {
			out = append(out, [2]any{i, l})
		}
	}
	return out
}

// put writes one file: a call that hands its data over.
func put(out map[string][]byte, name string, data any) {
	var text bytes.Buffer
	text.WriteString("'use strict';\nwindow.baybinder.shard(" + strconv.Quote(name) + ", ")
	encoder := json.NewEncoder(&text)
	if err := encoder.Encode(data); err != nil {
		panic(err) // plain values: a mistake of this package
	}
	text.WriteString(");\n")
	out[name+".js"] = text.Bytes()
}

type builder struct {
	language string                 // of the manual
	forms    map[string]string      // form → its stem, or its stems in several languages with a space between
	stems    map[[2]string]string   // language and form → stem
	used     map[string]int         // form → how often
	posts    map[string]map[int]int // stem → document → weight
	docs     []Document
}

func newBuilder(language string) *builder {
	return &builder{language: language, forms: map[string]string{}, stems: map[[2]string]string{}, used: map[string]int{}, posts: map[string]map[int]int{}}
}

// stemmers are the names of the stemmers by the code of the language; another
// language is stemmed as English.
var stemmers = map[string]string{"en": "english", "es": "spanish"}

func (b *builder) add(doc int, d *Document) {
	language := d.Language
	if language == "" {
		language = b.language
	}
	for _, t := range d.Texts {
		for _, form := range Words(t.Text) {
			stem := b.stem(language, form)
			b.used[form]++
			if b.posts[stem] == nil {
				b.posts[stem] = map[int]int{}
			}
			b.posts[stem][doc] = max(b.posts[stem][doc], t.Weight)
		}
	}
}

// stem is a form's stem. A word that is mostly figures is its own. Accents are
// gone by then: what Spanish endings lose by that, the browser's cutting finds.
func (b *builder) stem(language, form string) string {
	if stem, known := b.stems[[2]string{language, form}]; known {
		return stem
	}
	stemmer, known := stemmers[language]
	if !known {
		stemmer = "english"
	}
	stem, err := snowball.Stem(form, stemmer, true)
	if err != nil || stem == "" || strings.ContainsFunc(form, unicode.IsDigit) {
		stem = form
	}
	b.stems[[2]string{language, form}] = stem
	if all := strings.Fields(b.forms[form]); !slices.Contains(all, stem) {
		b.forms[form] = strings.Join(append(all, stem), " ")
	}
	return stem
}

// Words splits a text as the browser splits a query: small letters and
// figures, without accents.
func Words(text string) []string {
	var bare strings.Builder
	for _, r := range norm.NFD.String(text) {
		if !unicode.Is(unicode.Mn, r) {
			bare.WriteRune(unicode.ToLower(r))
		}
	}
	return strings.FieldsFunc(bare.String(), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsNumber(r) })
}

// shard is one file of words.
type shard struct {
	Forms  map[string]string `json:"forms"`
	Posts  map[string][]int  `json:"posts"`
	Begins []int             `json:"begins,omitempty"` // the best documents of all words that begin so, where others hold these
	Names  map[int]name      `json:"names"`            // of the documents that are shown while no more than the shard's name is typed
}

// name is what is shown of a document: its name, address and note.
type name [3]string

func nameOf(d *Document) name { return name{d.Name, d.Address, d.Note} }

// shards writes the shards and returns their names.
func (b *builder) shards(out map[string][]byte) []string {
	lists := map[string][]int{}
	for stem, docs := range b.posts {
		lists[stem] = posting(docs, mostPosts)
	}
	names := []string{}
	var divide func(prefix string, forms []string)
	divide = func(prefix string, forms []string) {
		s := shard{Forms: map[string]string{}, Posts: map[string][]int{}, Names: map[int]name{}}
		size := 0
		for _, f := range forms {
			s.Forms[f] = b.forms[f]
			for _, stem := range strings.Fields(b.forms[f]) {
				if _, known := s.Posts[stem]; !known {
					s.Posts[stem] = lists[stem]
					size += 4 * len(lists[stem])
				}
			}
			size += 2*len(f) + 8
		}
		if runes := len([]rune(prefix)); prefix == "" || (size > fullShard && runes < longest) {
			groups, order := grouped(forms, runes+1)
			for _, next := range order {
				if next != prefix || prefix == "" {
					divide(next, groups[next])
				}
			}
			if prefix == "" {
				return
			}
			short := shard{Forms: map[string]string{}, Posts: map[string][]int{}, Names: map[int]name{}, Begins: b.begins(forms)}
			for _, f := range groups[prefix] {
				short.Forms[f] = b.forms[f]
				for _, stem := range strings.Fields(b.forms[f]) {
					short.Posts[stem] = lists[stem]
				}
			}
			s = short
		}
		b.named(&s)
		names = append(names, prefix)
		put(out, "w-"+prefix, s)
	}
	divide("", sortedKeys(b.forms))
	slices.Sort(names)
	return names
}

// begins are the best documents of all forms of a prefix.
func (b *builder) begins(forms []string) []int {
	docs := map[int]int{}
	for _, f := range forms {
		for d, weight := range b.posts[b.forms[f]] {
			docs[d] = max(docs[d], weight)
		}
	}
	return posting(docs, mostBegin)
}

// named puts the names of the documents into a shard that the browser finds
// first when the shard's own name is typed: it scores them as the script does.
func (b *builder) named(s *shard) {
	scores := map[int]float64{}
	weigh := func(posts []int) {
		rare, doc := math.Log(1+float64(len(b.docs))/(float64(len(posts))/2)), 0
		for k := 0; k < len(posts); k += 2 {
			doc += posts[k]
			scores[doc] = max(scores[doc], float64(posts[k+1])*rare)
		}
	}
	if s.Begins != nil {
		weigh(s.Begins)
	} else {
		for _, posts := range s.Posts {
			weigh(posts)
		}
	}
	list := slices.SortedFunc(maps.Keys(scores), func(x, y int) int {
		return cmp.Or(cmp.Compare(scores[y], scores[x]), x-y)
	})
	for _, doc := range list[:min(len(list), shown)] {
		s.Names[doc] = nameOf(&b.docs[doc])
	}
}

// grouped puts forms under their first n letters, or all that they have.
func grouped(forms []string, n int) (map[string][]string, []string) {
	groups, order := map[string][]string{}, []string{}
	for _, f := range forms {
		r := []rune(f)
		key := string(r[:min(n, len(r))])
		if groups[key] == nil {
			order = append(order, key)
		}
		groups[key] = append(groups[key], f)
	}
	return groups, order
}

// posting writes documents as steps from one to the next, each with its
// weight; of very many the heaviest.
func posting(docs map[int]int, most int) []int {
	list := make([]int, 0, len(docs))
	for d := range docs {
		list = append(list, d)
	}
	sort.Slice(list, func(i, j int) bool {
		if docs[list[i]] != docs[list[j]] {
			return docs[list[i]] > docs[list[j]]
		}
		return list[i] < list[j]
	})
	list = list[:min(len(list), most)]
	slices.Sort(list)
	out, last := make([]int, 0, 2*len(list)), 0
	for _, d := range list {
		out = append(out, d-last, docs[d])
		last = d
	}
	return out
}

// commonest are the words in which a slip is looked up: without figures, a
// slip in which is another number.
func (b *builder) commonest() []string {
	var list []string
	for _, f := range sortedKeys(b.forms) {
		if len(f) > 3 && !strings.ContainsFunc(f, unicode.IsDigit) {
			list = append(list, f)
		}
	}
	slices.SortStableFunc(list, func(x, y string) int { return b.used[y] - b.used[x] })
	return list[:min(len(list), mostWords)]
}

func sortedKeys(m map[string]string) []string {
	out := make([]string, 0, len(m))
	for k := range m {
		out = append(out, k)
	}
	slices.Sort(out)
	return out
}
