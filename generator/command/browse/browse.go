// Package browse serves a published site to browsers on this machine.
//
// It reads the site's folder anew for every request, so that what a build has
// just swapped in is what is seen. It writes nothing.
package browse

import (
	"context"
	"errors"
	"io"
	"log"
	"net"
	"net/http"
	"os"
	"path/filepath"
	"strconv"
	"time"

	"baybinder/generator/base/finding"
)

// Options say what is served, and where.
type Options struct {
	Folder  string // the published site
	Address string // "127.0.0.1" unless told otherwise
	Port    int    // 0: one that is free

	// Wrap puts a handler before the site's own. The site need not be there yet.
	Wrap func(site http.Handler) http.Handler
	// Takes are the addresses at which that handler takes what pages send.
	Takes []string
}

// Loopback is the address that only this machine can reach.
const Loopback = "127.0.0.1"

// Site is a folder that is about to be served.
type Site struct {
	listener net.Listener
	server   *http.Server
}

// Open takes the address. The error says that there is no site, or that the
// address is taken.
func Open(o Options) (*Site, error) {
	if _, err := os.Stat(filepath.Join(o.Folder, index)); err != nil && o.Wrap == nil {
		return nil, finding.Refuse("there is no site in %s: run baybinder build first", o.Folder)
	}
	if o.Address == "" {
		o.Address = Loopback
	}
	listener, err := net.Listen("tcp", net.JoinHostPort(o.Address, strconv.Itoa(o.Port)))
	if err != nil {
		return nil, finding.Refuse("the site cannot be served at %s port %d: %s", o.Address, o.Port, reason(err))
	}
	handler := Handler(o.Folder)
	if o.Wrap != nil {
		handler = o.Wrap(handler)
	}
	server := &http.Server{
		Handler:           Guard(o.Address, handler, o.Takes...),
		ReadHeaderTimeout: 10 * time.Second,
		ErrorLog:          log.New(io.Discard, "", 0), // a request that breaks off is nobody's news
	}
	return &Site{listener: listener, server: server}, nil
}

// reason is the operating system's word for what went wrong.
func reason(err error) error {
	var op *net.OpError
	if errors.As(err, &op) {
		return op.Err
	}
	return err
}

// URL is where the site is. One that is served at every address of this machine
// is found by the machine's name.
func (s *Site) URL() string {
	at := s.listener.Addr().(*net.TCPAddr)
	if own, err := os.Hostname(); err == nil && at.IP.IsUnspecified() {
		return "http://" + net.JoinHostPort(own, strconv.Itoa(at.Port)) + "/"
	}
	return "http://" + at.String() + "/"
}

// Serve answers requests until the context ends, which is a clean end.
func (s *Site) Serve(ctx context.Context) error {
	stop := context.AfterFunc(ctx, func() { _ = s.server.Close() })
	defer stop()
	if err := s.server.Serve(s.listener); !errors.Is(err, http.ErrServerClosed) {
		return err
	}
	return nil
}
