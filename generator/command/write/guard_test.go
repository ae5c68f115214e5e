package write_test

import (
	"bytes"
	"errors"
	"maps"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"baybinder/generator/command/browse"
	"baybinder/generator/command/write"
)

// Only a page of this run is answered: each thing that gives another away is
// refused, and nothing is written (RFC 6454, 7 of Origin; Fetch Metadata Request
// Headers, 2.3; RFC 9110, 15.5). From memory.
//
// Known: FROM MEMORY.
func TestStrangersAreRefused(t *testing.T) {
	t.Parallel()
	d := newDesk(t, shop)
	d.must("open", write.Act{})
	save := []byte(`{"page":"procedures/job.html","state":"` + d.sheet.State + `","act":{"do":"words","step":"1.3","text":"Sweep twice."}}`)
	for name, c := range map[string]struct {
		spoil  func(r *http.Request)
		status int
	}{
		"another origin":      {func(r *http.Request) { r.Header.Set("Origin", "http://evil.example") }, http.StatusForbidden},
		"another port":        {func(r *http.Request) { r.Header.Set("Origin", "http://127.0.0.1:1") }, http.StatusForbidden},
		"no origin":           {func(r *http.Request) { r.Header.Del("Origin") }, http.StatusForbidden},
		"an opaque origin":    {func(r *http.Request) { r.Header.Set("Origin", "null") }, http.StatusForbidden},
		"known to be foreign": {func(r *http.Request) { r.Header.Set("Sec-Fetch-Site", "cross-site") }, http.StatusForbidden},
		"the same site":       {func(r *http.Request) { r.Header.Set("Sec-Fetch-Site", "same-site") }, http.StatusForbidden},
		"no token":            {func(r *http.Request) { r.Header.Del("Baybinder-Token") }, http.StatusForbidden},
		"another token":       {func(r *http.Request) { r.Header.Set("Baybinder-Token", token+"x") }, http.StatusForbidden},
		"a form":              {func(r *http.Request) { r.Header.Set("Content-Type", "application/x-www-form-urlencoded") }, http.StatusUnsupportedMediaType},
		"plain text":          {func(r *http.Request) { r.Header.Set("Content-Type", "text/plain") }, http.StatusUnsupportedMediaType},
		"no type":             {func(r *http.Request) { r.Header.Del("Content-Type") }, http.StatusUnsupportedMediaType},
		"reading":             {func(r *http.Request) { r.Method = http.MethodGet }, http.StatusMethodNotAllowed},
		"putting":             {func(r *http.Request) { r.Method = http.MethodPut }, http.StatusMethodNotAllowed},
	} {
		r := d.request("save", save)
		c.spoil(r)
		if status, said := d.send(r); status != c.status {
			t.Errorf("%s: %d %s", name, status, said)
		}
	}
	for name, c := range map[string]struct {
		route  string
		body   []byte
		status int
	}{
		"too much":         {"save", append(save[:len(save)-1], []byte(`,"x":"`+strings.Repeat("x", 600<<10)+`"}`)...), http.StatusRequestEntityTooLarge},
		"no JSON":          {"save", []byte("{"), http.StatusBadRequest},
		"another question": {"sell", []byte("{}"), http.StatusBadRequest},
		"a longer address": {"save/x", []byte("{}"), http.StatusBadRequest},
	} {
		if status, said := d.send(d.request(c.route, c.body)); status != c.status {
			t.Errorf("%s: %d %s", name, status, said)
		}
	}
	if d.file("procedures/job.md") != job {
		t.Error("something was written")
	}
	if status, said := d.send(d.request("save", save)); status != http.StatusOK {
		t.Errorf("the page itself: %d %s", status, said)
	}
}

