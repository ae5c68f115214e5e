package watch

import (
	"cmp"
	"crypto/sha256"
	_ "embed"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"html"
	"net/http"
	"slices"
	"strconv"
	"strings"
	"sync"

	"baybinder/generator/base/finding"
	"baybinder/generator/command/browse"
	"baybinder/generator/command/served"
	"baybinder/generator/language"
	"baybinder/generator/language/words"
)

// The addresses that are not the site's. A site has no hidden files.
const (
	eventsAt = "/.watch"
	scriptAt = "/.watch.js"
	styleAt  = "/.watch.css"
	bookAt   = "/.handbook/"
)

var (
	//go:embed watch.js
	script []byte
	//go:embed watch.css
	style []byte
)

// News is how things stand in the site's folder.
type News struct {
	Stopped  bool              `json:"stopped"`  // the page that is shown is the last good one
	Findings []finding.Passage `json:"findings"` // in words, each in its language; none where there are none

	Words words.Watch `json:"words"` // of the box that shows them
}

// waitFor is how many news wait for a page that is slow to take them; of more
// than that the oldest are left out.
const waitFor = 16

// Browsers are the open pages that wait for news.
type Browsers struct {
	// Handbook is asked once for the folder of the handbook's pages, when they
	// are first looked at. Where it is nil, no page leads to them.
	Handbook func() (folder string, err error)

	// Tags are what else a page of the site gets at its end, by its address; nil
	// for nothing.
	Tags func(page string) string

	book    sync.Once
	pages   http.Handler // of the handbook
	placing sync.RWMutex // held while a page is put in place and told of
	mu      sync.Mutex
	written map[string]place // by page: where the writer was last
	last    News
	speaks  string // the language of the box
	waiting map[chan News]bool
}

// Speak says in which language, the shop's, the box of findings speaks from now
// on: English before the first time.
func (b *Browsers) Speak(language string) {
	b.mu.Lock()
	defer b.mu.Unlock()
	b.speaks = language
}

// Tell tells every open page how a build ended.
func (b *Browsers) Tell(published bool, findings []finding.Passage) {
	b.tell(News{Stopped: !published, Findings: findings})
}

// place is where in a page a reader looks, an id, as long as the page has a state;
// "" for that of the next time that it is asked for.
type place struct{ step, state string }

// Placing begins to put pages in place: until it is done, which tells of them, no open
// page is told its state. One that asks for another reason would come upon the new page,
// and not know the step.
func (b *Browsers) Placing() (done func()) {
	b.placing.Lock()
	return b.placing.Unlock
}

// TellOf tells of one page that was put in place, and of where in it a reader
// looks.
func (b *Browsers) TellOf(page, step string, findings []finding.Passage) {
	b.mu.Lock()
	if b.written == nil {
		b.written = map[string]place{}
	}
	b.written["/"+page] = place{step: step}
	b.mu.Unlock()
	b.tell(News{Findings: findings})
}

// stepOf is where the writer was last in a page that has a state, "" where something
// else changed the page since.
func (b *Browsers) stepOf(page, state string) string {
	b.mu.Lock()
	defer b.mu.Unlock()
	last, is := b.written[page]
	switch {
	case !is:
		return ""
	case last.state == "":
		last.state = state
		b.written[page] = last
	case last.state != state:
		delete(b.written, page)
		return ""
	}
	return last.step
}

func (b *Browsers) tell(n News) {
	b.mu.Lock()
	defer b.mu.Unlock()
	n.Words, n.Findings = language.Of(b.speaks).Watch, marked(n.Findings)
	b.last = n
	for c := range b.waiting {
		if len(c) == cap(c) {
			select {
			case <-c:
			default: // it was taken just now
			}
		}
		c <- n // nobody else sends, so there is room
	}
}

// marked are passages with the language of each, English too, to the end of the last
// line.
func marked(told []finding.Passage) []finding.Passage {
	out := slices.Clone(told)
	for i, p := range told {
		out[i].Lang = cmp.Or(p.Lang, language.Default().Code)
	}
	if n := len(out); n > 0 {
		out[n-1].Text = strings.TrimRight(out[n-1].Text, "\n")
	}
	return out
}

// join waits for news; how things stand is the first.
func (b *Browsers) join() chan News {
	b.mu.Lock()
	defer b.mu.Unlock()
	if b.waiting == nil {
		b.waiting = map[chan News]bool{}
	}
	c := make(chan News, waitFor)
	c <- b.last
	b.waiting[c] = true
	return c
}

func (b *Browsers) leave(c chan News) {
	b.mu.Lock()
	defer b.mu.Unlock()
	delete(b.waiting, c)
}

