package generator

import (
	"bytes"
	"maps"
	"sync"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/offers"
	"baybinder/generator/read/source"
	"baybinder/generator/show/page"
	"baybinder/theme"
)

// Writing is a manual while it is written in an editor: what the editor holds
// and has not saved stands over the files. What is typed is looked at twice, as
// a Session does: at once the procedure alone (Quick), then everything (Whole).
// It writes nothing. Of the calls only Whole may run beside others.
type Writing struct {
	o Options

	mu      sync.Mutex
	unsaved map[string]string
	last    *Result
	pages   *pages // made from it; nil where nobody has asked for one
	turn    int    // counts what changed
}

// NewWriting begins with nothing looked at and nothing unsaved.
func NewWriting(o Options) *Writing { return &Writing{o: o, unsaved: map[string]string{}} }

// Hold puts a text over a file.
func (w *Writing) Hold(name, text string) {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.unsaved[name] = text
	w.turn++
}

// Drop goes back to the file as it is saved.
func (w *Writing) Drop(name string) {
	w.mu.Lock()
	defer w.mu.Unlock()
	delete(w.unsaved, name)
	w.turn++
}

// Changed notes that files changed on the disk.
func (w *Writing) Changed() {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.turn++
}

// Quick looks at one held procedure again, and says whether it could: other
// files wait for Whole.
func (w *Writing) Quick(name string) bool {
	w.mu.Lock()
	defer w.mu.Unlock()
	text, held := w.unsaved[name]
	if w.last == nil || !held {
		return false
	}
	p := w.last.procedure(name)
	if p == nil {
		return false
	}
	w.last.Tree.Hold(name, text)
	if r := w.last.again(w.o, []edit{{p, *p}}); r != nil {
		w.last = r
		if w.pages != nil {
			w.pages.Changed(p)
		}
		return true
	}
	return false
}

// Whole looks at everything anew, and says whether nothing changed meanwhile:
// else it is to be called again. The error says that there is no manual.
func (w *Writing) Whole() (bool, error) {
	w.mu.Lock()
	o, turn := w.o, w.turn
	o.unsaved = maps.Clone(w.unsaved)
	w.mu.Unlock()
	r, err := Check(o)
	w.mu.Lock()
	defer w.mu.Unlock()
	if w.turn != turn {
		return false, err
	}
	if err == nil {
		w.last, w.pages = r, nil
	}
	return true, err
}

// Bench is the manual as an editor asks about it; nil before the first Whole.
func (w *Writing) Bench() *offers.Bench {
	w.mu.Lock()
	defer w.mu.Unlock()
	if w.last == nil {
		return nil
	}
	return w.last.Bench(w.o)
}

// Findings are those of the last look, in their order.
func (w *Writing) Findings() []finding.Finding {
	w.mu.Lock()
	defer w.mu.Unlock()
	if w.last == nil {
		return nil
	}
	return w.last.Findings
}

// Tree is what was read, unsaved texts in it; nil before the first Whole.
func (w *Writing) Tree() *source.Tree {
	w.mu.Lock()
	defer w.mu.Unlock()
	if w.last == nil {
		return nil
	}
	return w.last.Tree
}

// Page is a procedure's page as it would be published, drafts and errors
// included, and its path in the site; nothing where a file is no procedure's.
func (w *Writing) Page(name string) (at string, text []byte) {
	w.mu.Lock()
	defer w.mu.Unlock()
	if w.last == nil {
		return "", nil
	}
	p := w.last.procedure(name)
	if p == nil {
		return "", nil
	}
	if w.pages == nil {
		w.pages = pagesOf(w.last, w.o)
	}
	return page.PageOf(p), whole(w.pages.Site, func(to *bytes.Buffer) { theme.WriteProcedure(to, w.pages.procedure.Procedure(p)) })
}

// Today is the day that dated rules use.
func (w *Writing) Today() model.Date { return w.o.Today }