// A refusal that a writer may meet, of a page left open over a new start, is in the
// shop's language.
func TestAnEarlierPageIsToldSoInTheShopsLanguage(t *testing.T) {
	t.Parallel()
	german := maps.Clone(shop)
	german["shop.yaml"] += "language: de\n"
	d := newDesk(t, german)
	d.must("open", write.Act{})
	r := d.request("save", []byte("{}"))
	r.Header.Set("Baybinder-Token", "of an earlier run")
	if status, said := d.send(r); status != http.StatusForbidden || strings.TrimSpace(string(said)) != "diese Seite ist von einem früheren Lauf: neu laden" {
		t.Errorf("%d %s", status, said)
	}
}

// From another machine nothing is answered, whatever it says of itself.
func TestAnotherMachineIsRefused(t *testing.T) {
	t.Parallel()
	d := newDesk(t, shop)
	for address, want := range map[string]int{"192.0.2.7:5000": http.StatusForbidden, "[2001:db8::7]:5000": http.StatusForbidden, "": http.StatusForbidden, "127.0.0.1:5000": http.StatusOK, "[::1]:5000": http.StatusOK} {
		r := d.request("open", []byte(`{"page":"procedures/job.html"}`))
		r.RemoteAddr, r.Host = address, r.URL.Host
		w := httptest.NewRecorder()
		d.server.Config.Handler.ServeHTTP(w, r)
		if w.Code != want {
			t.Errorf("from %q: %d", address, w.Code)
		}
	}
}

// The server that watch opens asks for its own name before anything else.
func TestAnotherNameIsRefused(t *testing.T) {
	t.Parallel()
	d := newDesk(t, shop)
	for host, want := range map[string]int{"evil.example": http.StatusMisdirectedRequest, "localhost:80": http.StatusOK} {
		r := d.request("open", []byte(`{"page":"procedures/job.html"}`))
		r.RemoteAddr, r.Host = "127.0.0.1:5000", host
		r.Header.Set("Origin", "http://"+host)
		w := httptest.NewRecorder()
		browse.Guard(browse.Loopback, d.server.Config.Handler, write.Takes()...).ServeHTTP(w, r)
		if w.Code != want {
			t.Errorf("asked for %s: %d", host, w.Code)
		}
	}
	if said := d.desk.Tags("/theme/baybinder.css") + d.desk.Tags("/pictures/a.svg"); said != "" {
		t.Errorf("what is no page gets %s", said)
	}
	if !strings.Contains(d.desk.Tags("/procedures/job.html"), token) {
		t.Error("a page is not told the token")
	}
}

// What leads out of the manual is not written, and is left as it was.
func TestNothingOutsideIsWritten(t *testing.T) {
	t.Parallel()
	outside := t.TempDir()
	put(t, outside, "job.md", job)
	for name, link := range map[string]func(folder string) error{
		"a file": func(folder string) error {
			return os.Symlink(filepath.Join(outside, "job.md"), filepath.Join(folder, "procedures", "job.md"))
		},
		"a folder": func(folder string) error {
			return errors.Join(os.Remove(filepath.Join(folder, "procedures")), os.Symlink(outside, filepath.Join(folder, "procedures")))
		},
	} {
		folder := t.TempDir()
		for file, text := range shop {
			if file != "procedures/job.md" {
				put(t, folder, file, text)
			}
		}
		must(t, os.MkdirAll(filepath.Join(folder, "procedures"), 0o755))
		must(t, link(folder))
		d := deskOf(t, folder)
		for _, route := range []string{"open", "save"} {
			if status, told := d.ask(route, write.Act{Do: "words", Step: "1.3", Text: "Sweep twice."}); status == http.StatusOK {
				t.Errorf("%s, %s: %+v", name, route, told)
			}
		}
		data, err := os.ReadFile(filepath.Join(outside, "job.md"))
		if err != nil || !bytes.Equal(data, []byte(job)) {
			t.Errorf("%s: outside it is %s %v", name, data, err)
		}
	}
}

