// Package editor serves a writer's editor over the Language Server Protocol.
//
// What is found, offered, mended and renamed is worked out below; here it is
// put into the protocol's words. Types and transport are libraries'.
//
// # Decided where the format is silent
//
// A change is looked at twice: the procedure alone at once, everything once the
// writer has been quiet for 200 ms. What is told in the end is what `check` says
// of the same texts. Advice is shown as information. What cannot be done yet is
// offered last, with what is in the way. A request for a file that is none of
// the manual's gets an empty answer. A message that cannot be read is passed
// over, and logged to the editor. The request `baybinder/settled` is ours: it is
// answered once everything that was sent before it is looked at.
package editor

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net/url"
	"os"
	"path"
	"path/filepath"
	"runtime"
	"strings"
	"sync"
	"time"

	"go.lsp.dev/jsonrpc2"
	"go.lsp.dev/protocol"
	"go.lsp.dev/uri"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/offers"
	"baybinder/generator/read/source"
)

// Manual is a manual while it is written: what the server asks of it.
type Manual interface {
	Hold(name, text string) // what the editor holds stands over the file
	Drop(name string)
	Changed()
	Quick(name string) bool // looks at one procedure again
	Whole() (bool, error)   // looks at everything anew; false where something changed meanwhile
	Bench() *offers.Bench
	Findings() []finding.Finding
	Tree() *source.Tree
	Today() model.Date
}

// Options say what is served.
type Options struct {
	Folder string                     // the manual's, where the editor opens none
	Open   func(folder string) Manual // begins with a manual
	Quiet  time.Duration              // how long the writer is quiet before everything is looked at
}

// Server answers one editor.
type Server struct {
	o        Options
	conn     jsonrpc2.Conn
	manual   Manual
	root     string // the manual's folder, absolute
	versions map[string]int32
	asked    map[string]handler
	shutdown bool

	mu        sync.Mutex
	published map[string]string // by path, the diagnostics that the editor has
	dirty     bool              // not everything was looked at
	pending   bool              // something came since everything was looked at last
	settled   []func()          // told once it is
	timer     *time.Timer
	working   bool
}

// handler answers one request; a notification's answer is dropped.
type handler func(ctx context.Context, params json.RawMessage) (any, error)

// Serve answers an editor until it ends, and says whether it ended as it should.
func Serve(ctx context.Context, rw io.ReadWriteCloser, o Options) error {
	s := &Server{o: o, versions: map[string]int32{}, published: map[string]string{}}
	s.asked = s.handlers()
	from := &pipe{ReadWriteCloser: rw}
	s.conn = jsonrpc2.NewConn(&forgiving{Stream: jsonrpc2.NewStream(from), from: from, lost: s.lost})
	s.conn.Go(ctx, s.handle)
	<-s.conn.Done()
	s.rest()
	if s.shutdown || errors.Is(s.conn.Err(), io.EOF) {
		return nil
	}
	return s.conn.Err()
}

// forgiving is a stream that passes over what cannot be read.
type forgiving struct {
	jsonrpc2.Stream
	from *pipe
	lost func(error)
}

// Read reads the next message that can be read.
func (f *forgiving) Read(ctx context.Context) (jsonrpc2.Message, int64, error) {
	for {
		msg, n, err := f.Stream.Read(ctx)
		if err == nil || f.from.ended || ctx.Err() != nil {
			return msg, n, err
		}
		f.lost(err)
	}
}

// pipe knows when there is nothing more to read.
type pipe struct {
	io.ReadWriteCloser
	ended bool
}

func (p *pipe) Read(into []byte) (int, error) {
	n, err := p.ReadWriteCloser.Read(into)
	p.ended = p.ended || err != nil
	return n, err
}

func (s *Server) lost(err error) {
	_ = s.conn.Notify(context.Background(), protocol.MethodWindowLogMessage, &protocol.LogMessageParams{
		Type: protocol.MessageTypeWarning, Message: "a message could not be read: " + err.Error(),
	})
}

// handle answers one message. What goes wrong in one answer ends that answer
// alone.
func (s *Server) handle(ctx context.Context, reply jsonrpc2.Replier, req jsonrpc2.Request) (err error) {
	defer func() {
		if fault := recover(); fault != nil {
			err = reply(ctx, nil, jsonrpc2.Errorf(jsonrpc2.InternalError, "this is a fault of the program, please report it: %v", fault))
		}
	}()
	if req.Method() == "baybinder/settled" {
		s.whenSettled(func() { _ = reply(ctx, true, nil) })
		return nil
	}
	answer, known := s.asked[req.Method()]
	if !known {
		return reply(ctx, nil, jsonrpc2.Errorf(jsonrpc2.MethodNotFound, "%s is not served", req.Method()))
	}
	result, err := answer(ctx, json.RawMessage(req.Params()))
	if req.Method() == protocol.MethodExit {
		return s.conn.Close()
	}
	return reply(ctx, result, err)
}

