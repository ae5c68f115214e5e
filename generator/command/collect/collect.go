// Package collect takes finished records of jobs from their own pages into a
// manual's folder records.
//
// It stands before the server of package browse. Copies of pages that it serves
// may send to this server, and to nothing else; the published folder's pages
// send nothing anywhere. What is sent must come from a page that this server
// served (its origin, and a token of the page's procedure), in a request that
// is no longer than a record can be, of the form that the published schema has.
// A record becomes a new file; none that is there is written over.
//
// A device of the shop's network types a code once before it may send: it
// stands where the program runs. This machine itself need not. The code holds as
// long as the program runs. What a device is known by is made of a key that is
// kept for this user, and holds for 90 days, whatever runs in between; who takes
// the key's file away makes every device type a code again. What goes over the
// network is not encrypted.
package collect

import (
	"crypto/hmac"
	"crypto/rand"
	"crypto/sha256"
	"crypto/subtle"
	_ "embed"
	"encoding/hex"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"math/big"
	"mime"
	"net"
	"net/http"
	"net/url"
	"os"
	"path"
	"strings"
	"sync"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/base/turn"
	"baybinder/generator/command/served"
	"baybinder/generator/read/record"
)

// Where the server takes what pages send. Hidden names are never of the site.
const (
	RecordsAt = "/.collect/records"
	DeviceAt  = "/.collect/device"
	scriptAt  = "/.collect/collect.js"
)

const (
	// longest is how long a record may be, in bytes: one of a job of 100 steps
	// takes about 50,000.
	longest = 1 << 20
	// mostWrong is how many wrong codes are taken from all devices together:
	// who tries them in turn has one chance in 50,000.
	mostWrong = 20
	// cookie is what a device shows that has typed the code.
	cookie = "baybinder-device"
)

//go:embed collect.js
var script []byte

// Collector takes records into one manual.
type Collector struct {
	manual  string
	secret  []byte // of this run: tokens are made of it
	devices *Devices
	code    string
	say     func(finding.Words)

	mu    sync.Mutex
	wrong int // codes that were wrong so far
}

// New prepares a collector for a manual's folder. say tells what was taken and
// what was refused, where the program runs.
func New(manual string, devices *Devices, say func(finding.Words)) (*Collector, error) {
	if info, err := os.Stat(manual); err != nil || !info.IsDir() {
		return nil, finding.Refuse("there is no manual in %s for records to go to", manual)
	}
	secret := make([]byte, 32)
	if _, err := rand.Read(secret); err != nil {
		return nil, err
	}
	n, err := rand.Int(rand.Reader, big.NewInt(1e6))
	if err != nil {
		return nil, err
	}
	return &Collector{manual: manual, secret: secret, devices: devices, code: fmt.Sprintf("%06d", n), say: say}, nil
}

// Code is what a device of the network types once.
func (c *Collector) Code() string { return c.code }

// mark is a text that nobody can make for a name who has not the key.
func mark(key []byte, name string) string {
	sum := hmac.New(sha256.New, key)
	sum.Write([]byte(name))
	return hex.EncodeToString(sum.Sum(nil))
}

func (c *Collector) token(procedure string) string { return mark(c.secret, "page "+procedure) }

func equal(a, b string) bool { return subtle.ConstantTimeCompare([]byte(a), []byte(b)) == 1 }

// Wrap serves a site whose pages of procedures can send their records.
func (c *Collector) Wrap(site http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		switch {
		case r.URL.Path == scriptAt && r.Method != http.MethodPost:
			w.Header().Set("Content-Type", "text/javascript; charset=utf-8")
			w.Header().Set("Cache-Control", "no-cache")
			_, _ = w.Write(script)
		case r.URL.Path == RecordsAt && r.Method == http.MethodPost:
			c.answer(w, r, c.take)
		case r.URL.Path == DeviceAt && r.Method == http.MethodPost:
			c.answer(w, r, c.device)
		default:
			c.page(w, r, site)
		}
	})
}

// refusal is an answer that something was not taken.
type refusal struct {
	status int
	words  finding.Words
}

func (e *refusal) Error() string { return e.words.String() }

// Says is the refusal in words that can be told in any language.
func (e *refusal) Says() finding.Words { return e.words }

func refused(status int, words finding.Words) error { return &refusal{status, words} }

// answer asks whether a request comes from a page of this server, and answers
// it. What was refused is told where the program runs, too.
func (c *Collector) answer(w http.ResponseWriter, r *http.Request, do func(http.ResponseWriter, *http.Request) error) {
	w.Header().Set("Cache-Control", "no-store")
	err := ownPage(r)
	if err == nil {
		err = do(w, r)
	}
	if err == nil {
		return
	}
	status := http.StatusInternalServerError
	if no, is := errors.AsType[*refusal](err); is {
		status = no.status
	}
	c.say(finding.Say("not taken from %s: %s", deviceOf(r), finding.Told(err)))
	http.Error(w, err.Error(), status)
}

// ownPage says whether a browser sent this from a page of this server: it tells
// the page's origin itself (Fetch, section 3.2), and Sec-Fetch-Site where it
// knows it (Fetch Metadata).
func ownPage(r *http.Request) error {
	from, err := url.Parse(r.Header.Get("Origin"))
	if err != nil || from.Host == "" || !strings.EqualFold(from.Host, r.Host) {
		return refused(http.StatusForbidden, finding.Say("it comes from %q, which is no page of this server", r.Header.Get("Origin")))
	}
	if site := r.Header.Get("Sec-Fetch-Site"); site != "" && site != "same-origin" {
		return refused(http.StatusForbidden, finding.Say("the page that sends it is %s", site))
	}
	return nil
}

