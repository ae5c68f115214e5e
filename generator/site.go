package generator

import (
	"bytes"
	"context"
	"io"
	"path/filepath"
	"slices"
	"sync"

	"baybinder/generator/base/finding"
	"baybinder/generator/language"
	"baybinder/generator/language/shape"

	"baybinder/generator/base/parallel"
	"baybinder/generator/model"
	"baybinder/generator/read/record"
	"baybinder/generator/show/front"
	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page"
	"baybinder/generator/show/procedure"
	"baybinder/generator/show/publish"
	"baybinder/generator/show/readings"
	"baybinder/generator/show/register"
	"baybinder/theme"
)

// leaf is one page to write: its path in the site, and how to write it.
type leaf struct {
	name  string
	write func(w *bytes.Buffer) // nil where the page stands in the last site as it is to be
}

// where is the same page; it stands as it is to be unless something is so.
func (l leaf) where(so bool) leaf {
	if !so {
		l.write = nil
	}
	return l
}

// leaves are the pages of a site.
func leaves(s *pages) []leaf {
	return append(finished(s.Site, unfinished(s)), translated(s)...)
}

// leave leaves those pages as they are that stand in the last site as they are
// to be, and says how many.
func (s *pages) leave(all []leaf) (stood int) {
	if s.standing == nil {
		return 0
	}
	stand := s.standing()
	for i := range all {
		if stand[all[i].name] {
			all[i].write = nil
			stood++
		}
	}
	return stood
}

// finished are pages with their computed numbers as links, and with the language
// of the words that they borrow.
func finished(s *page.Site, all []leaf) []leaf {
	for i, l := range all {
		all[i].write = func(w *bytes.Buffer) {
			text := sheetOfPaper()
			l.write(text)
			s.Finish(w, text.Bytes(), workings)
			paper.Put(text)
		}
	}
	return all
}

// whole is one page as finished writes it.
func whole(s *page.Site, write func(w *bytes.Buffer)) []byte {
	var text, done bytes.Buffer
	write(&text)
	s.Finish(&done, text.Bytes(), workings)
	return done.Bytes()
}

// workings writes the workings of a page's numbers.
func workings(to *bytes.Buffer, w page.Workings) { theme.WriteWorkings(to, w) }

// unfinished are the pages in the shop's language as their templates write them.
func unfinished(s *pages) []leaf {
	return each(s.snags(s.others(&page.Change{All: true})), s.Shown, s.writeProcedure)
}

// others are the pages that are of no procedure, but for the writer's list: to be
// written where a change reaches them. A new page is one line here, and takes what
// it tells of procedures from their rows.
func (s *pages) others(c *page.Change) []leaf {
	m := s.Manual
	all := []leaf{
		leaf{"index.html", func(w *bytes.Buffer) { theme.WriteFront(w, s.front.Front()) }}.where(c.InLists()),
		leaf{"search.html", func(w *bytes.Buffer) { theme.WriteSearch(w, s.front.Search()) }}.where(c.All),
	}
	for _, index := range s.register.Indexes() {
		all = append(all, leaf{index.Here, func(w *bytes.Buffer) { theme.WriteIndex(w, index) }}.where(c.InIndexes()))
	}
	for _, sheet := range s.register.Sheets() {
		all = append(all, leaf{sheet.At, func(w *bytes.Buffer) { theme.WriteLabels(w, s.register.Labels(sheet)) }}.where(c.All || c.Shelf))
	}
	for _, machine := range append([]*model.Machine{nil}, m.Machines...) {
		for _, l := range s.front.Lists(machine) {
			all = append(all, leaf{l.At, func(w *bytes.Buffer) { theme.WriteProcedures(w, s.front.Procedures(l, machine)) }}.where(c.InList(machine)))
		}
	}
	for _, x := range m.Machines {
		all = append(all, leaf{page.PageOf(x), func(w *bytes.Buffer) { theme.WriteMachine(w, s.register.Machine(x)) }}.where(c.InList(x)))
	}
	for _, j := range s.Counted() {
		name := s.RecordPageOf(j)
		all = append(all, leaf{name, func(w *bytes.Buffer) { theme.WriteRecord(w, s.Record(s.RecordFrame(name, j), j, false)) }}.where(c.All))
	}
	for _, x := range m.Machines {
		if len(x.Fasteners) > 0 {
			all = append(all, leaf{register.CardOf(x, "torque"), func(w *bytes.Buffer) { theme.WriteTorqueCard(w, s.register.TorqueCard(x)) }}.where(c.All))
		}
		if len(x.Fluids) > 0 {
			all = append(all, leaf{register.CardOf(x, "fluids"), func(w *bytes.Buffer) { theme.WriteFluidCard(w, s.register.FluidCard(x)) }}.where(c.All))
		}
	}
	for _, l := range s.entries() {
		all = append(all, l.where(c.Used(l.name)))
	}
	for _, rest := range s.register.Rests() {
		all = append(all, leaf{rest.At, func(w *bytes.Buffer) { theme.WriteEntry(w, s.register.Rest(rest)) }}.where(c.Used(page.PageOf(rest.Of))))
	}
	return all
}