// on makes a handler of a function that takes the protocol's own parameters.
func on[P any](f func(p *P) (any, error)) handler {
	return func(_ context.Context, params json.RawMessage) (any, error) {
		p := new(P)
		if len(params) > 0 {
			if err := json.Unmarshal(params, p); err != nil {
				return nil, jsonrpc2.Errorf(jsonrpc2.InvalidParams, "%v", err)
			}
		}
		return f(p)
	}
}

// nothing is a notification that changes nothing.
func nothing(context.Context, json.RawMessage) (any, error) { return nil, nil }

func (s *Server) handlers() map[string]handler {
	return map[string]handler{
		protocol.MethodInitialize:  on(s.initialize),
		protocol.MethodInitialized: func(context.Context, json.RawMessage) (any, error) { s.look(""); return nil, nil },
		protocol.MethodShutdown:    func(context.Context, json.RawMessage) (any, error) { s.shutdown = true; return nil, nil },
		protocol.MethodExit:        nothing, protocol.MethodCancelRequest: nothing, protocol.MethodSetTrace: nothing,
		protocol.MethodWorkspaceDidChangeConfiguration: nothing,
		protocol.MethodTextDocumentDidOpen:             on(s.didOpen),
		protocol.MethodTextDocumentDidChange:           on(s.didChange),
		protocol.MethodTextDocumentDidSave:             on(s.didSave),
		protocol.MethodTextDocumentDidClose:            on(s.didClose),
		protocol.MethodWorkspaceDidChangeWatchedFiles:  on(s.didChangeFiles),
		protocol.MethodTextDocumentCompletion:          on(s.completion),
		protocol.MethodTextDocumentHover:               on(s.hover),
		protocol.MethodTextDocumentDefinition:          on(s.definition),
		protocol.MethodTextDocumentReferences:          on(s.references),
		protocol.MethodTextDocumentPrepareRename:       on(s.prepareRename),
		protocol.MethodTextDocumentRename:              on(s.rename),
		protocol.MethodTextDocumentCodeAction:          on(s.codeAction),
		protocol.MethodTextDocumentFoldingRange:        on(s.folding),
		protocol.MethodTextDocumentDocumentSymbol:      on(s.symbols),
	}
}

// opened are the folders that an editor has open, best first.
func opened(p *protocol.InitializeParams) []string {
	var out []string
	for _, f := range p.WorkspaceFolders {
		out = append(out, fileName(f.URI))
	}
	//lint:ignore SA1019 older editors send one address, or the path alone
	return append(out, fileName(string(p.RootURI)), p.RootPath)
}

func (s *Server) initialize(p *protocol.InitializeParams) (any, error) {
	folder := s.o.Folder
	for _, root := range opened(p) {
		if found := manualBelow(root); found != "" {
			folder = found
			break
		}
	}
	root, err := filepath.Abs(folder)
	if err != nil {
		return nil, err
	}
	if real, err := filepath.EvalSymlinks(root); err == nil {
		root = real
	}
	s.root, s.manual = root, s.o.Open(root)
	if _, err := s.manual.Whole(); err != nil {
		return nil, jsonrpc2.Errorf(jsonrpc2.InternalError, "%v", err)
	}
	return &protocol.InitializeResult{
		ServerInfo: &protocol.ServerInfo{Name: "baybinder"},
		Capabilities: protocol.ServerCapabilities{
			TextDocumentSync:       &protocol.TextDocumentSyncOptions{OpenClose: true, Change: protocol.TextDocumentSyncKindFull, Save: &protocol.SaveOptions{}},
			CompletionProvider:     &protocol.CompletionOptions{TriggerCharacters: []string{"(", ":", "#", " "}},
			HoverProvider:          true,
			DefinitionProvider:     true,
			ReferencesProvider:     true,
			RenameProvider:         &protocol.RenameOptions{PrepareProvider: true},
			CodeActionProvider:     &protocol.CodeActionOptions{CodeActionKinds: []protocol.CodeActionKind{protocol.QuickFix}},
			FoldingRangeProvider:   true,
			DocumentSymbolProvider: true,
		},
	}, nil
}

