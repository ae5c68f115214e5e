package generator

import (
	"bytes"
	"crypto/sha256"
	"encoding/gob"
	"fmt"
	"path/filepath"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/kept"
	"baybinder/generator/check"
	"baybinder/generator/command/issue"
	"baybinder/generator/language"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
	"baybinder/generator/show/front"
	"baybinder/generator/show/page"
	"baybinder/generator/show/publish"
	"baybinder/generator/show/search"
)

// Verdict is what is told of a manual that was checked.
type Verdict struct {
	Findings   []finding.Finding // in their order
	Procedures int               // read
	InUse      int               // of these, issued or to be issued: no draft, and not withdrawn
	Unissued   int               // of these, without a revision
	Language   string            // the shop's, in which the findings are told
}

// Tongue is what the findings are told in.
func (v *Verdict) Tongue() *finding.Tongue { return &language.Of(v.Language).Findings }

// LanguageOf is the tag of a manual's language, before it is read.
func LanguageOf(manual string) string {
	m, _ := bind.Manual(source.ReadOne(manual, "shop.yaml"))
	return m.Shop.Language
}

// TongueOf is what the findings of a manual are told in, before it is read: English
// where there is none.
func TongueOf(manual string) *finding.Tongue { return &language.Of(LanguageOf(manual)).Findings }

// memory is what is kept between runs of one manual: what is told of it, and how
// the site stood that was built from it. It is found by everything that either
// was made from, so that it is never of another day, option, program or text.
type memory struct {
	store *kept.Store
	tree  *source.Tree
	o     Options
	sum   []byte // of the manual, before it was worked on
}

// memoryOf is nil where nothing is kept.
func memoryOf(tree *source.Tree, o Options) *memory {
	if o.Kept == nil || len(o.unsaved) > 0 {
		return nil
	}
	return &memory{o.Kept, tree, o, tree.Sum()}
}

// verdictKey is everything that decides what is told of a manual.
func (m *memory) verdictKey() []byte {
	return fmt.Appendf(nil, "verdict %x %s %v", m.sum, m.o.Today, m.o.Preview)
}

// siteKey is where a site lies, which decides also whether it may be built.
func (m *memory) siteKey() []byte {
	key := fmt.Append(nil, "site ", m.o.Readings != "")
	for _, place := range []string{m.o.Manual, m.o.To, m.o.Readings} {
		full, _ := filepath.Abs(place) // where it fails, nothing is built
		key = fmt.Appendf(key, " %q", full)
	}
	return key
}

// pagesKey is where is kept what the site's pages were made from: that is much,
// and asked for only where something changed.
func (m *memory) pagesKey() []byte { return append([]byte("pages "), m.siteKey()...) }

// rows are those of a site's procedures; nil where they are not known.
func (m *memory) rows(sum []byte) (rows []page.Row) {
	decode(m.store.Get(append([]byte("rows "), sum...)), &rows)
	return rows
}

// keepRows keeps them, and gives their sum.
func (m *memory) keepRows(rows []page.Row) []byte {
	data := encode(rows)
	sum := sha256.Sum256(data)
	_ = m.store.Put(append([]byte("rows "), sum[:]...), data)
	return sum[:]
}

// site is how the site stood that was last built here; nil where that is not
// known.
func (m *memory) site() *keptSite {
	if m == nil {
		return nil
	}
	var k keptSite
	if !decode(m.store.Get(m.siteKey()), &k) {
		return nil
	}
	return &k
}

// shown is what a site's pages were made from; nil where that is not known.
func (m *memory) shown(k *keptSite) *keptPages {
	if m == nil || k == nil {
		return nil
	}
	var s keptPages
	if !decode(m.store.Get(m.pagesKey()), &s) || !bytes.Equal(s.Of, k.Of) || s.Past == nil {
		return nil
	}
	return &s
}

// changed says that a file became another while it was worked on: then nobody
// knows from which of the two the work was made.
func (m *memory) changed() bool { return !bytes.Equal(m.sum, m.tree.Sum()) }

