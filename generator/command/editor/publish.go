package editor

import (
	"context"
	"encoding/json"
	"maps"
	"slices"

	"go.lsp.dev/protocol"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
)

// publish tells the editor what is found where it differs from what it has; of
// one file alone where it is named.
func (s *Server) publish(name string) {
	s.mu.Lock()
	defer s.mu.Unlock()
	found := map[string][]protocol.Diagnostic{}
	for _, f := range s.manual.Findings() {
		if at := f.At.Path(); name == "" || at == name {
			found[at] = append(found[at], s.diagnostic(f))
		}
	}
	for at := range s.published {
		if _, still := found[at]; !still && (name == "" || at == name) {
			found[at] = []protocol.Diagnostic{}
		}
	}
	for _, at := range slices.Sorted(maps.Keys(found)) {
		s.send(at, found[at])
	}
}

func (s *Server) send(name string, list []protocol.Diagnostic) {
	if name == "" {
		return
	}
	text, err := json.Marshal(list)
	if err != nil || s.published[name] == string(text) {
		return
	}
	s.published[name] = string(text)
	if len(list) == 0 {
		delete(s.published, name)
	}
	_ = s.conn.Notify(context.Background(), protocol.MethodTextDocumentPublishDiagnostics, &protocol.PublishDiagnosticsParams{
		URI: s.uriOf(name), Diagnostics: list,
	})
}

// diagnostic is a finding in the protocol's words.
func (s *Server) diagnostic(f finding.Finding) protocol.Diagnostic {
	d := protocol.Diagnostic{
		Range: span(f.At), Severity: protocol.DiagnosticSeverityError, Code: f.Code, Source: "baybinder", Message: f.Message,
	}
	if f.Level == finding.Advice {
		d.Severity = protocol.DiagnosticSeverityInformation
	}
	if f.Mend != "" {
		d.Message += "\n" + f.Mend
	}
	for _, r := range f.Related {
		if r.At.File != nil {
			d.RelatedInformation = append(d.RelatedInformation, protocol.DiagnosticRelatedInformation{
				Location: protocol.Location{URI: s.uriOf(r.At.Path()), Range: span(r.At)}, Message: r.Message,
			})
		}
	}
	return d
}

// span is a position in the protocol's words.
func span(at position.Pos) protocol.Range {
	if at.File == nil {
		return protocol.Range{}
	}
	return protocol.Range{Start: place(at.File, at.Start), End: place(at.File, at.End)}
}

func place(f *position.File, offset int) protocol.Position {
	line, col := f.UTF16(offset)
	return protocol.Position{Line: uint32(line), Character: uint32(col)}
}

// offset is a position of the protocol in a file; one past the end is the end.
func offset(f *position.File, at protocol.Position) int {
	const far = 1 << 30
	return f.FromUTF16(int(min(at.Line, far)), int(min(at.Character, far)))
}
