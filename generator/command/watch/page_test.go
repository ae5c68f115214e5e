package watch

import (
	"bufio"
	"encoding/json"
	"io"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"reflect"
	"regexp"
	"strings"
	"testing"
	"time"

	"baybinder/generator/base/finding"
	"baybinder/generator/language"
)

const sentPage = `<html><head><meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'"></head><body><p>Step</p></body></html>`

var added = regexp.MustCompile(`<link [^>]*><script src="/.watch.js" data-page="[^"]*" defer></script>`)

func serve(t *testing.T, b *Browsers) string {
	t.Helper()
	site := http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		switch r.URL.Path {
		case "/a.html":
			w.Header().Set("Content-Type", "text/html; charset=utf-8")
			http.ServeContent(w, r, "", time.Time{}, strings.NewReader(sentPage))
		case "/a.css":
			w.Header().Set("Content-Type", "text/css")
			_, _ = io.WriteString(w, "p{}</body>")
		default:
			http.Error(w, "no <such> page", http.StatusNotFound)
		}
	})
	server := httptest.NewServer(b.Wrap(site))
	t.Cleanup(server.Close)
	return server.URL
}

func get(t *testing.T, url string) (status int, body string) {
	t.Helper()
	request, err := http.NewRequest(http.MethodGet, url, nil)
	if err != nil {
		t.Fatal(err)
	}
	request.Header.Set("Range", "bytes=0-3")
	answer, err := http.DefaultClient.Do(request)
	if err != nil {
		t.Fatal(err)
	}
	defer answer.Body.Close()
	data, err := io.ReadAll(answer.Body)
	if err != nil {
		t.Fatal(err)
	}
	return answer.StatusCode, string(data)
}

func TestPagesGetTheScriptAndOtherFilesDoNot(t *testing.T) {
	url := serve(t, &Browsers{})
	status, page := get(t, url+"/a.html")
	without := added.ReplaceAllString(page, "")
	without = strings.Replace(without, " connect-src 'self';", "", 1)
	if status != http.StatusOK || page == without || without != sentPage {
		t.Errorf("got %d %q", status, page)
	}
	if _, css := get(t, url+"/a.css"); css != "p{}</body>" {
		t.Errorf("a style sheet became %q", css)
	}
	status, none := get(t, url+"/b.html")
	if status != http.StatusNotFound || !strings.Contains(none, "/.watch.js") || !strings.Contains(none, "no &lt;such&gt; page") {
		t.Errorf("a page that is not there: %d %q", status, none)
	}
	if _, js := get(t, url+"/.watch.js"); !strings.Contains(js, "EventSource") {
		t.Errorf("the script is %q", js)
	}
}

// A page that opens is told how things stand; then it is told of every build.
func TestNewsReachAnOpenPage(t *testing.T) {
	b := &Browsers{}
	url := serve(t, b)
	b.Tell(true, nil)
	answer, err := http.Get(url + "/.watch")
	if err != nil {
		t.Fatal(err)
	}
	defer answer.Body.Close()
	if kind := answer.Header.Get("Content-Type"); kind != "text/event-stream" {
		t.Errorf("the news are %s", kind)
	}
	lines := bufio.NewScanner(answer.Body)
	next := func() (n News) {
		for lines.Scan() {
			if data, is := strings.CutPrefix(lines.Text(), "data: "); is {
				if err := json.Unmarshal([]byte(data), &n); err != nil {
					t.Fatal(err)
				}
				return n
			}
		}
		t.Fatal("the news ended")
		return n
	}
	english := language.Of("en").Watch
	if got := next(); !reflect.DeepEqual(got, News{Words: english}) {
		t.Errorf("at the start: %+v", got)
	}
	b.Speak("es")
	b.Tell(false, []finding.Passage{{Lang: "es", Text: "un error\n"}, {Text: "two\nlines\n"}})
	if got := next(); !reflect.DeepEqual(got, News{Stopped: true, Findings: []finding.Passage{{Lang: "es", Text: "un error\n"}, {Lang: "en", Text: "two\nlines"}}, Words: language.Of("es").Watch}) || got.Words == english {
		t.Errorf("after an error: %+v", got)
	}
	b.Speak("fr") // the theme does not speak it
	b.Tell(true, nil)
	if got := next(); !reflect.DeepEqual(got, News{Words: english}) {
		t.Errorf("after the mend: %+v", got)
	}
}

