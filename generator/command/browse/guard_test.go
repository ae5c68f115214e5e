package browse

import (
	"net/http"
	"net/http/httptest"
	"os"
	"strings"
	"testing"
)

// A page from elsewhere whose name leads to this machine asks with that name
// (RFC 9110, 7.2: Host is the authority of the target's address).
func TestOnlyItsNamesAreAnswered(t *testing.T) {
	own, err := os.Hostname()
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		address, host string
		want          bool
	}{
		{"127.0.0.1", "127.0.0.1:8000", true},
		{"127.0.0.1", "localhost:8000", true},
		{"127.0.0.1", "LOCALHOST.", true},
		{"127.0.0.1", "[::1]:8000", true},
		{"127.0.0.1", "127.9.9.9", true},
		{"127.0.0.1", "evil.example:8000", false},
		{"127.0.0.1", "localhost.evil.example", false},
		{"127.0.0.1", "127.0.0.1.evil.example", false},
		{"127.0.0.1", "192.0.2.7:8000", false},
		{"127.0.0.1", "", false},
		{"192.0.2.7", "192.0.2.7:8000", true},
		{"192.0.2.7", "192.0.2.8", false},
		{"shop-pc", "shop-pc:8000", true},
		{"shop-pc", "evil.example", false},
		{"0.0.0.0", "192.0.2.7:8000", true},
		{"::", "[2001:db8::7]:8000", true},
		{"0.0.0.0", own + ":8000", true},
		{"0.0.0.0", "evil.example", false},
	} {
		asked := false
		r := httptest.NewRequest("GET", "/", nil)
		r.Host = c.host
		w := httptest.NewRecorder()
		Guard(c.address, http.HandlerFunc(func(http.ResponseWriter, *http.Request) { asked = true })).ServeHTTP(w, r)
		if asked != c.want || !asked && w.Code != http.StatusMisdirectedRequest {
			t.Errorf("at %s, asked for %q: answered %v with %d", c.address, c.host, asked, w.Code)
		}
	}
}

func TestOnlyReadingIsAnswered(t *testing.T) {
	for _, method := range []string{"POST", "PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "CONNECT", "LINK"} {
		r := httptest.NewRequest("GET", "/", nil)
		r.Method, r.Host = method, "localhost"
		w := httptest.NewRecorder()
		Guard(Loopback, http.HandlerFunc(func(http.ResponseWriter, *http.Request) { t.Errorf("%s reached the site", method) })).ServeHTTP(w, r)
		if w.Code != http.StatusMethodNotAllowed || w.Header().Get("Allow") != "GET, HEAD" {
			t.Errorf("%s: %d, Allow %q", method, w.Code, w.Header().Get("Allow"))
		}
	}
}

// What stands in the site by another hand than ours may hold a drawing that
// runs something: opened by itself it runs nothing here.
func TestADrawingMayRunNothing(t *testing.T) {
	folder := site(t, map[string]string{"index.html": "front", "a.svg": "<svg/>", "b.xml": "<a/>", "c": "?", "d.css": "", "e.pdf": ""})
	for name, want := range map[string]bool{"/a.svg": true, "/b.xml": true, "/c": true, "/": false, "/d.css": false, "/e.pdf": false} {
		policy := ask(folder, "GET", name).Header.Get("Content-Security-Policy")
		if got := strings.Contains(policy, "default-src 'none'") && strings.Contains(policy, "sandbox") && !strings.Contains(policy, "script-src"); got != want {
			t.Errorf("%s has the policy %q", name, policy)
		}
	}
}

// The server that browse and watch open is guarded.
func TestTheServerIsGuarded(t *testing.T) {
	s, err := Open(Options{Folder: site(t, map[string]string{"index.html": "front"})})
	if err != nil {
		t.Fatal(err)
	}
	defer s.listener.Close()
	r := httptest.NewRequest("GET", "/", nil)
	r.Host = "evil.example"
	w := httptest.NewRecorder()
	s.server.Handler.ServeHTTP(w, r)
	if w.Code != http.StatusMisdirectedRequest {
		t.Errorf("another name is answered with %d", w.Code)
	}
}
