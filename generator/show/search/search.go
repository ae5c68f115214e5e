// Package search makes the site's search index: files that a browser loads one by one, with script tags, as a query needs them.
//
// A query reads the list of shards (main), one shard of words for each word
// (w-PREFIX: every form with its stem, every stem with its documents; where a
// prefix has too many words for one file, only those no longer than it, and
// the best documents of all), and the chunks of document names (d-N) that the
// hits stand in; the list of words (words) only where a word found nothing. The stems are Snowball's; the
// browser has no stemmer: a form that no page holds loses letters at its end
// until a stem is met.
//
// # Decided where the format is silent
//
// While somebody types, six hits are read, the rest after 300 ms. A divided prefix keeps its 300
// heaviest pages.
package search

import (
	"bytes"
	"encoding/json"
	"strconv"
	"strings"
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

// Files makes the index's files, by path in the site's folder of it.
func (k *Book) Files() map[string][]byte {
	language, documents, serials := k.Language, k.Documents, k.Serials
	b := k.builder()
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
