package main

import (
	"context"
	"crypto/rand"
	"errors"
	"net/http"
	"os"
	"os/signal"
	"path/filepath"
	"strings"
	"sync"
	"syscall"

	"baybinder/generator"
	"baybinder/generator/base/finding"
	"baybinder/generator/check"
	"baybinder/generator/command/begin"
	"baybinder/generator/command/browse"
	"baybinder/generator/command/watch"
	"baybinder/generator/command/write"
	"baybinder/generator/model"
)

type watchCommand struct {
	siteFlag
	Port  uint16 `default:"0" placeholder:"PORT" help:"Which port (default: one that is free)."`
	Write bool   `help:"Let the manual be written in its pages, from this machine only."`
}

// Help is the longer text of watch --help.
func (*watchCommand) Help() string {
	return "A procedure that is saved is shown at once; the rest of what it changes follows. Drafts are shown too, marked as drafts. Where there is an error, the last good page stays, with the finding over it. " +
		"With --write each procedure's page has a switch to write in it: what is saved goes into the manual's files, and nothing is issued by it. " +
		"Only this machine can see the pages. Ctrl-C ends it."
}

// Run builds and serves until Ctrl-C.
func (c *watchCommand) Run(g *globals, d *output) error {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	if c.Write {
		if err := begin.Bare(g.Manual, "My shop"); err != nil {
			return err
		}
	}
	folder, err := watch.Open(g.Manual, c.To)
	if err != nil {
		if _, why := generator.Check(g.options()); why != nil {
			return why // the same words as every command's
		}
		return err
	}
	defer folder.Close()
	book := &shelf{today: g.options().Today}
	defer book.clear()
	browsers := &watch.Browsers{Handbook: book.build}
	o := g.options()
	o.To, o.Preview, o.Waiting = c.To, true, d.waitsFor
	serve := browse.Options{Folder: c.To, Port: int(c.Port), Wrap: browsers.Wrap}
	desk, err := c.desk(o, browsers, &serve)
	if err != nil {
		return err
	}
	site, err := browse.Open(serve)
	if err != nil {
		return err
	}
	d.inform("%s shows %s as it becomes", site.URL(), g.Manual)
	w := &writing{session: generator.NewSession(o), to: c.To, desk: d, browsers: browsers}
	switch err := w.all(ctx); {
	case ctx.Err() != nil:
		return nil // Ctrl-C during the first build
	case err != nil:
		return err // nothing was ever shown
	}
	ended := make(chan struct{})
	go func() {
		defer close(ended)
		folder.Each(ctx, func(names []string) {
			if desk != nil {
				desk.Changed(names)
			}
			w.changed(ctx, names)
		})
		w.stop()
	}()
	err = site.Serve(ctx)
	stop() // where serving failed, the watching ends too
	<-ended
	return err
}

// desk is where pages are written, nil where they are only read. The site is
// served with it.
func (c *watchCommand) desk(o generator.Options, browsers *watch.Browsers, serve *browse.Options) (*write.Desk, error) {
	if !c.Write {
		return nil, nil
	}
	desk, err := write.New(o.Manual, generator.NewWriting(o), rand.Text(), o.Today)
	if err != nil {
		return nil, err
	}
	browsers.Tags = desk.Tags
	serve.Takes = write.Takes()
	serve.Wrap = func(site http.Handler) http.Handler { return desk.Wrap(browsers.Wrap(desk.Pages(site))) }
	return desk, nil
}

// shelf holds the handbook's pages while a writer writes.
type shelf struct {
	today  model.Date
	folder string
}

// build builds them into a folder of their own.
func (s *shelf) build() (string, error) {
	folder, err := os.MkdirTemp("", "baybinder-handbook")
	if err != nil {
		return "", err
	}
	s.folder = folder
	pages := filepath.Join(folder, "pages")
	return pages, buildHandbook(pages, s.today)
}

// clear takes the pages away again.
func (s *shelf) clear() {
	if s.folder != "" {
		_ = os.RemoveAll(s.folder)
	}
}

// writing is what happens while a writer writes.
type writing struct {
	session  *generator.Session
	to       string
	desk     *output
	browsers *watch.Browsers

	mu   sync.Mutex // held while one tells
	told string     // the findings that stand on the terminal last

	cancel context.CancelFunc // of the build that is at work, or nil
	built  chan struct{}      // closed when it has ended
}

// changed shows the pages of what was saved, and builds everything behind it.
// A build that is at work is broken off: it has read what no longer stands.
func (w *writing) changed(ctx context.Context, names []string) {
	if w.cancel != nil {
		w.cancel()
	}
	w.shown(names)
	ctx, w.cancel = context.WithCancel(ctx)
	before, built := w.built, make(chan struct{})
	w.built = built
	go func() {
		defer close(built)
		if before != nil {
			<-before
		}
		if err := w.all(ctx); err != nil && !errors.Is(err, context.Canceled) {
			_ = w.desk.failed(err)
		}
	}()
}

// shown puts the pages of what was saved in place, and tells of them.
func (w *writing) shown(names []string) {
	defer w.browsers.Placing()()
	r, saved, err := w.session.Saved(names)
	if err != nil {
		_ = w.desk.failed(err)
	}
	if r != nil {
		w.show(r, saved)
	}
}

// stop waits for the build that is at work to end.
func (w *writing) stop() {
	if w.cancel != nil {
		w.cancel()
		<-w.built
	}
}

// show tells of pages that were put in place by themselves.
func (w *writing) show(r *generator.Result, saved []generator.Saved) {
	w.mu.Lock()
	defer w.mu.Unlock()
	told := w.tell(r)
	if r.Stopped() {
		w.browsers.Tell(false, told)
	}
	for _, s := range saved {
		w.desk.inform("%s is shown", s.Page)
		w.browsers.TellOf(s.Page, s.Step, told)
	}
}

// all builds everything, and tells of it here and in the open pages. The error
// says that the run itself failed.
func (w *writing) all(ctx context.Context) error {
	r, err := w.session.Build(ctx)
	w.mu.Lock()
	defer w.mu.Unlock()
	switch {
	case ctx.Err() != nil:
		return ctx.Err() // what came after is told instead
	case err != nil:
		w.browsers.Tell(false, []finding.Passage{{Text: w.desk.wrong(err)}})
		return err
	}
	told := w.tell(r)
	if !r.Stopped() {
		w.desk.inform("%s in %s", finding.Count(r.Pages, "%d page", "%d pages"), w.to)
	} else {
		w.desk.inform("nothing was published: %s", finding.Count(r.Errors(), "%d error", "%d errors"))
	}
	w.browsers.Tell(!r.Stopped(), told)
	return nil
}

// tell writes the findings on the terminal, unless they stand there already.
// The open pages are told in the shop's language.
func (w *writing) tell(r *generator.Result) []finding.Passage {
	w.browsers.Speak(r.Manual.Shop.Language)
	var told []finding.Passage
	if len(r.Findings) > 0 {
		told = finding.Report(r.Findings, finding.TextOptions{First: check.Causes(), Tongue: r.Tongue()})
	}
	if now := strings.TrimRight(finding.Plain(told), "\n"); now != w.told {
		w.told = now
		if now != "" {
			w.desk.text(now)
		}
	}
	return told
}
