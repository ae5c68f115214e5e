// Package served is a published page as a server of this machine hands it out: with a script of the server's own, which may ask that server.
package served

import (
	"bytes"
	"net/http"

	"baybinder/generator/model"
)

// Answer is an answer that is not sent yet.
type Answer struct {
	head   http.Header
	Status int
	Body   []byte
}

// Header, WriteHeader and Write take an answer, as of http.ResponseWriter.
func (a *Answer) Header() http.Header    { return a.head }
func (a *Answer) WriteHeader(status int) { a.Status = status }
func (a *Answer) Write(p []byte) (int, error) {
	a.Body = append(a.Body, p...)
	return len(p), nil
}

// Ask is what a site answers to a request by some method, the whole of it: what
// is asked for is a part of a longer page than the file is.
func Ask(site http.Handler, r *http.Request, method string) *Answer {
	ask := r.Clone(r.Context())
	ask.Method = method
	ask.Header.Del("Range")
	a := &Answer{head: http.Header{}, Status: http.StatusOK}
	site.ServeHTTP(a, ask)
	return a
}

// Send sends it. A HEAD request gets no body.
func (a *Answer) Send(w http.ResponseWriter, r *http.Request) {
	for name, values := range a.head {
		w.Header()[name] = values
	}
	w.WriteHeader(a.Status)
	if r.Method != http.MethodHead {
		_, _ = w.Write(a.Body)
	}
}

// The policy of a published page (Content Security Policy Level 3), and with one
// leave more.
var (
	closed = []byte(`content="default-src 'none';`)
	asking = []byte(`content="default-src 'none'; connect-src 'self';`)
)

// Asking is a page that may ask its own server, with tags at its end: the
// published one makes no request.
func Asking(page, tags []byte) []byte {
	page = bytes.Replace(page, closed, asking, 1)
	if i := bytes.LastIndex(page, []byte("</body>")); i >= 0 {
		return bytes.Join([][]byte{page[:i], page[i:]}, tags)
	}
	return append(bytes.Clone(page), tags...)
}

// Headed is a page with something under its heading; without a heading it is as
// it was.
func Headed(page, more []byte) []byte {
	heading := []byte("</h1>")
	i := bytes.Index(page, heading)
	if i < 0 {
		return page
	}
	i += len(heading)
	return bytes.Join([][]byte{page[:i], page[i:]}, more)
}

// Language is the language that a page is in; "" where it does not say.
func Language(page []byte) string {
	for r := range model.Runs(string(page)) {
		if r.Name() == "html" {
			return r.Value("lang")
		}
		if r.Name() == "body" {
			break
		}
	}
	return ""
}
