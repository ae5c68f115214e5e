package search

import (
	"cmp"
	"slices"
	"strings"
	"unicode"
)

// builder holds which words stand on which pages.
type builder struct {
	docs     []Document
	tongues  map[string]tongue   // by language
	spoken   []string            // the languages, as they are met
	posts    map[string]*posts   // by stem
	forms    map[string][]string // form → its stems, one a language that has it
	used     map[string]int      // form → how often
	weighing []int32             // by document, 0 between two weighings
	scores   []float64           // likewise
	scored   []int               // the documents that have a score
}

// tongue is the forms of one language.
type tongue map[string]*form

// form is a word as it is written.
type form struct {
	stem  string
	posts *posts // of the stem
	used  int
}

// posts are the documents of a stem, in their order.
type posts struct{ list []post }

// post is a document, and the most that a stem weighs in it.
type post struct{ doc, weight int32 }

func (p *posts) take(doc, weight int) {
	if last := len(p.list) - 1; last >= 0 && p.list[last].doc == int32(doc) {
		p.list[last].weight = max(p.list[last].weight, int32(weight))
		return
	}
	p.list = append(p.list, post{int32(doc), int32(weight)})
}

// builder turns the book round.
func (k *Book) builder() *builder {
	b := &builder{docs: k.Documents, tongues: map[string]tongue{}, posts: map[string]*posts{}, forms: map[string][]string{}, used: map[string]int{}}
	for i := range k.Documents {
		spoken := cmp.Or(k.Documents[i].Language, k.Language)
		for _, w := range k.Words[i] {
			f := b.form(spoken, k.Forms[w.Form])
			f.used += int(w.Used)
			f.posts.take(i, int(w.Weight))
		}
	}
	b.together()
	return b
}

func (b *builder) form(language, word string) *form {
	in := b.tongues[language]
	if f := in[word]; f != nil {
		return f
	}
	if in == nil {
		in = tongue{}
		b.tongues[language] = in
		b.spoken = append(b.spoken, language)
	}
	f := &form{stem: stem(language, word)}
	if f.posts = b.posts[f.stem]; f.posts == nil {
		f.posts = &posts{}
		b.posts[f.stem] = f.posts
	}
	in[word] = f
	return f
}

// together makes one list of the forms of all languages.
func (b *builder) together() {
	for _, language := range b.spoken {
		for word, f := range b.tongues[language] {
			b.used[word] += f.used
			if !slices.Contains(b.forms[word], f.stem) {
				b.forms[word] = append(b.forms[word], f.stem)
			}
		}
	}
	b.weighing, b.scores = make([]int32, len(b.docs)), make([]float64, len(b.docs))
}

// commonest are the words in which a slip is looked up: without figures, a
// slip in which is another number.
func (b *builder) commonest() []string {
	var list []string
	for _, f := range b.sorted() {
		if len(f) > 3 && !strings.ContainsFunc(f, unicode.IsDigit) {
			list = append(list, f)
		}
	}
	slices.SortStableFunc(list, func(x, y string) int { return b.used[y] - b.used[x] })
	return list[:min(len(list), mostWords)]
}

// sorted are all forms.
func (b *builder) sorted() []string {
	out := make([]string, 0, len(b.forms))
	for form := range b.forms {
		out = append(out, form)
	}
	slices.Sort(out)
	return out
}
