package editor_test

import (
	"context"
	"encoding/json"
	"fmt"
	"io"
	"io/fs"
	"maps"
	"net"
	"os"
	"path/filepath"
	"slices"
	"sort"
	"strings"
	"sync"
	"testing"
	"time"
	"unicode/utf16"

	"go.lsp.dev/jsonrpc2"
	"go.lsp.dev/protocol"
	"go.lsp.dev/uri"
	"pgregory.net/rapid"

	"baybinder/generator"
	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/bigmanual"
	"baybinder/generator/command/editor"
	"baybinder/generator/model"
)

// Known: DERIVED.

var today = model.Date{Year: 2026, Month: 5, Day: 4}

// manual is the shop of testdata with one job; all its values are invented.
var manual = func() map[string]string {
	all := map[string]string{
		"procedures/job.md": "---\ntitle: Job — 🔧\nfor: rig\ntools: [socket-13]\n---\n\n## Strip\n\n1. [Take the séat 🔧 off](remove:seat) with the [](tool:socket-13).\n2. Look at it.\n\n## Refit\n\n1. [Back](reverse:strip)\n",
	}
	shop := os.DirFS("testdata/shop")
	err := fs.WalkDir(shop, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		text, err := fs.ReadFile(shop, name)
		all[name] = string(text)
		return err
	})
	if err != nil {
		panic(err)
	}
	return all
}()

// client is an editor: what it was told stays with it.
type client struct {
	t    testing.TB
	dir  string
	conn jsonrpc2.Conn
	done chan error

	mu   sync.Mutex
	told map[protocol.DocumentURI][]protocol.Diagnostic
}