// entries are the pages of plans and of the entries of registers.
func (s *pages) entries() []leaf {
	m := s.Manual
	all := each(nil, m.Plans, func(w *bytes.Buffer, p *model.Plan) {
		theme.WriteAssignment(w, readings.Plans{Site: s.Site}.Assignment(p))
	})
	all = each(all, m.Tools, func(w *bytes.Buffer, t *model.Tool) { theme.WriteEntry(w, s.register.Tool(t)) })
	all = each(all, m.Supplies, func(w *bytes.Buffer, u *model.Supply) { theme.WriteEntry(w, s.register.Supply(u)) })
	all = each(all, m.Hazards, func(w *bytes.Buffer, h *model.Hazard) { theme.WriteEntry(w, s.register.Hazard(h)) })
	all = each(all, m.Holds, func(w *bytes.Buffer, h *model.Hold) { theme.WriteEntry(w, s.register.Hold(h)) })
	return each(all, m.Roles, func(w *bytes.Buffer, r *model.Role) { theme.WriteEntry(w, s.register.Role(r)) })
}

// snags are the pages of the writer's list, behind others.
func (s *pages) snags(all []leaf) []leaf {
	for _, part := range s.front.SnagPages() {
		all = append(all, leaf{part.At, func(w *bytes.Buffer) { theme.WriteSnags(w, s.front.Snags(part)) }})
	}
	return all
}

func (s *pages) writeProcedure(w *bytes.Buffer, p *model.Procedure) {
	theme.WriteProcedure(w, s.procedure.Procedure(p))
}

// translated are the procedures' pages in the shop's other languages.
func translated(s *pages) []leaf {
	var all []leaf
	for _, language := range s.Manual.Shop.Also {
		in := s.procedure.In(language)
		var here []leaf
		for _, p := range in.Translated() {
			here = append(here, leaf{page.PageIn(p, s.Manual.Shop.Language, language), func(w *bytes.Buffer) { theme.WriteProcedure(w, in.Procedure(p)) }})
		}
		all = append(all, finished(in.Site, here)...)
	}
	return all
}

func each[T any, P interface {
	*T
	model.Named
}](all []leaf, list []P, write func(*bytes.Buffer, P)) []leaf {
	for _, n := range list {
		all = append(all, leaf{page.PageOf(n), func(w *bytes.Buffer) { write(w, n) }})
	}
	return all
}

// pagesOf are the paths of a procedure's pages, in all languages that it may
// stand in.
func (s *pages) pagesOf(p *model.Procedure) []string {
	out := []string{page.PageOf(p)}
	for _, language := range s.Manual.Shop.Also {
		out = append(out, page.PageIn(p, s.Manual.Shop.Language, language))
	}
	return out
}

// pages makes the pages of a site, each room its own.
type pages struct {
	*jobs.Pages
	front     *front.Pages
	procedure *procedure.Pages
	register  *register.Pages
	standing  func() map[string]bool // which pages stand in the last site as they are to be; nil where that is not known
}

// pagesOf works out what the pages of a checked manual need.
func pagesOf(r *Result, o Options) *pages {
	done := jobs.Of(page.NewSite(r.Manual, r.Walks, r.Findings, o.Today, o.Preview))
	return &pages{Pages: done, front: front.Of(done), procedure: procedure.Of(done), register: register.Of(done)}
}

// staged is a whole site beside the last one, with the readings where they are
// asked for. It ends with commit or abort.
type staged struct {
	site, readings *publish.Site // nil where not begun, or ended
}

// stage writes every page, picture and style beside what stands.
func stage(ctx context.Context, r *Result, o Options, s *pages) (*staged, error) {
	if err := apart(o.Manual, o.To); err != nil {
		return nil, err
	}
	t := &staged{}
	if err := t.write(ctx, r, o, s); err != nil {
		t.abort()
		return nil, err
	}
	return t, nil
}

func (t *staged) write(ctx context.Context, r *Result, o Options, s *pages) (err error) {
	if o.Readings != "" {
		if err := separate(o); err != nil {
			return err
		}
		if t.readings, err = beginReadings(o.Readings, o.Waiting); err != nil {
			return err
		}
	}
	if t.site, err = publish.Begin(o.To, o.Waiting); err != nil {
		return err
	}
	if err := writeSite(ctx, t.site, r, s, o); err != nil || t.readings == nil {
		return err
	}
	return writeReadings(ctx, t.readings, r, s)
}

func (t *staged) abort() {
	for _, site := range []*publish.Site{t.readings, t.site} {
		if site != nil {
			site.Abort()
		}
	}
}

