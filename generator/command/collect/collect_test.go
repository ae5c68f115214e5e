package collect

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"sync"
	"testing"
	"time"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/needed"
	"baybinder/generator/command/browse"
)

func must(t *testing.T, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

// published is a page as the site has it.
const published = `<!DOCTYPE html><head><meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self' file:"></head><body><h1>Page</h1></body>`

// bench is a manual, its site, and the server before it.
type bench struct {
	manual    string
	collector *Collector
	handler   http.Handler
}

func newBench(t *testing.T) *bench {
	t.Helper()
	b := &bench{manual: t.TempDir()}
	site := t.TempDir()
	must(t, os.Mkdir(filepath.Join(site, "procedures"), 0o755))
	for _, name := range []string{"index.html", "procedures/close-the-lid.html", "procedures/close-the-lid.es.html", "procedures/index.html"} {
		must(t, os.WriteFile(filepath.Join(site, filepath.FromSlash(name)), []byte(published), 0o644))
	}
	var err error
	b.collector, err = New(b.manual, &Devices{Now: time.Now, Say: logged(t)}, logged(t))
	must(t, err)
	b.handler = browse.Guard("0.0.0.0", b.collector.Wrap(browse.Handler(site)), RecordsAt, DeviceAt)
	return b
}

func (b *bench) ask(r *http.Request) *http.Response {
	w := httptest.NewRecorder()
	b.handler.ServeHTTP(w, r)
	return w.Result()
}

// get reads a page of the site.
func (b *bench) get(t *testing.T, address string) string {
	t.Helper()
	got := b.ask(httptest.NewRequest("GET", "http://localhost"+address, nil))
	body, err := io.ReadAll(got.Body)
	must(t, err)
	return string(body)
}

var tokenIn = regexp.MustCompile(`data-token="([0-9a-f]{64})"`)

// sent is a request as the page of the lid sends it from this machine.
func (b *bench) sent(t *testing.T, text string) *http.Request {
	t.Helper()
	token := tokenIn.FindStringSubmatch(b.get(t, "/procedures/close-the-lid.html"))
	if token == nil {
		t.Fatal("the page has no token")
	}
	r := httptest.NewRequest("POST", "http://localhost"+RecordsAt, strings.NewReader(text))
	r.RemoteAddr = "127.0.0.1:4711"
	r.Header.Set("Origin", "http://localhost")
	r.Header.Set("Sec-Fetch-Site", "same-origin")
	r.Header.Set("Content-Type", "application/json")
	r.Header.Set("Baybinder-Token", token[1])
	return r
}

// finished is the record of a job, saved at a minute of its hour.
func finished(minute int) string {
	return fmt.Sprintf(`{"record": 1, "shop": "Shop", "procedure": "close-the-lid", "title": "Close the lid", "revision": "", "unit": {"serial": "", "options": []}, "worker": "A. V.",
"started": "2026-05-04T10:00:00.000+02:00", "saved": "2026-05-04T10:%02d:00.000+02:00",
"steps": [{"step": "1.1", "id": "s1-1", "words": "Close the lid.", "state": "done", "at": "2026-05-04T10:02:00.000+02:00"}], "holds": [], "gaps": [], "notes": [], "clock": []}`, minute)
}

// kept are the files of the manual, with what they hold.
func (b *bench) kept(t *testing.T) map[string]string {
	t.Helper()
	out := map[string]string{}
	must(t, filepath.WalkDir(b.manual, func(name string, d os.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := os.ReadFile(name)
		rel, _ := filepath.Rel(b.manual, name)
		out[filepath.ToSlash(rel)] = string(data)
		return err
	}))
	return out
}

func TestARecordGoesIntoTheManual(t *testing.T) {
	b := newBench(t)
	for n, c := range []struct {
		text, name string
	}{
		{finished(30), "records/close-the-lid-2026-05-04-10-30.json"},
		{finished(30), "records/close-the-lid-2026-05-04-10-30.json"}, // once more, as after a lost answer
		{strings.Replace(finished(30), "A. V.", "C. N.", 1), "records/close-the-lid-2026-05-04-10-30-2.json"},
		{finished(31), "records/close-the-lid-2026-05-04-10-31.json"},
	} {
		if got := b.ask(b.sent(t, c.text)); got.StatusCode != http.StatusCreated {
			t.Fatalf("%d: got %d", n, got.StatusCode)
		}
		if got := b.kept(t)[c.name]; got != c.text {
			t.Errorf("%d: %s holds %q", n, c.name, got)
		}
	}
	if kept := b.kept(t); len(kept) != 3 {
		t.Errorf("%d files are kept: %v", len(kept), kept)
	}
}

// TestWhatIsRefused names every reason for which nothing is taken; then the
// manual is as it was.
func TestWhatIsRefused(t *testing.T) {
	header := func(name, value string) func(*http.Request) {
		return func(r *http.Request) { r.Header.Set(name, value) }
	}
	without := func(name string) func(*http.Request) { return func(r *http.Request) { r.Header.Del(name) } }
	for _, c := range []struct {
		name   string
		text   string
		change func(*http.Request)
		status int
	}{
		{"another site's page", finished(1), header("Origin", "http://evil.example"), 403},
		{"another port of this machine", finished(1), header("Origin", "http://localhost:81"), 403},
		{"a page without an origin", finished(1), header("Origin", "null"), 403},
		{"no origin", finished(1), without("Origin"), 403},
		{"a page of the same name elsewhere", finished(1), header("Sec-Fetch-Site", "cross-site"), 403},
		{"another name of this machine", finished(1), func(r *http.Request) { r.Host = "evil.example"; r.Header.Set("Origin", "http://evil.example") }, 421},
		{"no token", finished(1), without("Baybinder-Token"), 403},
		{"a wrong token", finished(1), header("Baybinder-Token", strings.Repeat("0", 64)), 403},
		{"the page of another procedure", strings.Replace(finished(1), "close-the-lid", "open-the-lid", 1), func(*http.Request) {}, 403},
		{"a form of a page", finished(1), header("Content-Type", "text/plain"), 415},
		{"no kind", finished(1), without("Content-Type"), 415},
		{"no JSON", "{", func(*http.Request) {}, 422},
		{"nothing", "", func(*http.Request) {}, 422},
		{"a field that the form has not", strings.Replace(finished(1), `"worker"`, `"path": "../../x", "worker"`, 1), func(*http.Request) {}, 422},
		{"a procedure that is a path", strings.Replace(finished(1), "close-the-lid", "../../x", 1), func(*http.Request) {}, 422},
		{"a time that is none", strings.Replace(finished(1), "10:00:00", "10:61:00", 1), func(*http.Request) {}, 422},
		{"another form", strings.Replace(finished(1), `"record": 1`, `"record": 2`, 1), func(*http.Request) {}, 422},
		{"too much", strings.Replace(finished(1), "A. V.", strings.Repeat("A", longest), 1), func(*http.Request) {}, 413},
		{"a device that has typed no code", finished(1), func(r *http.Request) { r.RemoteAddr = "192.0.2.7:4711" }, 401},
		{"a device that shows something else", finished(1), func(r *http.Request) {
			r.RemoteAddr = "192.0.2.7:4711"
			r.AddCookie(&http.Cookie{Name: cookie, Value: strings.Repeat("0", 64)})
		}, 401},
		{"a way that is no way in", finished(1), func(r *http.Request) { r.URL.Path = "/.collect/other" }, 405},
		{"a page", finished(1), func(r *http.Request) { r.URL.Path = "/procedures/close-the-lid.html" }, 405},
		{"another method", finished(1), func(r *http.Request) { r.Method = "PUT" }, 405},
	} {
		t.Run(c.name, func(t *testing.T) {
			b := newBench(t)
			r := b.sent(t, c.text)
			c.change(r)
			if got := b.ask(r); got.StatusCode != c.status {
				body, _ := io.ReadAll(got.Body)
				t.Errorf("got %d %s", got.StatusCode, body)
			}
			if kept := b.kept(t); len(kept) != 0 {
				t.Errorf("the manual has %v", kept)
			}
		})
	}
}

// TestADeviceTypesTheCodeOnce: a device of the network sends after it has typed
// the code, and need not type it again. Who tries codes in turn is stopped.
func TestADeviceTypesTheCodeOnce(t *testing.T) {
	b := newBench(t)
	typed := func(code string) *http.Response {
		r := b.sent(t, code)
		r.URL.Path, r.RemoteAddr = DeviceAt, "192.0.2.7:4711"
		return b.ask(r)
	}
	if !regexp.MustCompile(`^\d{6}$`).MatchString(b.collector.Code()) {
		t.Errorf("the code is %q", b.collector.Code())
	}
	if got := typed("1234567"); got.StatusCode != 403 || len(got.Cookies()) > 0 {
		t.Errorf("a wrong code: %d %v", got.StatusCode, got.Cookies())
	}
	if got := typed(strings.Repeat("1", 200)); got.StatusCode != 413 {
		t.Errorf("a long code: %d", got.StatusCode)
	}
	elsewhere := b.sent(t, b.collector.Code())
	elsewhere.URL.Path = DeviceAt
	elsewhere.Header.Set("Origin", "http://evil.example")
	if got := b.ask(elsewhere); got.StatusCode != 403 || len(got.Cookies()) > 0 {
		t.Errorf("the code from another site's page: %d", got.StatusCode)
	}
	got := typed(" " + b.collector.Code() + "\n")
	if got.StatusCode != 204 || len(got.Cookies()) != 1 {
		t.Fatalf("the code: %d", got.StatusCode)
	}
	had := got.Cookies()[0]
	if !had.HttpOnly || had.SameSite != http.SameSiteStrictMode || strings.Contains(had.Value, b.collector.Code()) {
		t.Errorf("the device is known by %v", had)
	}
	for minute := range 2 {
		r := b.sent(t, finished(minute))
		r.RemoteAddr = "192.0.2.7:4711"
		r.AddCookie(had)
		if got := b.ask(r); got.StatusCode != 201 {
			t.Errorf("got %d", got.StatusCode)
		}
	}
	for range mostWrong {
		typed("1234567")
	}
	if got := typed(b.collector.Code()); got.StatusCode != 429 {
		t.Errorf("after many wrong codes: %d", got.StatusCode)
	}
}

// TestOnlyServedPagesMaySend: the copy that is served of a procedure's page may
// send to its own server; no other page may, and the file of the site is as it
// was.
func TestOnlyServedPagesMaySend(t *testing.T) {
	b := newBench(t)
	for address, want := range map[string]bool{
		"/procedures/close-the-lid.html": true, "/procedures/close-the-lid.es.html": true, "/procedures/close-the-lid.html?unit=112": true,
		"/": false, "/index.html": false, "/procedures/": false, "/procedures/none.html": false,
	} {
		page := b.get(t, address)
		if got := strings.Contains(page, "connect-src 'self'") && strings.Contains(page, scriptAt) && tokenIn.MatchString(page); got != want || !want && strings.Contains(page, "connect") {
			t.Errorf("%s may send: %v\n%s", address, got, page)
		}
	}
	if own, es := tokenIn.FindString(b.get(t, "/procedures/close-the-lid.html")), tokenIn.FindString(b.get(t, "/procedures/close-the-lid.es.html")); own != es {
		t.Error("the two languages of one procedure have two tokens")
	}
	head := b.ask(httptest.NewRequest("HEAD", "http://localhost/procedures/close-the-lid.html", nil))
	if head.StatusCode != 200 {
		t.Errorf("HEAD: %d", head.StatusCode)
	}
	if got := b.get(t, scriptAt); got != string(script) {
		t.Errorf("the script is %.100q", got)
	}
}

// TestManySendAtOnce: of records with one name that are sent at once, each is
// kept, whole.
func TestManySendAtOnce(t *testing.T) {
	b := newBench(t)
	var all sync.WaitGroup
	for n := range 12 {
		r := b.sent(t, strings.Replace(finished(30), "A. V.", fmt.Sprintf("A. V. %d", n), 1))
		all.Go(func() {
			if got := b.ask(r); got.StatusCode != 201 {
				t.Errorf("got %d", got.StatusCode)
			}
		})
	}
	all.Wait()
	kept := b.kept(t)
	names := map[string]bool{}
	for name, text := range kept {
		var r struct{ Worker string }
		if err := json.Unmarshal([]byte(text), &r); err != nil || names[r.Worker] {
			t.Errorf("%s: %v, %q", name, err, r.Worker)
		}
		names[r.Worker] = true
	}
	if len(kept) != 12 {
		t.Errorf("%d files", len(kept))
	}
}

// TestNoFileIsWrittenOver: where a file stands it stays, also one that is no
// record, and a folder that leads elsewhere is not written into.
func TestNoFileIsWrittenOver(t *testing.T) {
	b := newBench(t)
	must(t, os.Mkdir(filepath.Join(b.manual, "records"), 0o755))
	const first = "records/close-the-lid-2026-05-04-10-30.json"
	must(t, os.WriteFile(filepath.Join(b.manual, first), []byte("mine"), 0o644))
	if got := b.ask(b.sent(t, finished(30))); got.StatusCode != 201 {
		t.Errorf("got %d", got.StatusCode)
	}
	if kept := b.kept(t); kept[first] != "mine" || len(kept) != 2 {
		t.Errorf("the manual has %v", kept)
	}
}

func TestAFolderThatLeadsElsewhereIsNotWrittenInto(t *testing.T) {
	b := newBench(t)
	elsewhere := t.TempDir()
	needed.Judge(t, os.Symlink(elsewhere, filepath.Join(b.manual, "records")) == nil, "a file system with symbolic links")
	if got := b.ask(b.sent(t, finished(30))); got.StatusCode != 500 {
		t.Errorf("got %d", got.StatusCode)
	}
	if there, err := os.ReadDir(elsewhere); err != nil || len(there) > 0 {
		t.Errorf("written: %v %v", there, err)
	}
}

// TestAnAnswerThatEndsEarlyIsRefused: a request that breaks off leaves nothing.
func TestAnAnswerThatEndsEarlyIsRefused(t *testing.T) {
	b := newBench(t)
	r := b.sent(t, "")
	r.Body = io.NopCloser(io.MultiReader(strings.NewReader(finished(1)[:200]), broken{}))
	if got := b.ask(r); got.StatusCode != 400 {
		t.Errorf("got %d", got.StatusCode)
	}
	if kept := b.kept(t); len(kept) != 0 {
		t.Errorf("the manual has %v", kept)
	}
}

type broken struct{}

func (broken) Read([]byte) (int, error) { return 0, errors.New("the line is cut") }

func TestThereMustBeAManual(t *testing.T) {
	if _, err := New(filepath.Join(t.TempDir(), "none"), &Devices{Now: time.Now}, logged(t)); err == nil || !strings.Contains(err.Error(), "no manual in") {
		t.Errorf("got %v", err)
	}
}

// logged tells in a test's log.
func logged(t *testing.T) func(finding.Words) {
	return func(w finding.Words) { t.Log(w) }
}