// manualBelow is the manual that an editor's folder is, or holds as content.
func manualBelow(root string) string {
	if root == "" {
		return ""
	}
	for _, folder := range []string{root, filepath.Join(root, "content")} {
		if _, err := os.Stat(filepath.Join(folder, "shop.yaml")); err == nil {
			return folder
		}
	}
	return ""
}

// fileName is the path of a file: URI; "" for any other.
func fileName(of string) string {
	u, err := url.Parse(of)
	if err != nil || u.Scheme != "file" {
		return ""
	}
	name := u.Path
	if runtime.GOOS == "windows" {
		name = strings.TrimPrefix(name, "/")
	}
	return filepath.FromSlash(name)
}

// inside is the path inside the manual of a URI; false for what is none of its
// text files.
func (s *Server) inside(of protocol.DocumentURI) (string, bool) {
	name := fileName(string(of))
	if name == "" || s.manual == nil {
		return "", false
	}
	if real, err := filepath.EvalSymlinks(filepath.Dir(name)); err == nil {
		name = filepath.Join(real, filepath.Base(name))
	}
	rel, err := filepath.Rel(s.root, name)
	if err != nil {
		return "", false
	}
	rel = filepath.ToSlash(rel)
	return rel, rel != ".." && !strings.HasPrefix(rel, "../") && !strings.HasPrefix(path.Base(rel), ".") && source.IsText(rel)
}

// uriOf is the URI of a path inside the manual.
func (s *Server) uriOf(name string) protocol.DocumentURI {
	return uri.File(filepath.Join(s.root, filepath.FromSlash(name)))
}

func (s *Server) didOpen(p *protocol.DidOpenTextDocumentParams) (any, error) {
	if name, ours := s.inside(p.TextDocument.URI); ours {
		s.versions[name] = p.TextDocument.Version
		s.manual.Hold(name, p.TextDocument.Text)
		s.look(name)
	}
	return nil, nil
}

func (s *Server) didChange(p *protocol.DidChangeTextDocumentParams) (any, error) {
	name, ours := s.inside(p.TextDocument.URI)
	if !ours || len(p.ContentChanges) == 0 {
		return nil, nil
	}
	s.versions[name] = p.TextDocument.Version
	s.manual.Hold(name, p.ContentChanges[len(p.ContentChanges)-1].Text)
	s.look(name)
	return nil, nil
}

func (s *Server) didSave(*protocol.DidSaveTextDocumentParams) (any, error) {
	if s.manual != nil {
		s.manual.Changed()
		s.look("")
	}
	return nil, nil
}

func (s *Server) didClose(p *protocol.DidCloseTextDocumentParams) (any, error) {
	if name, ours := s.inside(p.TextDocument.URI); ours {
		delete(s.versions, name)
		s.manual.Drop(name)
		s.look("")
	}
	return nil, nil
}

func (s *Server) didChangeFiles(*protocol.DidChangeWatchedFilesParams) (any, error) {
	return s.didSave(nil)
}

// look looks at one procedure at once, and at everything soon.
func (s *Server) look(name string) {
	if s.manual == nil {
		return
	}
	if name != "" && s.manual.Quick(name) {
		s.publish(name)
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	s.dirty, s.pending = true, true
	if s.timer != nil {
		s.timer.Stop()
	}
	s.timer = time.AfterFunc(s.o.Quiet, s.everything)
}

// everything looks at everything until nothing changed meanwhile, and tells it.
func (s *Server) everything() {
	s.mu.Lock()
	if s.working {
		s.mu.Unlock()
		return
	}
	s.working = true
	s.mu.Unlock()
	for !s.once() {
	}
}

// once looks at everything once, and says whether nothing came meanwhile: then
// all is told.
func (s *Server) once() bool {
	s.mu.Lock()
	s.pending = false
	s.mu.Unlock()
	whole, err := s.manual.Whole()
	if err != nil {
		s.lost(fmt.Errorf("the manual: %w", err))
	}
	if !whole {
		return false
	}
	s.publish("")
	s.mu.Lock()
	if s.pending {
		s.mu.Unlock()
		return false
	}
	s.working, s.dirty = false, false
	told := s.settled
	s.settled = nil
	s.mu.Unlock()
	for _, tell := range told {
		tell()
	}
	return true
}

// whenSettled tells once everything is looked at.
func (s *Server) whenSettled(tell func()) {
	s.mu.Lock()
	if s.dirty {
		s.settled = append(s.settled, tell)
		tell = nil
	}
	s.mu.Unlock()
	if tell != nil {
		tell()
	}
}

// rest lets nothing begin any more.
func (s *Server) rest() {
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.timer != nil {
		s.timer.Stop()
	}
}