// commit puts all in place, and notes what was carried over.
func (t *staged) commit(r *Result) (err error) {
	if t.readings != nil {
		r.KeptReadings, err = t.readings.Commit()
		if t.readings = nil; err != nil {
			t.abort()
			return err
		}
	}
	r.Kept, err = t.site.Commit()
	return err
}

// apart refuses a site's folder that holds the manual, or is it: the swap
// would carry the manual away.
func apart(manual, to string) error {
	from, err := filepath.Abs(manual)
	if err != nil {
		return err
	}
	site, err := filepath.Abs(to)
	if err != nil {
		return err
	}
	if holds(site, from) {
		return finding.Refuse("the site's folder %s holds the manual: name another with --to", to)
	}
	return nil
}

func writeSite(ctx context.Context, site *publish.Site, r *Result, s *pages, o Options) error {
	all := leaves(s)
	r.Stood = s.leave(all) // while no other build can touch the last site
	index := make(chan map[string][]byte, 1)
	go func() { // beside the pages: it takes one core a while
		r.book = s.front.Book()
		index <- r.book.Files()
	}()
	if err := putPages(ctx, site, all, o.Progress); err != nil {
		return err
	}
	r.Pages = len(all)
	for name, data := range <-index {
		if err := site.Put("search/"+name, data); err != nil {
			return err
		}
	}
	return writeFiles(site, r, o.Preview)
}

// paper is what pages are written on, before they go to the disk. Most procedures
// find room on a new one.
var paper = sync.Pool{New: func() any { return bytes.NewBuffer(make([]byte, 0, 48<<10)) }}

// sheetOfPaper is an empty one.
func sheetOfPaper() *bytes.Buffer {
	text := paper.Get().(*bytes.Buffer)
	text.Reset()
	return text
}

// sheet is a page that is ready for the disk.
type sheet struct {
	name string
	text *bytes.Buffer // nil where it stands there
}

// waiting is how many sheets may wait for the disk.
const waiting = 64

// putPages makes pages side by side, and writes them one after another: a file
// system makes the files of a folder one at a time, and a processor that waits
// for its turn could make the next page. progress, which may be nil, is told how
// many of them are written.
func putPages(ctx context.Context, site *publish.Site, pages []leaf, progress func(done, of int)) error {
	ctx, stop := context.WithCancel(ctx)
	defer stop()
	ready, failed := make(chan sheet, waiting), make(chan error, 1)
	done := 0
	written := func() {
		if done++; progress != nil {
			progress(done, len(pages))
		}
	}
	go func() { failed <- putSheets(site, ready, written, stop) }()
	makePages(ctx, pages, ready)
	if err := <-failed; err != nil {
		return err
	}
	return ctx.Err()
}

func makePages(ctx context.Context, pages []leaf, ready chan<- sheet) {
	defer close(ready) // also where a page panics
	parallel.Each(len(pages), func(i int) {
		if ctx.Err() != nil {
			return
		}
		if pages[i].write == nil {
			ready <- sheet{pages[i].name, nil}
			return
		}
		text := sheetOfPaper()
		pages[i].write(text)
		ready <- sheet{pages[i].name, text}
	})
}

// putSheets writes what is ready, and calls written after each. At the first
// failure it calls stop, and takes the rest without writing it.
func putSheets(site *publish.Site, ready <-chan sheet, written, stop func()) (err error) {
	for s := range ready {
		if err == nil {
			if err = s.put(site); err != nil {
				stop()
			}
			written()
		}
		if s.text != nil {
			paper.Put(s.text)
		}
	}
	return err
}

func (s *sheet) put(site *publish.Site) error {
	if s.text == nil {
		return site.Keep(s.name)
	}
	return site.Put(s.name, s.text.Bytes())
}

// writeFiles copies the theme's files and the pictures that pages show. What
// only drafts show is for a preview alone.
func writeFiles(site *publish.Site, r *Result, preview bool) error {
	files, err := theme.Files(spoken(r.Manual.Shop)...)
	if err != nil {
		return err
	}
	files["record.schema.json"] = record.Schema
	for name, data := range files {
		if err := site.Put("theme/"+name, data); err != nil {
			return err
		}
	}
	for name, issued := range r.Manual.Pictures {
		if !issued && !preview {
			continue
		}
		if err := site.Copy(name, func() (io.ReadCloser, error) { return r.Tree.Open(name) }); err != nil {
			return finding.Refuse("the picture %s: %s", name, err)
		}
	}
	return nil
}

// spoken are the languages in which a shop's pages speak, each once.
func spoken(shop *model.Shop) []*shape.Language {
	var out []*shape.Language
	for _, tag := range append([]string{shop.Language}, shop.Also...) {
		if l := language.Of(tag); !slices.Contains(out, l) {
			out = append(out, l)
		}
	}
	return out
}