// A page that names no procedure of the manual is none.
func TestOnlyProceduresAreWritten(t *testing.T) {
	t.Parallel()
	d := newDesk(t, shop)
	for _, page := range []string{"", "index.html", "../job.html", "/etc/passwd", "procedures/../procedures/job.html", "machines/index.html", "procedures/job.md", strings.Repeat("x", 9000)} {
		d.page = page
		if status, told := d.ask("open", write.Act{}); status != http.StatusUnprocessableEntity || told.Why != "NoPage" {
			t.Errorf("%.40s: %d %+v", page, status, told)
		}
	}
}

// A file that changed underneath is not written over: both versions are told.
func TestAFileThatChangedIsNotWrittenOver(t *testing.T) {
	t.Parallel()
	d := newDesk(t, shop)
	d.must("open", write.Act{})
	theirs := strings.Replace(job, "3. Sweep.", "3. Sweep the yard.", 1)
	put(t, d.folder, "procedures/job.md", theirs)
	status, told := d.ask("save", write.Act{Do: "words", Step: "1.3", Text: "Sweep twice."})
	if status != http.StatusConflict || told.Why != "FileChanged" || told.Theirs != theirs || told.Sheet == nil || told.Sheet.Phases[0].Steps[4].Text != "Sweep the yard." {
		t.Fatalf("%d %+v", status, told)
	}
	for _, route := range []string{"try", "choices", "find"} {
		d.sheet.State = "of long ago"
		if status, told := d.ask(route, write.Act{Do: "words", Step: "1.3", Text: "x", After: "1.3"}); status != http.StatusConflict {
			t.Errorf("%s: %d %+v", route, status, told)
		}
	}
	d.must("open", write.Act{})
	d.must("save", write.Act{Do: "words", Step: "1.3", Text: "Sweep twice."})
	put(t, d.folder, "procedures/job.md", theirs)
	if status, told := d.ask("undo", write.Act{}); status != http.StatusConflict || d.file("procedures/job.md") != theirs {
		t.Errorf("undone over another's work: %d %+v", status, told)
	}
}

// What cannot be done says so in a word of the tables, and leaves the file.
func TestWhatCannotBeDone(t *testing.T) {
	t.Parallel()
	d := newDesk(t, shop)
	d.must("open", write.Act{})
	for why, acts := range map[string][]write.Act{
		"NoStep":    {{Do: "words", Step: "9.9", Text: "x"}, {Do: "words", Text: "x"}, {Do: "split", Text: "A.\nB."}, {Do: "out", Step: "9"}, {Do: "move", Step: "x"}, {Do: "new", After: "7.1", Text: "x"}, {Do: "new", Phase: "none", Text: "x"}, {Do: "heading", Phase: "none", Text: "x"}},
		"NoWords":   {{Do: "words", Step: "1.3", Text: " \n\u00a0\t"}, {Do: "new", After: "1.3"}, {Do: "phase", Text: "***"}, {Do: "front", Field: "title", Text: "\n"}},
		"TooLong":   {{Do: "words", Step: "1.3", Text: strings.Repeat("x", 70<<10)}, {Do: "steps", After: "1.3", Texts: make([]string, 201)}},
		"NotEmpty":  {{Do: "out", Phase: "refit"}},
		"CannotNow": {{Do: "sell"}, {Do: "move", Step: "1.2", After: "1.2.1"}, {Do: "move", Step: "1.2.1", Phase: "refit"}, {Do: "split", Step: "1.2", Text: "A.\nB."}, {Do: "split", Step: "1.3"}, {Do: "front", Field: "people", Text: "0"}, {Do: "front", Field: "was", Text: "x"}, {Do: "mend"}},
	} {
		for _, act := range acts {
			if status, told := d.ask("save", act); status != http.StatusUnprocessableEntity || told.Why != why {
				t.Errorf("%.60v: %d %s, want %s", act, status, told.Why, why)
			}
		}
	}
	if d.file("procedures/job.md") != job {
		t.Error("something was written")
	}
}
