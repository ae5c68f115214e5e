package main

import (
	"io"
	"net/http"
	"net/http/httptest"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"baybinder/generator"
	"baybinder/generator/model"
)

// Beside a program without a manual one is offered; the button of that page
// begins it, and its site is shown. Nobody else's page can press the button.
func TestADoubleClickOffersToBegin(t *testing.T) {
	t.Parallel()
	folder := t.TempDir()
	d := &door{
		options: generator.Options{Manual: filepath.Join(folder, "content"), To: filepath.Join(folder, "public"), Today: model.Date{Year: 2026, Month: 5, Day: 4}},
		host:    "127.0.0.1:4711", token: "secret",
	}
	d.look()
	ask := func(method, path, origin, token string) (int, string) {
		r := httptest.NewRequest(method, "http://127.0.0.1:4711"+path, strings.NewReader(url.Values{"token": {token}}.Encode()))
		r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
		if origin != "" {
			r.Header.Set("Origin", origin)
		}
		w := httptest.NewRecorder()
		d.ServeHTTP(w, r)
		body, _ := io.ReadAll(w.Result().Body)
		return w.Code, string(body)
	}
	if code, body := ask("GET", "/", "", ""); code != http.StatusOK || !strings.Contains(body, "Begin a manual") || !strings.Contains(body, d.options.Manual) {
		t.Errorf("%d %s", code, body)
	}
	for _, bad := range [][2]string{{"http://127.0.0.1:4711", "guess"}, {"http://elsewhere.example", "secret"}, {"null", "secret"}, {"", ""}} {
		if code, _ := ask("POST", "/begin", bad[0], bad[1]); code != http.StatusForbidden || !d.said.Missing {
			t.Errorf("a page from %q with the token %q gets %d", bad[0], bad[1], code)
		}
	}
	if code, _ := ask("POST", "/begin", "http://127.0.0.1:4711", "secret"); code != http.StatusSeeOther {
		t.Errorf("the button gets %d: %s", code, d.said.Findings)
	}
	shop := filepath.Join(d.options.Manual, "shop.yaml")
	if err := os.WriteFile(shop, []byte("title: Taller\nlanguage: es\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	if _, body := ask("POST", "/begin", "null", ""); body != "vuelva a la primera página y pulse allí el botón\n" {
		t.Errorf("a Spanish shop's page that may not press the button is told %q", body)
	}
	if code, body := ask("GET", "/", "", ""); code != http.StatusOK || !strings.Contains(body, "theme/baybinder.css") {
		t.Errorf("the site is not shown: %d %s", code, body)
	}
	if code, _ := ask("POST", "/", "http://127.0.0.1:4711", "secret"); code != http.StatusMethodNotAllowed {
		t.Errorf("the site takes a POST: %d", code)
	}
}