// Wrap serves a site with the script that waits for news in every page.
func (b *Browsers) Wrap(site http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		switch {
		case r.URL.Path == eventsAt:
			b.events(w, r)
		case r.URL.Path == scriptAt:
			own(w, "text/javascript", script)
		case r.URL.Path == styleAt:
			own(w, "text/css", style)
		case b.Handbook != nil && strings.HasPrefix(r.URL.Path, bookAt):
			b.handbook(w, r)
		default:
			b.page(w, r, site)
		}
	})
}

// handbook answers with a page of the handbook.
func (b *Browsers) handbook(w http.ResponseWriter, r *http.Request) {
	b.book.Do(func() {
		folder, err := b.Handbook()
		b.pages = http.StripPrefix(strings.TrimSuffix(bookAt, "/"), browse.Handler(folder))
		if err != nil {
			b.pages = http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
				http.Error(w, err.Error(), http.StatusInternalServerError)
			})
		}
	})
	b.pages.ServeHTTP(w, r)
}

// linkFor is the link to the handbook that a page gets: the front page of the
// site has one.
func (b *Browsers) linkFor(r *http.Request) string {
	if b.Handbook == nil || r.URL.Path != "/" && r.URL.Path != "/index.html" {
		return ""
	}
	b.mu.Lock()
	defer b.mu.Unlock()
	say := language.Of(b.speaks).Watch
	return fmt.Sprintf(`<p class="watch-handbook"><a href="%sindex.html" lang="%s">%s</a></p>`, bookAt, say.Lang, html.EscapeString(say.Handbook))
}

func (b *Browsers) tagsFor(r *http.Request) string {
	if b.Tags == nil {
		return ""
	}
	return b.Tags(r.URL.Path)
}

// own sends a file of this package.
func own(w http.ResponseWriter, kind string, data []byte) {
	w.Header().Set("Content-Type", kind+"; charset=utf-8")
	w.Header().Set("Cache-Control", "no-cache")
	_, _ = w.Write(data)
}

// events sends the news, at once and whenever there are any (HTML, section
// 9.2, Server-sent events).
func (b *Browsers) events(w http.ResponseWriter, r *http.Request) {
	w.Header().Set("Content-Type", "text/event-stream")
	w.Header().Set("Cache-Control", "no-store")
	c := b.join()
	defer b.leave(c)
	flush := http.NewResponseController(w)
	for {
		select {
		case n := <-c:
			data, err := json.Marshal(n)
			if err != nil {
				return
			}
			if _, err := fmt.Fprintf(w, "data: %s\n\n", data); err != nil || flush.Flush() != nil {
				return
			}
		case <-r.Context().Done():
			return
		}
	}
}

// stepHeader says in an answer where in the page the writer was last.
const stepHeader = "Watch-Step"

// page answers as the site does, and adds the script to a page. Where there is no
// page, one that waits for it is the answer.
func (b *Browsers) page(w http.ResponseWriter, r *http.Request, site http.Handler) {
	a, state := b.standing(r, site)
	if state != "" {
		a.Body = addScript(served.Headed(a.Body, []byte(b.linkFor(r))), state, b.tagsFor(r))
		a.Header().Set("Content-Length", strconv.Itoa(len(a.Body)))
	}
	a.Send(w, r)
}

// standing is what the site answers, while no page is being put in place, and of a
// page its state, with the step there; "" of anything else.
func (b *Browsers) standing(r *http.Request, site http.Handler) (a *served.Answer, state string) {
	b.placing.RLock()
	defer b.placing.RUnlock()
	a = served.Ask(site, r, http.MethodGet) // the state of a page is asked for by HEAD
	if a.Status == http.StatusNotFound {
		a.Body = fmt.Appendf(nil, "<!DOCTYPE html><meta charset=\"utf-8\"><title>No page</title><p>%s</p>", html.EscapeString(strings.TrimSpace(string(a.Body))))
		a.Header().Set("Content-Type", "text/html; charset=utf-8")
	}
	if !strings.HasPrefix(a.Header().Get("Content-Type"), "text/html") {
		return a, ""
	}
	state = stateOf(a.Body)
	a.Header().Set("ETag", state)
	if step := b.stepOf(r.URL.Path, state); step != "" {
		a.Header().Set(stepHeader, step)
	}
	return a, state
}

// stateOf tells one state of a page from another, as HTTP's entity tag does.
func stateOf(page []byte) string {
	sum := sha256.Sum256(page)
	return `"` + hex.EncodeToString(sum[:12]) + `"`
}

// addScript adds the script to a page. The script is told which state it stands
// in: one that asked later might be told of the next. more is added with it.
func addScript(page []byte, state, more string) []byte {
	tags := fmt.Appendf(nil, `<link rel="stylesheet" href="%s"><script src="%s" data-page="%s" defer></script>`, styleAt, scriptAt, html.EscapeString(state))
	return served.Asking(page, append(tags, more...))
}
