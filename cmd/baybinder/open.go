package main

import (
	"context"
	"crypto/rand"
	"crypto/subtle"
	_ "embed"
	"errors"
	"html/template"
	"io"
	"net"
	"net/http"
	"os"
	"os/signal"
	"path/filepath"
	"strings"
	"sync"
	"syscall"
	"time"

	openers "github.com/pkg/browser"

	"baybinder/generator"
	"baybinder/generator/base/finding"
	"baybinder/generator/base/turn"
	"baybinder/generator/check"
	"baybinder/generator/command/begin"
	"baybinder/generator/command/browse"
)

// openCommand is what a double click on the program does.
type openCommand struct{}

// Help is the longer text of open --help.
func (*openCommand) Help() string {
	return "It builds the manual that lies in the folder content beside the program's own file, shows the site to this machine and opens it in the browser. " +
		"Where there is no manual it offers to begin one there. A double click on the program does the same."
}

// Run shows the manual that lies beside the program.
func (*openCommand) Run(g *globals, d *output) error {
	self, err := os.Executable()
	if err != nil {
		return err
	}
	if real, err := filepath.EvalSymlinks(self); err == nil {
		self = real
	}
	return d.open(g, filepath.Dir(self))
}

// open shows the manual of a folder until the program is ended.
func (d *output) open(g *globals, folder string) error {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	listener, err := net.Listen("tcp", net.JoinHostPort(browse.Loopback, "0"))
	if err != nil {
		return err
	}
	o := g.options()
	o.Manual, o.To, o.Waiting = filepath.Join(folder, "content"), filepath.Join(folder, "public"), d.waitsFor
	d.language = generator.LanguageOf(o.Manual)
	door := &door{options: o, host: listener.Addr().String(), token: rand.Text()}
	door.look()
	server := &http.Server{Handler: door, ReadHeaderTimeout: 10 * time.Second}
	d.inform("%s shows %s", "http://"+door.host+"/", o.Manual)
	d.progress("Ctrl-C ends it.")
	d.toBrowser("http://" + door.host + "/")
	defer context.AfterFunc(ctx, func() { _ = server.Close() })()
	if err := server.Serve(listener); !errors.Is(err, http.ErrServerClosed) {
		return err
	}
	return nil
}

// toBrowser opens an address in the browser. Where none opens, the address
// stands on the terminal.
func (d *output) toBrowser(address string) {
	openers.Stdout, openers.Stderr = io.Discard, io.Discard
	if err := openers.OpenURL(address); err != nil {
		d.remark("No browser could be opened: open %s yourself.", address)
	}
}

// door serves the site once there is one, and before that says what there is to
// do.
type door struct {
	options generator.Options
	host    string // of this server
	token   string // which only a page of this server knows

	mu   sync.Mutex
	said doorPage // what there is to do; empty where the site is shown
}

// doorPage is the page before the site.
type doorPage struct {
	Manual   string
	Missing  bool   // there is no manual yet
	Findings string // what keeps the site from being built
	Last     bool   // the last good site is there
	Token    string

	Lang, Title, Wrong, Stands, Again string // in the language of the manual's shop
}

// speak puts the words of the page in the language of the shop.
func (p *doorPage) speak() {
	t := generator.TongueOf(p.Manual)
	p.Lang = t.Lang
	p.Title = told(t, finding.Say("The manual has errors"))
	p.Wrong = told(t, finding.Say("This is wrong in %s. Mend it there, then look again.", p.Manual))
	p.Stands = told(t, finding.Say("Until then the last good site stands."))
	p.Again = told(t, finding.Say("Look again"))
}

//go:embed door.html
var doorText string

var doorTemplate = template.Must(template.New("door").Parse(doorText))

// look builds the site, where there is a manual.
func (d *door) look() {
	d.said = doorPage{Manual: d.options.Manual, Token: d.token}
	if _, err := os.Stat(filepath.Join(d.options.Manual, "shop.yaml")); errors.Is(err, os.ErrNotExist) {
		d.said.Missing = true
		return
	}
	d.said.speak()
	r, err := generator.Build(d.options)
	_, last := os.Stat(filepath.Join(d.options.To, "index.html"))
	switch {
	case err != nil:
		d.said.Findings = lines(d.told(finding.Told(err)))
	case r.Stopped():
		var text strings.Builder
		_ = finding.Text(&text, r.Findings, finding.TextOptions{First: check.Causes(), Tongue: r.Tongue()}) // into memory
		d.said.Findings = text.String()
		d.said.Last = last == nil
	default:
		d.said = doorPage{}
	}
}

// told is words in the language of the shop.
func (d *door) told(w finding.Words) string { return told(generator.TongueOf(d.options.Manual), w) }

// begin writes a manual where there is none, and looks again.
func (d *door) begin() {
	if d.said.Missing {
		done, err := turn.In(d.options.Manual, d.options.Waiting)
		if err == nil {
			_, err = begin.Manual(d.options.Manual)
			done()
		}
		if err != nil {
			d.said.Findings = lines(d.told(finding.Told(err)))
			return
		}
	}
	d.look()
}

// ServeHTTP answers a browser on this machine. Something is written only for who
// knows the page that was served.
func (d *door) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	d.mu.Lock()
	defer d.mu.Unlock()
	if r.Method == http.MethodPost && r.URL.Path == "/begin" && r.Host == d.host {
		if !d.asks(r) {
			http.Error(w, d.told(finding.Say("go back to the first page, and press the button there")), http.StatusForbidden)
			return
		}
		d.begin()
		http.Redirect(w, r, "/", http.StatusSeeOther)
		return
	}
	browse.Guard(browse.Loopback, http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if d.said == (doorPage{}) || d.said.Last && r.URL.Path != "/" {
			browse.Handler(d.options.To).ServeHTTP(w, r)
			return
		}
		w.Header().Set("Content-Security-Policy", "default-src 'none'; style-src 'unsafe-inline'; form-action 'self'; frame-ancestors 'none'")
		w.Header().Set("Cache-Control", "no-store")
		_ = doorTemplate.Execute(w, d.said) // who asked may be gone
	})).ServeHTTP(w, r)
}

// asks says that a request is the button of a page of this server.
func (d *door) asks(r *http.Request) bool {
	r.Body = http.MaxBytesReader(nil, r.Body, 1<<10)
	origin := r.Header.Get("Origin")
	return (origin == "" || origin == "http://"+d.host) && subtle.ConstantTimeCompare([]byte(r.PostFormValue("token")), []byte(d.token)) == 1
}
