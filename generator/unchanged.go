package generator

import (
	"bytes"
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

// TongueOf is what the findings of a manual are told in, before it is read: English
// where there is none.
func TongueOf(manual string) *finding.Tongue {
	m, _ := bind.Manual(source.ReadOne(manual, "shop.yaml"))
	return &language.Of(m.Shop.Language).Findings
}

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
	Site, Readings       publish.Trace
	Pages, ReadingsPages int
	Past                 *past // the manual, as it was then; nil where what its pages are made from is not known
	Coded                bool  // its steps name fault codes
	Survey               *front.Survey
	Book                 *search.Book
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
	stands := false
	if r.Kept, stands = k.Site.Stands(m.o.To); !stands {
		return nil
	}
	if m.o.Readings != "" {
		if r.KeptReadings, stands = k.Readings.Stands(m.o.Readings); !stands {
			return nil
		}
	}
	r.Pages, r.ReadingsPages = k.Pages, k.ReadingsPages
	return r
}

// published keeps how the site stands that was put in place.
func (m *memory) published(r *Result, k keptSite) {
	if m == nil || m.changed() {
		return
	}
	k.Of, k.Pages, k.ReadingsPages = m.verdictKey(), r.Pages, r.ReadingsPages
	var err error
	if k.Site, err = publish.TraceOf(m.o.To); err != nil {
		return
	}
	if m.o.Readings != "" {
		if k.Readings, err = publish.TraceOf(m.o.Readings); err != nil {
			return
		}
	}
	_ = m.store.Put(m.siteKey(), encode(k))
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