type keptVerdict struct {
	Findings                    []byte
	Procedures, InUse, Unissued int
	Language                    string
}

// verdict is what was told of the same manual; nil where nothing is known.
func (m *memory) verdict() *Verdict {
	if m == nil {
		return nil
	}
	var k keptVerdict
	if !decode(m.store.Get(m.verdictKey()), &k) {
		return nil
	}
	return k.restored(m.tree)
}

// restored is nil where the findings are not of these files.
func (k *keptVerdict) restored(tree *source.Tree) *Verdict {
	list, err := finding.Restore(k.Findings, check.Catalogue(), tree.File)
	if err != nil {
		return nil
	}
	return &Verdict{list, k.Procedures, k.InUse, k.Unissued, k.Language}
}

func keptOf(v *Verdict, tree *source.Tree) keptVerdict {
	list, err := finding.Keep(v.Findings, tree.File)
	if err != nil {
		panic(err) // plain values: it cannot fail
	}
	return keptVerdict{list, v.Procedures, v.InUse, v.Unissued, v.Language}
}

// told keeps what is told of the manual.
func (m *memory) told(v *Verdict) {
	if m == nil || m.changed() {
		return
	}
	_ = m.store.Put(m.verdictKey(), encode(keptOf(v, m.tree)))
}

// keptSite is how the site stood that was last built in a place.
type keptSite struct {
	Of                   []byte // of what it was built: the key of the verdict
	Site, Readings       []byte // the sums of their files
	Pages, ReadingsPages int
}

// keptPages is what the pages of a site were made from.
type keptPages struct {
	Of     []byte
	Past   *past  // the manual; nil where it is not to be known again
	Rows   []byte // the sum by which the rows of procedures are found: most edits move none
	Coded  bool
	Survey *front.Survey
	Book   *search.Book
}

// built is what came of the last build, where the same is asked for and what it
// wrote stands as it was written; nil elsewhere.
func (m *memory) built(k *keptSite) *Result {
	v := m.verdict()
	if v == nil {
		return nil
	}
	r := &Result{Tree: m.tree, Verdict: *v, Unchanged: true}
	if r.Stopped() {
		return r
	}
	if k == nil || !bytes.Equal(k.Of, m.verdictKey()) {
		return nil
	}
	stands := publish.Stands(m.o.To, k.Site)
	if stands == nil {
		return nil
	}
	r.Kept = stands.Kept
	if m.o.Readings != "" {
		if stands = publish.Stands(m.o.Readings, k.Readings); stands == nil {
			return nil
		}
		r.KeptReadings = stands.Kept
	}
	r.Pages, r.ReadingsPages = k.Pages, k.ReadingsPages
	return r
}

// published keeps how the site stands that was put in place, and what its pages
// were made from.
func (m *memory) published(r *Result, s keptPages) {
	if m == nil || m.changed() {
		return
	}
	k := keptSite{Of: m.verdictKey(), Pages: r.Pages, ReadingsPages: r.ReadingsPages}
	site, err := publish.Look(m.o.To)
	if err != nil {
		return
	}
	k.Site = site.Sum
	if m.o.Readings != "" {
		if site, err = publish.Look(m.o.Readings); err != nil {
			return
		}
		k.Readings = site.Sum
	}
	_ = m.store.Put(m.siteKey(), encode(k))
	if s.Of = k.Of; s.Past != nil {
		_ = m.store.Put(m.pagesKey(), encode(s))
	}
}

// count counts the procedures of a checked manual.
func (r *Result) count() {
	r.Procedures, r.Unissued = len(r.Manual.Procedures), len(issue.Unissued(r.Manual))
	for _, p := range r.Manual.Procedures {
		if p.Issued() {
			r.InUse++
		}
	}
}

func encode(v any) []byte {
	var out bytes.Buffer
	if err := gob.NewEncoder(&out).Encode(v); err != nil {
		panic(err) // plain values: it cannot fail
	}
	return out.Bytes()
}

func decode(data []byte, into any) bool {
	return data != nil && gob.NewDecoder(bytes.NewReader(data)).Decode(into) == nil
}
