package write

import (
	"crypto/subtle"
	"errors"
	"io"
	"mime"
	"net"
	"net/http"

	"baybinder/generator/base/finding"
)

// mostAsked is what one question may have, in bytes.
const mostAsked = 512 << 10

// tokenHeader is where a page says the run's token. A page from elsewhere could
// not send it without asking first, and nobody answers that.
const tokenHeader = "Baybinder-Token"

// guarded answers a page of this very run, and nobody else.
func (d *Desk) guarded(w http.ResponseWriter, r *http.Request) {
	w.Header().Set("Cache-Control", "no-store")
	w.Header().Set("X-Content-Type-Options", "nosniff")
	if why, status := d.stranger(r); !why.IsZero() {
		d.refuse(w, status, why)
		return
	}
	most := int64(mostAsked)
	if r.URL.Path == Root+pictureAt {
		most = mostPicture
	}
	body, err := io.ReadAll(http.MaxBytesReader(w, r.Body, most))
	var large *http.MaxBytesError
	switch {
	case errors.As(err, &large):
		d.refuse(w, http.StatusRequestEntityTooLarge, finding.Say("this is more than a page of the manual asks"))
	case err == nil:
		d.answer(w, r, body)
	}
}

// stranger says why a request is none of a page of this run; nothing of one that is.
func (d *Desk) stranger(r *http.Request) (finding.Words, int) {
	kind, _, err := mime.ParseMediaType(r.Header.Get("Content-Type"))
	switch {
	case r.Method != http.MethodPost:
		return finding.Say("this is asked by POST"), http.StatusMethodNotAllowed
	case !near(r.RemoteAddr):
		return finding.Say("only this machine writes"), http.StatusForbidden
	case r.Header.Get("Origin") != "http://"+r.Host, strange(r.Header.Get("Sec-Fetch-Site")):
		return finding.Say("a page from elsewhere does not write here"), http.StatusForbidden
	case subtle.ConstantTimeCompare([]byte(r.Header.Get(tokenHeader)), []byte(d.token)) != 1:
		return finding.Say("this page is of an earlier run: load it anew"), http.StatusForbidden
	case err != nil || kind != "application/json" && (r.URL.Path != Root+pictureAt || kind != "image/jpeg" && kind != "image/png"):
		return finding.Say("this is asked as JSON, and a picture is sent as what it is"), http.StatusUnsupportedMediaType
	}
	return finding.Words{}, 0
}

// strange says that a browser knows a request to come from another origin
// (Fetch Metadata Request Headers, section 2.3).
func strange(site string) bool { return site != "" && site != "same-origin" }

// near says that an address is of this machine.
func near(address string) bool {
	host, _, err := net.SplitHostPort(address)
	ip := net.ParseIP(host)
	return err == nil && ip != nil && ip.IsLoopback()
}

// refuse says in the shop's language why a request is not answered.
func (d *Desk) refuse(w http.ResponseWriter, status int, why finding.Words) {
	if status == http.StatusMethodNotAllowed {
		w.Header().Set("Allow", http.MethodPost)
	}
	d.mu.Lock()
	text := d.inShop(why)
	d.mu.Unlock()
	http.Error(w, text, status)
}
