package served_test

import (
	"net/http"
	"net/http/httptest"
	"testing"

	"baybinder/generator/command/served"
)

const page = `<!DOCTYPE html><html lang="es-MX"><head><meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'"></head><body><h1>Foso</h1><p>no</p></body></html>`

func TestAPageGetsWhatItsServerAdds(t *testing.T) {
	for name, c := range map[string]struct{ got, want string }{
		"asking":  {string(served.Asking([]byte(page), []byte("<script></script>"))), `<!DOCTYPE html><html lang="es-MX"><head><meta http-equiv="Content-Security-Policy" content="default-src 'none'; connect-src 'self'; script-src 'self'"></head><body><h1>Foso</h1><p>no</p><script></script></body></html>`},
		"no body": {string(served.Asking([]byte("<p>no"), []byte("<script></script>"))), "<p>no<script></script>"},
		"headed":  {string(served.Headed([]byte("<h1>a</h1><p>b</p>"), []byte("<p>m</p>"))), "<h1>a</h1><p>m</p><p>b</p>"},
		"no head": {string(served.Headed([]byte("<p>b</p>"), []byte("<p>m</p>"))), "<p>b</p>"},
		"spanish": {served.Language([]byte(page)), "es-MX"},
		"unsaid":  {served.Language([]byte("<html><body><p>html lang=\"de\"</p>")), ""},
	} {
		if c.got != c.want {
			t.Errorf("%s: %q, want %q", name, c.got, c.want)
		}
	}
}

// A part of a page, and its head alone, are asked of the site as the whole page.
func TestAsk(t *testing.T) {
	site := http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if r.Method != http.MethodGet || r.Header.Get("Range") != "" {
			t.Errorf("asked by %s for %q", r.Method, r.Header.Get("Range"))
		}
		w.Header().Set("X-Of", "site")
		w.WriteHeader(http.StatusNotFound)
		_, _ = w.Write([]byte("no"))
		_, _ = w.Write([]byte(" page"))
	})
	r := httptest.NewRequest(http.MethodHead, "/x", nil)
	r.Header.Set("Range", "bytes=0-1")
	a := served.Ask(site, r, http.MethodGet)
	if a.Status != http.StatusNotFound || string(a.Body) != "no page" {
		t.Errorf("%d %q", a.Status, a.Body)
	}
	w := httptest.NewRecorder()
	a.Send(w, r)
	if w.Code != http.StatusNotFound || w.Body.Len() != 0 || w.Header().Get("X-Of") != "site" {
		t.Errorf("%d %q %v", w.Code, w.Body, w.Header())
	}
}
