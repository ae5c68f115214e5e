package browse

import (
	"context"
	"io"
	"net/http"
	"net/http/httptest"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"baybinder/generator/base/needed"
	"time"
)

// site makes a folder with the files, beside a file that is not to be served.
func site(t *testing.T, files map[string]string) string {
	t.Helper()
	dir := t.TempDir()
	write(t, filepath.Join(dir, "secret.txt"), "secret")
	folder := filepath.Join(dir, "public")
	for name, text := range files {
		write(t, filepath.Join(folder, filepath.FromSlash(name)), text)
	}
	return folder
}

func write(t *testing.T, name, text string) {
	t.Helper()
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(name, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// ask sends a request whose path is not cleaned on the way.
func ask(folder, method, address string) *http.Response {
	r := httptest.NewRequest(method, "/", nil)
	r.URL.Path, r.URL.RawQuery, _ = strings.Cut(address, "?")
	w := httptest.NewRecorder()
	Handler(folder).ServeHTTP(w, r)
	return w.Result()
}

func TestAnswers(t *testing.T) {
	folder := site(t, map[string]string{
		"index.html": "front", "pump/index.html": "pump", "signs/W012.SVG": "<svg/>", "words.js": "1",
		"notes.odd": "?", ".state/list": "hidden", "bare/one.txt": "one",
	})
	for _, c := range []struct {
		method, address string
		status          int
		kind, body      string
	}{
		{"GET", "/", 200, "text/html; charset=utf-8", "front"},
		{"GET", "/index.html", 200, "text/html; charset=utf-8", "front"},
		{"HEAD", "/index.html", 200, "text/html; charset=utf-8", ""},
		{"GET", "/pump/", 200, "text/html; charset=utf-8", "pump"},
		{"GET", "/signs/W012.SVG", 200, "image/svg+xml", "<svg/>"},
		{"GET", "/words.js?v=2", 200, "text/javascript; charset=utf-8", "1"},
		{"GET", "/notes.odd", 200, "application/octet-stream", "?"},
		{"GET", "/pump", 302, "", ""},
		{"GET", "/bare/", 404, "text/plain; charset=utf-8", "there is no such page\n"},
		{"GET", "/nothing.html", 404, "text/plain; charset=utf-8", "there is no such page\n"},
		{"GET", "/../secret.txt", 404, "text/plain; charset=utf-8", "there is no such page\n"},
		{"GET", "/pump/../../secret.txt", 404, "text/plain; charset=utf-8", "there is no such page\n"},
		{"GET", "/..\\secret.txt", 404, "text/plain; charset=utf-8", "there is no such page\n"},
		{"GET", "//secret.txt", 404, "text/plain; charset=utf-8", "there is no such page\n"},
		{"GET", "/index.html\x00.txt", 404, "text/plain; charset=utf-8", "there is no such page\n"},
		{"GET", "/.state/list", 404, "text/plain; charset=utf-8", "there is no such page\n"},
		{"POST", "/", 405, "text/plain; charset=utf-8", "this site is only read\n"},
	} {
		t.Run(c.method+" "+c.address, func(t *testing.T) {
			got := ask(folder, c.method, c.address)
			body, _ := io.ReadAll(got.Body)
			if got.StatusCode != c.status || got.Header.Get("Content-Type") != c.kind || string(body) != c.body && c.kind != "" {
				t.Errorf("got %d %q %q", got.StatusCode, got.Header.Get("Content-Type"), body)
			}
			if got.Header.Get("Cache-Control") != "no-cache" {
				t.Errorf("Cache-Control is %q", got.Header.Get("Cache-Control"))
			}
		})
	}
}

// The brackets of a listing, or a name in it, would give it away.
func TestAFolderIsNotListed(t *testing.T) {
	got := ask(site(t, map[string]string{"index.html": "", "bare/one.txt": ""}), "GET", "/bare/")
	if body, _ := io.ReadAll(got.Body); strings.Contains(string(body), "one") {
		t.Errorf("the folder was listed: %s", body)
	}
}

func TestAFoldersNameKeepsTheQuery(t *testing.T) {
	got := ask(site(t, map[string]string{"index.html": "", "a/b c/index.html": ""}), "GET", "/a/b c?q=x")
	if to := got.Header.Get("Location"); to != "b%20c/?q=x" {
		t.Errorf("leads to %q", to)
	}
}

func TestALinkOutOfTheFolderIsRefused(t *testing.T) {
	folder := site(t, map[string]string{"index.html": ""})
	needed.Judge(t, os.Symlink(filepath.Join("..", "secret.txt"), filepath.Join(folder, "link.txt")) == nil, "a file system with symbolic links")
	got := ask(folder, "GET", "/link.txt")
	if body, _ := io.ReadAll(got.Body); got.StatusCode != 404 || strings.Contains(string(body), "secret") {
		t.Errorf("got %d %s", got.StatusCode, body)
	}
}

// A build swaps the folder for another one of the same name, maybe within one
// second: the next answer must be the new page, even to a browser that asks
// whether it changed.
func TestARebuildIsSeen(t *testing.T) {
	folder := site(t, map[string]string{"index.html": "old"})
	handler := Handler(folder)
	get := func(since string) (*http.Response, string) {
		r := httptest.NewRequest("GET", "/", nil)
		if since != "" {
			r.Header.Set("If-Modified-Since", since)
		}
		w := httptest.NewRecorder()
		handler.ServeHTTP(w, r)
		body, _ := io.ReadAll(w.Result().Body)
		return w.Result(), string(body)
	}
	first, body := get("")
	if body != "old" || first.Header.Get("Last-Modified") != "" || first.Header.Get("ETag") != "" {
		t.Fatalf("got %q %v", body, first.Header)
	}
	if err := os.Rename(folder, folder+".old"); err != nil {
		t.Fatal(err)
	}
	write(t, filepath.Join(folder, "index.html"), "new")
	if _, body = get(time.Now().Add(time.Hour).UTC().Format(http.TimeFormat)); body != "new" {
		t.Errorf("got %q after the rebuild", body)
	}
	if err := os.RemoveAll(folder); err != nil {
		t.Fatal(err)
	}
	if got, body := get(""); got.StatusCode != 404 || !strings.Contains(body, "baybinder build") {
		t.Errorf("got %d %q without a site", got.StatusCode, body)
	}
}

func TestOpen(t *testing.T) {
	folder := site(t, map[string]string{"index.html": "front"})
	s, err := Open(Options{Folder: folder})
	if err != nil {
		t.Fatal(err)
	}
	if !strings.HasPrefix(s.URL(), "http://127.0.0.1:") {
		t.Errorf("serves at %s", s.URL())
	}
	ctx, stop := context.WithCancel(t.Context())
	ended := make(chan error)
	go func() { ended <- s.Serve(ctx) }()
	got, err := http.Get(s.URL())
	if err != nil {
		t.Fatal(err)
	}
	body, _ := io.ReadAll(got.Body)
	_ = got.Body.Close()
	if string(body) != "front" {
		t.Errorf("got %q", body)
	}
	stop()
	if err := <-ended; err != nil {
		t.Errorf("ended with %v", err)
	}
}

// At every address of its machine a site is said to be at the machine's name,
// which its guard takes.
func TestTheMachinesNameIsSaid(t *testing.T) {
	s, err := Open(Options{Folder: site(t, map[string]string{"index.html": "front"}), Address: "0.0.0.0"})
	if err != nil {
		t.Fatal(err)
	}
	defer s.listener.Close()
	own, err := os.Hostname()
	if err != nil {
		t.Fatal(err)
	}
	said, err := url.Parse(s.URL())
	if err != nil || said.Hostname() != own || said.Port() == "" || !named("0.0.0.0", said.Host) {
		t.Errorf("it is at %s", s.URL())
	}
}

func TestOpenSaysWhatIsWrong(t *testing.T) {
	folder := site(t, map[string]string{"other.html": ""})
	if _, err := Open(Options{Folder: folder}); err == nil || !strings.Contains(err.Error(), "run baybinder build first") {
		t.Errorf("without a front page: %v", err)
	}
	write(t, filepath.Join(folder, "index.html"), "front")
	s, err := Open(Options{Folder: folder})
	if err != nil {
		t.Fatal(err)
	}
	defer s.listener.Close()
	_, port, _ := strings.Cut(strings.TrimSuffix(strings.TrimPrefix(s.URL(), "http://"), "/"), ":")
	taken := 0
	for _, digit := range port {
		taken = taken*10 + int(digit-'0')
	}
	if _, err := Open(Options{Folder: folder, Port: taken}); err == nil || !strings.Contains(err.Error(), "cannot be served at 127.0.0.1 port "+port) {
		t.Errorf("with a port that is taken: %v", err)
	}
}