func write(t testing.TB, dir, name, text string) {
	full := filepath.Join(dir, filepath.FromSlash(name))
	if err := os.MkdirAll(filepath.Dir(full), 0o755); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(full, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

// begin starts a server on a folder, and an editor that has it open.
func begin(t testing.TB, dir string) *client {
	theirs, ours := net.Pipe()
	c := &client{t: t, dir: dir, done: make(chan error, 1), told: map[protocol.DocumentURI][]protocol.Diagnostic{}}
	go func() {
		c.done <- editor.Serve(context.Background(), theirs, editor.Options{Folder: dir, Open: func(folder string) editor.Manual {
			return generator.NewWriting(generator.Options{Manual: folder, Today: today})
		}})
	}()
	c.conn = jsonrpc2.NewConn(jsonrpc2.NewStream(ours))
	c.conn.Go(context.Background(), c.hear)
	c.ask(protocol.MethodInitialize, &protocol.InitializeParams{WorkspaceFolders: []protocol.WorkspaceFolder{{URI: string(uri.File(dir)), Name: "manual"}}}, nil)
	c.tell(protocol.MethodInitialized, &protocol.InitializedParams{})
	return c
}

func (c *client) hear(ctx context.Context, reply jsonrpc2.Replier, req jsonrpc2.Request) error {
	if req.Method() == protocol.MethodTextDocumentPublishDiagnostics {
		var p protocol.PublishDiagnosticsParams
		if err := json.Unmarshal(req.Params(), &p); err != nil {
			c.t.Error(err)
		}
		c.mu.Lock()
		c.told[p.URI] = p.Diagnostics
		c.mu.Unlock()
	}
	return reply(ctx, nil, nil)
}

func (c *client) ask(method string, params, result any) {
	c.t.Helper()
	if _, err := c.conn.Call(context.Background(), method, params, result); err != nil {
		c.t.Fatalf("%s: %v", method, err)
	}
}

func (c *client) tell(method string, params any) {
	c.t.Helper()
	if err := c.conn.Notify(context.Background(), method, params); err != nil {
		c.t.Fatalf("%s: %v", method, err)
	}
}

// settled waits until the server has looked at everything.
func (c *client) settled() { c.t.Helper(); c.ask("baybinder/settled", nil, nil) }

func (c *client) uri(name string) protocol.DocumentURI {
	return uri.File(filepath.Join(c.dir, filepath.FromSlash(name)))
}

func (c *client) open(name, text string) {
	c.tell(protocol.MethodTextDocumentDidOpen, &protocol.DidOpenTextDocumentParams{TextDocument: protocol.TextDocumentItem{URI: c.uri(name), LanguageID: "markdown", Version: 1, Text: text}})
}

func (c *client) change(name, text string) {
	c.tell(protocol.MethodTextDocumentDidChange, map[string]any{
		"textDocument":   map[string]any{"uri": c.uri(name), "version": 2},
		"contentChanges": []map[string]any{{"text": text}},
	})
}

// end ends the session as an editor does.
func (c *client) end() {
	c.ask(protocol.MethodShutdown, nil, nil)
	c.tell(protocol.MethodExit, nil)
	if err := <-c.done; err != nil {
		c.t.Errorf("the server ended with %v", err)
	}
}

// line is a diagnostic as one line, to be compared.
func line(name string, startLine, startCol, endLine, endCol int, severity protocol.DiagnosticSeverity, code any, message string) string {
	return fmt.Sprintf("%s:%d:%d-%d:%d %v %v %s", name, startLine, startCol, endLine, endCol, severity, code, message)
}

func (c *client) heard() []string {
	c.mu.Lock()
	defer c.mu.Unlock()
	var out []string
	for u, list := range c.told {
		name, _ := filepath.Rel(c.dir, u.Filename())
		for _, d := range list {
			out = append(out, line(filepath.ToSlash(name), int(d.Range.Start.Line), int(d.Range.Start.Character), int(d.Range.End.Line), int(d.Range.End.Character), d.Severity, d.Code, d.Message))
		}
	}
	sort.Strings(out)
	return out
}

// checked is what check says of a folder, its columns counted by the standard
// library.
func checked(t testing.TB, dir string) []string {
	r, err := generator.Check(generator.Options{Manual: dir, Today: today})
	if err != nil {
		t.Fatal(err)
	}
	var out []string
	for _, f := range r.Findings {
		if f.At.File == nil {
			continue
		}
		startLine, startCol := columns(f.At.File, f.At.Start)
		endLine, endCol := columns(f.At.File, f.At.End)
		severity, message := protocol.DiagnosticSeverityError, f.Message
		if f.Level == finding.Advice {
			severity = protocol.DiagnosticSeverityInformation
		}
		if f.Mend != "" {
			message += "\n" + f.Mend
		}
		out = append(out, line(f.At.Path(), startLine, startCol, endLine, endCol, severity, f.Code, message))
	}
	sort.Strings(out)
	return out
}

func columns(f *position.File, offset int) (line, col int) {
	before := f.Text[:offset]
	last := before[strings.LastIndexByte(before, '\n')+1:]
	return strings.Count(before, "\n"), len(utf16.Encode([]rune(last)))
}

// What the server tells after any edits is what check says of the same texts,
// saved.
func TestWhatIsToldIsWhatCheckSays(t *testing.T) {
	pieces := []string{
		"[](tool:socket-13)", "[off](remove:lid)", "[x](isolate:plug)", "[y](lock:plug)", "[](hazard:shock)", "[](tool:sokcet-13)", "[p](place:socket-13)",
		"\n", "\n\n", "1. ", "3. Undo the bolt.\n", "## Work\n\n", "---\n", "tools: [socket-13]\n", "status: draft\n", "for: rig\n", "é", "🔧", "[", "](", ")", "\r\n", "under: [lid]", ": ", "{", "}", "\x00", "\xff",
	}
	names := []string{"procedures/job.md", "machines/rig.yaml", "register/tools.yaml", "procedures/new.md", "shop.yaml"}
	rapid.Check(t, func(rt *rapid.T) {
		dir, saved := t.TempDir(), t.TempDir()
		for name, text := range manual {
			write(t, dir, name, text)
		}
		c := begin(t, dir)
		files, opened := maps.Clone(manual), map[string]bool{}
		for range rapid.IntRange(1, 6).Draw(rt, "edits") {
			name := rapid.SampledFrom(append(names, names[0], names[0])).Draw(rt, "file")
			text := files[name]
			from := rapid.IntRange(0, len(text)).Draw(rt, "from")
			to := rapid.IntRange(from, min(len(text), from+8)).Draw(rt, "to")
			text = strings.ToValidUTF8(text[:from]+rapid.SampledFrom(pieces).Draw(rt, "piece")+text[to:], "\ufffd")
			files[name] = text
			if opened[name] {
				c.change(name, text)
			} else {
				c.open(name, text)
			}
			opened[name] = true
		}
		c.settled()
		for name, text := range files {
			write(t, saved, name, text)
		}
		if got, want := c.heard(), checked(t, saved); !slices.Equal(got, want) {
			rt.Fatalf("told:\n%s\n\ncheck:\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
		}
		c.end()
	})
}

// Nothing that an editor can send makes an answer a fault of the program, or
// ends the server.
func TestHostileInput(t *testing.T) {
	dir := t.TempDir()
	for name, text := range manual {
		write(t, dir, name, text)
	}
	c := begin(t, dir)
	c.open("procedures/job.md", manual["procedures/job.md"])
	docs := []any{c.uri("procedures/job.md"), c.uri("procedures/none.md"), c.uri("pictures/a.png"), c.uri("../shop.yaml"), "file:///etc/shop.yaml", "untitled:1", "%zz", "", 7, nil}
	places := []any{
		map[string]any{"line": 8, "character": 30}, map[string]any{"line": 99999, "character": 0}, map[string]any{"line": 4294967295, "character": 4294967295},
		map[string]any{"line": -1, "character": -5}, map[string]any{"line": 0.5}, "x", nil,
	}
	methods := []string{
		protocol.MethodTextDocumentCompletion, protocol.MethodTextDocumentHover, protocol.MethodTextDocumentDefinition, protocol.MethodTextDocumentReferences,
		protocol.MethodTextDocumentPrepareRename, protocol.MethodTextDocumentRename, protocol.MethodTextDocumentCodeAction, protocol.MethodTextDocumentFoldingRange,
		protocol.MethodTextDocumentDocumentSymbol, protocol.MethodTextDocumentDidOpen, protocol.MethodTextDocumentDidChange, protocol.MethodTextDocumentDidClose, "no/such",
	}
	for _, method := range methods {
		for _, doc := range docs {
			for _, at := range places {
				_, err := c.conn.Call(context.Background(), method, map[string]any{
					"textDocument": map[string]any{"uri": doc}, "position": at, "range": map[string]any{"start": at, "end": at}, "newName": "\x00 bad",
					"context": map[string]any{"diagnostics": []any{}},
				}, nil)
				if err != nil && strings.Contains(err.Error(), "fault of the program") {
					t.Errorf("%s of %v at %v: %v", method, doc, at, err)
				}
			}
		}
		for _, params := range []any{nil, []int{1}, "x", map[string]any{"textDocument": 3}} {
			if _, err := c.conn.Call(context.Background(), method, params, nil); err != nil && strings.Contains(err.Error(), "fault of the program") {
				t.Errorf("%s with %v: %v", method, params, err)
			}
		}
	}
	c.settled()
	c.end()
}

// A message that cannot be read is passed over.
func TestUnreadableMessages(t *testing.T) {
	dir := t.TempDir()
	for name, text := range manual {
		write(t, dir, name, text)
	}
	theirs, ours := net.Pipe()
	done := make(chan error, 1)
	go func() {
		done <- editor.Serve(context.Background(), theirs, editor.Options{Folder: dir, Open: func(folder string) editor.Manual {
			return generator.NewWriting(generator.Options{Manual: folder, Today: today})
		}})
	}()
	answers := make(chan string, 1)
	go func() {
		text, _ := io.ReadAll(ours)
		answers <- string(text)
	}()
	frame := func(body string) string { return fmt.Sprintf("Content-Length: %d\r\n\r\n%s", len(body), body) }
	for _, text := range []string{
		frame(`{"jsonrpc":"2.0","id":1,"method":"init`), frame(`[]`), frame(`{"jsonrpc":"2.0"}`), frame("\x00\xff"), "Content-Length: x\r\n\r\n", "nonsense\r\n\r\n",
		frame(`{"jsonrpc":"2.0","id":2,"method":"textDocument/hover","params":{}}`),
		frame(`{"jsonrpc":"2.0","id":3,"method":"shutdown"}`), frame(`{"jsonrpc":"2.0","method":"exit"}`),
	} {
		if _, err := io.WriteString(ours, text); err != nil {
			t.Fatal(err)
		}
	}
	if err := <-done; err != nil {
		t.Errorf("it ended with %v", err)
	}
	if said := <-answers; !strings.Contains(said, `"id":3`) || !strings.Contains(said, "could not be read") {
		t.Errorf("it answered %q", said)
	}
}

// BenchmarkAnswers times what a writer waits for, warm, with 1,000 procedures:
// completion at a step, in an address, hover, definition, the outline, and the
// findings of one changed procedure. It reports the share that is under 50 ms of
// the processor's time, which other work on the machine does not stretch; what the
// check behind it takes meanwhile is in it.
func BenchmarkAnswers(b *testing.B) {
	dir := b.TempDir()
	if err := bigmanual.Write(dir, 1000, 1); err != nil {
		b.Fatal(err)
	}
	found, err := filepath.Glob(filepath.Join(dir, "procedures", "*", "*.md"))
	if err != nil || len(found) == 0 {
		b.Fatal("no procedures", err)
	}
	c := begin(b, dir)
	c.settled()
	var names []string
	texts := map[string]string{}
	for _, full := range found[:min(20, len(found))] {
		text, err := os.ReadFile(full)
		if err != nil {
			b.Fatal(err)
		}
		name, _ := filepath.Rel(dir, full)
		names = append(names, filepath.ToSlash(name))
		texts[filepath.ToSlash(name)] = string(text)
		c.open(filepath.ToSlash(name), string(text))
	}
	c.settled()
	times := make([][]time.Duration, 6)
	b.ResetTimer()
	for i := range b.N {
		name := names[i%len(names)]
		text := texts[name]
		at := strings.Index(text, "\n1. ")
		changed := text[:at] + "\n1. \n2. " + text[at+4:]
		step := place(changed, at+4)
		link := place(changed, strings.Index(changed, "](")+4)
		doc := map[string]any{"uri": c.uri(name)}
		for kind, q := range []func(){
			func() {
				c.change(name, changed)
				c.ask(protocol.MethodTextDocumentDocumentSymbol, map[string]any{"textDocument": doc}, nil)
			},
			func() {
				c.ask(protocol.MethodTextDocumentCompletion, map[string]any{"textDocument": doc, "position": step}, nil)
			},
			func() {
				c.ask(protocol.MethodTextDocumentCompletion, map[string]any{"textDocument": doc, "position": link}, nil)
			},
			func() {
				c.ask(protocol.MethodTextDocumentHover, map[string]any{"textDocument": doc, "position": link}, nil)
			},
			func() {
				c.ask(protocol.MethodTextDocumentDefinition, map[string]any{"textDocument": doc, "position": link}, nil)
			},
			func() { c.ask(protocol.MethodTextDocumentFoldingRange, map[string]any{"textDocument": doc}, nil) },
		} {
			begun := worked()
			q()
			times[kind] = append(times[kind], worked()-begun)
		}
		c.settled()
	}
	b.StopTimer()
	var all []time.Duration
	for kind, name := range []string{"change", "step", "address", "hover", "definition", "folding"} {
		slices.Sort(times[kind])
		b.ReportMetric(float64(times[kind][len(times[kind])*95/100].Microseconds())/1000, name+"-p95-ms")
		all = append(all, times[kind]...)
	}
	slices.Sort(all)
	under := sort.Search(len(all), func(i int) bool { return all[i] >= 50*time.Millisecond })
	b.ReportMetric(100*float64(under)/float64(len(all)), "%-under-50ms")
	b.ReportMetric(float64(all[len(all)*95/100].Microseconds())/1000, "p95-ms")
	c.end()
}

func place(text string, offset int) map[string]any {
	f := position.NewFile("a.md", text)
	line, col := columns(f, min(offset, len(f.Text)))
	return map[string]any{"line": line, "character": col}
}
