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

// collect reads all documents of a manual in this language.
func collect(language string, documents []Document) *builder {
	b := &builder{docs: documents, tongues: map[string]tongue{}, posts: map[string]*posts{}, forms: map[string][]string{}, used: map[string]int{}}
	var words splitter
	for i := range documents {
		d := &documents[i]
		spoken := cmp.Or(d.Language, language)
		for _, t := range d.Texts {
			var join joiner
			take := func(word []byte) {
				f := b.form(spoken, word)
				f.used++
				f.posts.take(i, t.Weight)
			}
			words.each(t.Text, func(word []byte) {
				take(word)
				if joined := join.next(word, words.gap); joined != "" {
					take([]byte(joined))
				}
			})
		}
	}
	b.together()
	return b
}

func (b *builder) form(language string, word []byte) *form {
	in := b.tongues[language]
	if f := in[string(word)]; f != nil {
		return f
	}
	if in == nil {
		in = tongue{}
		b.tongues[language] = in
		b.spoken = append(b.spoken, language)
	}
	f := &form{stem: stem(language, string(word))}
	if f.posts = b.posts[f.stem]; f.posts == nil {
		f.posts = &posts{}
		b.posts[f.stem] = f.posts
	}
	in[string(word)] = f
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
