package search

import (
	"encoding/binary"
	"io"
	"slices"
)

// Book is what the index is made from: which words each document is found by. A
// document can be read into it again, and the rest stays.
type Book struct {
	Language  string     // the manual's own
	Documents []Document // without their texts
	Serials   []Serials
	Forms     []string // words as they are written
	Words     []Said   // by document

	of   map[string]int    // address → its place
	at   map[string]uint32 // form → its place, counted from 1
	seen []uint32          // by form: where it stands in the words of the document that is read, counted from 1
}

// Word is one word of a document.
type Word struct {
	Form   uint32 // its place in the forms
	Weight uint32 // the most that it weighs in the document
	Used   uint32 // how often it stands there
}

// Said are the words of a document. There are so many of them that they are
// packed where they are kept.
type Said []Word

// GobEncode packs the words.
func (w Said) GobEncode() ([]byte, error) {
	out := make([]byte, 0, 4*len(w))
	for _, word := range w {
		for _, n := range [...]uint32{word.Form, word.Weight, word.Used} {
			out = binary.AppendUvarint(out, uint64(n))
		}
	}
	return out, nil
}

// GobDecode unpacks them.
func (w *Said) GobDecode(data []byte) error {
	*w = make(Said, 0, len(data)/3)
	for len(data) > 0 {
		var word Word
		for _, to := range [...]*uint32{&word.Form, &word.Weight, &word.Used} {
			n, size := binary.Uvarint(data)
			if size <= 0 {
				return io.ErrUnexpectedEOF
			}
			*to, data = uint32(n), data[size:]
		}
		*w = append(*w, word)
	}
	return nil
}

// Collect reads all documents of a manual in this language. Those of one language
// stand together, those of the manual's own first.
func Collect(language string, documents []Document, serials []Serials) *Book {
	k := &Book{Language: language, Documents: slices.Clone(documents), Serials: serials, Words: make([]Said, len(documents)), at: map[string]uint32{}}
	var words splitter
	for i := range documents {
		k.Words[i] = k.read(&words, documents[i].Texts)
		k.Documents[i].Texts = nil
	}
	return k
}

// Take reads one document anew, which is known by its address; false where the
// book has none of that.
func (k *Book) Take(d Document) bool {
	if k.at == nil {
		k.at, k.seen = map[string]uint32{}, make([]uint32, len(k.Forms))
		for i, form := range k.Forms {
			k.at[form] = uint32(i + 1)
		}
	}
	if k.of == nil {
		k.of = map[string]int{}
		for i := range k.Documents {
			k.of[k.Documents[i].Address] = i
		}
	}
	i, known := k.of[d.Address]
	if known {
		k.Words[i] = k.read(new(splitter), d.Texts)
		d.Texts = nil
		k.Documents[i] = d
	}
	return known
}

// read reads the words of one document.
func (k *Book) read(words *splitter, texts []Text) []Word {
	var out []Word
	for _, t := range texts {
		var join joiner
		take := func(word []byte) {
			at := k.at[string(word)]
			if at == 0 {
				k.Forms, k.seen = append(k.Forms, string(word)), append(k.seen, 0)
				at = uint32(len(k.Forms))
				k.at[k.Forms[at-1]] = at
			}
			if k.seen[at-1] == 0 {
				out = append(out, Word{Form: at - 1})
				k.seen[at-1] = uint32(len(out))
			}
			w := &out[k.seen[at-1]-1]
			w.Used++
			w.Weight = max(w.Weight, uint32(t.Weight))
		}
		words.each(t.Text, func(word []byte) {
			take(word)
			if joined := join.next(word, words.gap); joined != "" {
				take([]byte(joined))
			}
		})
	}
	for _, w := range out {
		k.seen[w.Form] = 0
	}
	return out
}