// deviceOf is the address of the machine that asks.
func deviceOf(r *http.Request) string {
	host, _, err := net.SplitHostPort(r.RemoteAddr)
	if err != nil {
		return r.RemoteAddr
	}
	return host
}

// known says whether a device may send: it is this machine, or has typed the
// code.
func (c *Collector) known(r *http.Request) bool {
	if ip := net.ParseIP(deviceOf(r)); ip != nil && ip.IsLoopback() {
		return true
	}
	had, err := r.Cookie(cookie)
	if err != nil {
		return false
	}
	key, _, err := c.devices.current()
	return err == nil && equal(had.Value, mark(key, "device"))
}

// device takes a code that was typed, and makes the device known.
func (c *Collector) device(w http.ResponseWriter, r *http.Request) error {
	typed, err := io.ReadAll(http.MaxBytesReader(w, r.Body, 100))
	if err != nil {
		return refused(http.StatusRequestEntityTooLarge, finding.Say("the code is longer than a code is"))
	}
	if err := c.judge(strings.TrimSpace(string(typed))); err != nil {
		return err
	}
	key, left, err := c.devices.current()
	if err != nil {
		return err
	}
	http.SetCookie(w, &http.Cookie{Name: cookie, Value: mark(key, "device"), Path: "/", HttpOnly: true, SameSite: http.SameSiteStrictMode, MaxAge: int(left.Seconds())})
	w.WriteHeader(http.StatusNoContent)
	return nil
}

func (c *Collector) judge(typed string) error {
	c.mu.Lock()
	defer c.mu.Unlock()
	switch {
	case c.wrong >= mostWrong:
		return refused(http.StatusTooManyRequests, finding.Say("%d codes were wrong: no more are taken until this program is begun anew", c.wrong))
	case !equal(typed, c.code):
		c.wrong++
		return refused(http.StatusForbidden, finding.Say("the code is wrong"))
	}
	return nil
}

// take makes a file of the record that a request holds.
func (c *Collector) take(w http.ResponseWriter, r *http.Request) error {
	if !c.known(r) {
		return refused(http.StatusUnauthorized, finding.Say("this device has not typed the code yet"))
	}
	if kind, _, err := mime.ParseMediaType(r.Header.Get("Content-Type")); err != nil || kind != "application/json" {
		return refused(http.StatusUnsupportedMediaType, finding.Say("it is no JSON"))
	}
	text, err := io.ReadAll(http.MaxBytesReader(w, r.Body, longest))
	if err != nil {
		if _, is := errors.AsType[*http.MaxBytesError](err); is {
			return refused(http.StatusRequestEntityTooLarge, finding.Say("it is longer than %d bytes", longest))
		}
		return refused(http.StatusBadRequest, finding.Say("it ends before its end: %s", err.Error()))
	}
	name, err := c.judged(r, string(text))
	if err != nil {
		return err
	}
	done, err := turn.In(c.manual, func(who string) { c.say(turn.Waiting(who)) })
	if err != nil {
		return err
	}
	defer done()
	put, err := keep(c.manual, name, text)
	if err != nil {
		return err
	}
	c.say(finding.Say("records/%s from %s", put, deviceOf(r)))
	w.WriteHeader(http.StatusCreated)
	return nil
}

// judged is the name that a record gets. The record is of the published form,
// and of the procedure whose page sends it.
func (c *Collector) judged(r *http.Request, text string) (string, error) {
	job, found := record.NewReader().Read(&position.File{Path: "records/sent.json", Text: text})
	if job == nil || len(found) > 0 {
		return "", refused(http.StatusUnprocessableEntity, finding.Say("it is no record: %s", found[0].Says))
	}
	if !equal(r.Header.Get("Baybinder-Token"), c.token(job.Procedure)) {
		return "", refused(http.StatusForbidden, finding.Say("it does not come from the page of %s that this program shows; open that page anew", job.Procedure))
	}
	return job.Procedure + "-" + job.Saved.Format("2006-01-02-15-04"), nil
}

// page answers as the site does. The page of a procedure gets the script that
// sends, its token, and the leave to send to this server.
func (c *Collector) page(w http.ResponseWriter, r *http.Request, site http.Handler) {
	id := procedureOf(r.URL.Path)
	if id == "" {
		site.ServeHTTP(w, r)
		return
	}
	a := served.Ask(site, r, r.Method)
	if a.Status == http.StatusOK && r.Method == http.MethodGet {
		a.Body = sending(a.Body, c.token(id))
		a.Header().Del("Content-Length")
	}
	a.Send(w, r)
}

// procedureOf is the procedure whose page an address is, in whatever language;
// "" for other pages.
func procedureOf(address string) string {
	file, is := strings.CutPrefix(path.Clean(address), "/procedures/")
	if !is || strings.Contains(file, "/") || path.Ext(file) != ".html" || file == "index.html" {
		return ""
	}
	id, _, _ := strings.Cut(file, ".")
	return id
}

// exists says that a file is there already.
func exists(err error) bool { return errors.Is(err, fs.ErrExist) }
