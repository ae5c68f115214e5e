package search

import (
	"cmp"
	"math"
	"slices"
	"strings"
)

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

func newShard() *shard {
	return &shard{Forms: map[string]string{}, Posts: map[string][]int{}, Names: map[int]name{}}
}

// shards writes the shards and returns their names.
func (b *builder) shards(out map[string][]byte) []string {
	names := []string{}
	write := func(prefix string, s *shard) {
		b.named(s)
		names = append(names, prefix)
		put(out, "w-"+prefix, s)
	}
	b.divide("", b.sorted(), write)
	slices.Sort(names)
	return names
}

// divide writes the shard of a prefix; where its forms are too many for one
// file, those of the longer prefixes, and its own for the forms that end here.
func (b *builder) divide(prefix string, forms []string, write func(prefix string, s *shard)) {
	letters := len([]rune(prefix))
	if prefix != "" && (letters >= longest || b.size(forms) <= fullShard) {
		write(prefix, b.shard(forms))
		return
	}
	groups, order := grouped(forms, letters+1)
	for _, next := range order {
		if next != prefix {
			b.divide(next, groups[next], write)
		}
	}
	if prefix != "" {
		short := b.shard(groups[prefix])
		short.Begins = b.begins(forms)
		write(prefix, short)
	}
}

// size is about how many bytes the shard of these forms takes.
func (b *builder) size(forms []string) (bytes int) {
	counted := map[*posts]bool{}
	for _, f := range forms {
		bytes += 2*len(f) + 8
		for _, stem := range b.forms[f] {
			if p := b.posts[stem]; !counted[p] {
				counted[p] = true
				bytes += 4 * 2 * min(len(p.list), mostPosts)
			}
		}
	}
	return bytes
}

func (b *builder) shard(forms []string) *shard {
	s := newShard()
	for _, f := range forms {
		s.Forms[f] = strings.Join(b.forms[f], " ")
		for _, stem := range b.forms[f] {
			if s.Posts[stem] == nil {
				s.Posts[stem] = steps(heaviest(b.posts[stem].list, mostPosts))
			}
		}
	}
	return s
}

// begins are the best documents of all forms of a prefix.
func (b *builder) begins(forms []string) []int {
	var all []post
	for _, f := range forms {
		for _, stem := range b.forms[f] {
			for _, p := range b.posts[stem].list {
				if b.weighing[p.doc] == 0 {
					all = append(all, p)
				}
				b.weighing[p.doc] = max(b.weighing[p.doc], p.weight)
			}
		}
	}
	for i := range all {
		p := &all[i]
		p.weight, b.weighing[p.doc] = b.weighing[p.doc], 0
	}
	slices.SortFunc(all, byDocument)
	return steps(heaviest(all, mostBegin))
}

func byDocument(x, y post) int { return cmp.Compare(x.doc, y.doc) }

// heaviest are the posts of at most so many documents, in the order of these.
func heaviest(list []post, most int) []post {
	if len(list) <= most {
		return list
	}
	list = slices.Clone(list)
	slices.SortFunc(list, func(x, y post) int {
		return cmp.Or(cmp.Compare(y.weight, x.weight), byDocument(x, y))
	})
	list = list[:most]
	slices.SortFunc(list, byDocument)
	return list
}

// steps writes documents as steps from one to the next, each with its weight.
func steps(list []post) []int {
	out, last := make([]int, 0, 2*len(list)), int32(0)
	for _, p := range list {
		out = append(out, int(p.doc-last), int(p.weight))
		last = p.doc
	}
	return out
}

// named puts the names of the documents into a shard that the browser finds
// first when the shard's own name is typed: it scores them as the script does.
func (b *builder) named(s *shard) {
	var first best
	if s.Begins != nil {
		b.score(s.Begins)
	} else {
		for _, posts := range s.Posts {
			b.score(posts)
		}
	}
	for _, doc := range b.scored {
		first.take(doc, b.scores[doc])
		b.scores[doc] = 0
	}
	b.scored = b.scored[:0]
	for _, f := range first {
		s.Names[f.doc] = nameOf(&b.docs[f.doc])
	}
}

// score gives each document of a stem what it weighs there: the more, the
// fewer documents have the stem.
func (b *builder) score(posts []int) {
	rare, doc := math.Log(1+float64(len(b.docs))/(float64(len(posts))/2)), 0
	for k := 0; k < len(posts); k += 2 {
		doc += posts[k]
		if b.scores[doc] == 0 {
			b.scored = append(b.scored, doc)
		}
		b.scores[doc] = max(b.scores[doc], float64(posts[k+1])*rare)
	}
}

// best are the documents with the highest scores, of equal ones the earlier;
// no more than are shown.
type best []scored

type scored struct {
	doc   int
	score float64
}

func (b *best) take(doc int, score float64) {
	list := *b
	if len(list) == shown {
		if last := list[shown-1]; score < last.score || score == last.score && doc > last.doc {
			return
		}
		list = list[:shown-1]
	}
	at, _ := slices.BinarySearchFunc(list, scored{doc, score}, func(x, y scored) int {
		return cmp.Or(cmp.Compare(y.score, x.score), x.doc-y.doc)
	})
	*b = slices.Insert(list, at, scored{doc, score})
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