// Whoever asks for the state of a page is told the step that was written last in it, of
// several pages that were saved at once each its own, and none once something else
// changed the page.
func TestAPageKnowsWhereTheWriterWas(t *testing.T) {
	b := &Browsers{}
	text := map[string]string{"/a.html": "one", "/b.html": "one"}
	site := b.Wrap(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		_, _ = w.Write([]byte(text[r.URL.Path]))
	}))
	step := func(page string) string {
		answer := httptest.NewRecorder()
		site.ServeHTTP(answer, httptest.NewRequest(http.MethodHead, page, nil))
		return answer.Header().Get(stepHeader)
	}
	is := func(when, wantA, wantB string) {
		t.Helper()
		if a, b := step("/a.html"), step("/b.html"); a != wantA || b != wantB {
			t.Errorf("%s: the steps are %q and %q, not %q and %q", when, a, b, wantA, wantB)
		}
	}
	is("before", "", "")
	done := b.Placing()
	text["/a.html"], text["/b.html"] = "two", "two"
	b.TellOf("a.html", "s1", nil)
	b.TellOf("b.html", "s2", nil)
	done()
	is("saved", "s1", "s2")
	b.Tell(true, nil)
	is("built behind it", "s1", "s2")
	text["/a.html"] = "three"
	is("a tool has another name", "", "s2")
	text["/a.html"] = "two"
	is("and its old one again", "", "s2")
}

// While a page is put in place nobody asks for its state: the step would be missing.
func TestAPageThatIsPutInPlaceIsWaitedFor(t *testing.T) {
	b := &Browsers{}
	asked := 0
	site := b.Wrap(http.HandlerFunc(func(http.ResponseWriter, *http.Request) {
		asked++
		if b.placing.TryLock() {
			t.Error("a page can be put in place while it is read")
		}
	}))
	done := b.Placing()
	if b.placing.TryRLock() {
		t.Error("a page can be read while it is put in place")
	}
	done()
	site.ServeHTTP(httptest.NewRecorder(), httptest.NewRequest(http.MethodHead, "/a.html", nil))
	if asked != 1 {
		t.Errorf("the site is asked %d times", asked)
	}
}

// A page that takes no news holds nobody up, and learns how it ended.
func TestADeafPageHoldsNobodyUp(t *testing.T) {
	b := &Browsers{}
	c := b.join()
	for range 10 * waitFor {
		b.Tell(false, []finding.Passage{{Text: "on the way"}})
	}
	b.Tell(true, []finding.Passage{{Text: "the end"}})
	var last News
	for len(c) > 0 {
		last = <-c
	}
	if !reflect.DeepEqual(last, News{Findings: []finding.Passage{{Lang: "en", Text: "the end"}}, Words: language.Of("en").Watch}) {
		t.Errorf("the last news are %+v", last)
	}
}

// The state that a page is told of is its own, and the answer's tag.
func TestAPageKnowsItsState(t *testing.T) {
	url := serve(t, &Browsers{})
	answer, err := http.Head(url + "/a.html")
	if err != nil {
		t.Fatal(err)
	}
	defer answer.Body.Close()
	_, page := get(t, url+"/a.html")
	if tag := answer.Header.Get("ETag"); tag == "" || !strings.Contains(page, `data-page="`+strings.ReplaceAll(tag, `"`, "&#34;")+`"`) {
		t.Errorf("the tag is %s, the page %s", tag, page)
	}
	if stateOf([]byte("one")) == stateOf([]byte("two")) {
		t.Error("two pages have one state")
	}
}

// The front page leads to the handbook, and no other page does; the handbook is
// built when it is first asked for, once.
func TestTheFrontPageLeadsToTheHandbook(t *testing.T) {
	book := t.TempDir()
	if err := os.WriteFile(filepath.Join(book, "index.html"), []byte("<main>chapters</main>"), 0o644); err != nil {
		t.Fatal(err)
	}
	asked := 0
	b := &Browsers{Handbook: func() (string, error) { asked++; return book, nil }}
	site := http.HandlerFunc(func(w http.ResponseWriter, _ *http.Request) {
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		_, _ = w.Write([]byte("<body><main><h1>front</h1></main></body>"))
	})
	server := httptest.NewServer(b.Wrap(site))
	defer server.Close()
	link := `<a href="/.handbook/index.html"`
	if _, body := get(t, server.URL+"/"); !strings.Contains(body, link) {
		t.Errorf("the front page: %s", body)
	}
	if _, body := get(t, server.URL+"/pump.html"); strings.Contains(body, link) {
		t.Errorf("another page: %s", body)
	}
	for range 2 {
		answer, err := http.Get(server.URL + "/.handbook/")
		if err != nil {
			t.Fatal(err)
		}
		body, _ := io.ReadAll(answer.Body)
		answer.Body.Close()
		if answer.StatusCode != http.StatusOK || !strings.Contains(string(body), "chapters") {
			t.Errorf("the handbook: %d %s", answer.StatusCode, body)
		}
	}
	if asked != 1 {
		t.Errorf("it was built %d times", asked)
	}
}
