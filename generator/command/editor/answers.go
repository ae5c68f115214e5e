package editor

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"go.lsp.dev/jsonrpc2"
	"go.lsp.dev/protocol"

	"baybinder/generator/base/position"
	"baybinder/generator/command/rename"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/offers"
	"baybinder/generator/prove/walk"
)

// spot is where an editor asks.
type spot struct {
	*offers.Bench
	name   string
	file   *position.File
	offset int
}

// spot is the place of a request; false where it is none of the manual's.
func (s *Server) spot(doc protocol.TextDocumentIdentifier, at protocol.Position) (spot, bool) {
	name, ours := s.inside(doc.URI)
	if !ours {
		return spot{}, false
	}
	for _, f := range s.manual.Tree().Files {
		if f.Path == name {
			return spot{s.manual.Bench(), name, f, offset(f, at)}, true
		}
	}
	return spot{}, false
}

var (
	inAddress = regexp.MustCompile(`\]\(([^()\s]*)$`)
	inList    = regexp.MustCompile(`^(tools|hazards|supplies|holds|needs|for):[^#]*?([a-z0-9-]*)$`)
)

// listKinds are the kinds of links that name what a list holds.
var listKinds = map[string]string{
	"tools": model.LinkTool, "hazards": model.LinkHazard, "supplies": "supply", "holds": model.LinkHold, "needs": model.LinkRole, "for": "machine",
}

func (s *Server) completion(p *protocol.CompletionParams) (any, error) {
	list := &protocol.CompletionList{Items: []protocol.CompletionItem{}}
	at, ok := s.spot(p.TextDocument, p.Position)
	if !ok {
		return list, nil
	}
	proc := at.Procedure(at.name)
	if proc == nil {
		return list, nil
	}
	line, _ := at.file.LineCol(at.offset)
	before := at.file.Text[at.file.Offset(line, 1):at.offset]
	if m := inAddress.FindStringSubmatch(before); m != nil {
		list.Items = s.chosen(at, at.Choices(proc, m[1]), m[1])
		return list, nil
	}
	if m := inList.FindStringSubmatch(before); m != nil && at.offset < bodyAt(proc) {
		list.Items = s.chosen(at, at.Choices(proc, listKinds[m[1]]+":"), m[2])
		return list, nil
	}
	if slot, ok := at.SlotAt(at.name, at.offset); ok {
		list.Items = offered(at, slot)
	}
	return list, nil
}

// bodyAt is where the first phase begins.
func bodyAt(p *model.Procedure) int {
	if len(p.Phases) == 0 {
		return len(p.File.Text)
	}
	return p.Phases[0].At.Start
}

// chosen are ids for what was typed of an address so far.
func (s *Server) chosen(at spot, choices []offers.Choice, typed string) []protocol.CompletionItem {
	items := []protocol.CompletionItem{}
	_, id, has := strings.Cut(typed, ":")
	if !has {
		id = typed
	}
	replaced := span(at.file.At(at.offset-len(id), at.offset))
	for _, c := range choices {
		item := protocol.CompletionItem{
			Label: c.Text, Detail: c.Label, FilterText: c.Text, Kind: protocol.CompletionItemKindReference,
			TextEdit: &protocol.TextEdit{Range: replaced, NewText: c.Text},
		}
		if c.Entry != nil {
			item.Documentation = strings.Join(offers.Facts(c.Entry), "\n")
		}
		items = append(items, item)
	}
	return items
}

// offered are the steps that can be written at a slot.
func offered(at spot, slot offers.Slot) []protocol.CompletionItem {
	items := []protocol.CompletionItem{}
	for i, o := range at.Offers(slot) {
		step := o.Edits[max(0, len(o.Edits)-1):]
		text := slot.Before + o.Sentence + slot.After
		item := protocol.CompletionItem{
			Label: o.Label, Detail: o.Detail, FilterText: strings.TrimSpace(slot.At.Text()) + " " + o.Label,
			Kind: protocol.CompletionItemKindEvent, SortText: fmt.Sprintf("%05d", i), Documentation: said(o),
			TextEdit: &protocol.TextEdit{Range: span(slot.At), NewText: text},
		}
		if !o.Possible() {
			item.Detail = "not yet: " + strings.Join(o.InTheWay, "; ")
		}
		for _, e := range o.Edits[:len(o.Edits)-len(step)] {
			item.AdditionalTextEdits = append(item.AdditionalTextEdits, protocol.TextEdit{Range: span(e.At), NewText: e.Text})
		}
		items = append(items, item)
	}
	return items
}

// said is why an offer is made and what comes of it.
func said(o offers.Offer) string {
	lines := []string{o.Sentence, "", o.Why}
	for _, n := range o.Needs {
		lines = append(lines, n.Kind+": "+n.Entry.Label())
	}
	for _, way := range o.InTheWay {
		lines = append(lines, "in the way: "+way)
	}
	for _, f := range o.Brings {
		lines = append(lines, "then: "+f.Message+" ["+f.Code+"]")
	}
	return strings.Join(lines, "\n")
}

func (s *Server) hover(p *protocol.HoverParams) (any, error) {
	at, ok := s.spot(p.TextDocument, p.Position)
	if !ok {
		return nil, nil
	}
	here, is := at.Here(at.name, at.offset)
	var lines []string
	if is && here.Link != nil && here.Link.To != nil {
		lines = append(lines, entryLines(here.Link.To)...)
	} else if thing, named := rename.At(at.Manual(), at.name, at.offset); named {
		if n := entryOf(at.Manual(), thing); n != nil {
			lines = append(lines, entryLines(n)...)
		}
	}
	if here.Step != nil {
		lines = append(lines, stepLines(here)...)
	}
	if len(lines) == 0 {
		return nil, nil
	}
	return &protocol.Hover{Contents: protocol.MarkupContent{Kind: protocol.PlainText, Value: strings.Join(lines, "\n")}}, nil
}

func entryLines(n model.Named) []string {
	return append([]string{n.Label() + " (" + n.Base().ID + ")"}, offers.Facts(n)...)
}

// stepLines say what a step warns of and tightens to, and where things stand.
func stepLines(h offers.Here) []string {
	var out []string
	if h.Refit != nil {
		out = append(out, "refit:")
		for _, d := range h.Refit.Steps {
			out = append(out, "  "+derivedWords(d))
		}
	}
	for _, c := range h.Cautions {
		out = append(out, strings.Join(append([]string{c.Spoken + ": " + c.Hazard.Label()}, c.Hazard.Consequence, strings.Join(c.Hazard.Avoid, " ")), " — "))
	}
	for _, t := range h.Torques {
		out = append(out, t.Fastener.Label()+": "+t.Words)
		for _, w := range t.Ways {
			if w.Adapter != nil {
				out = append(out, "  "+w.Wrench.Label()+" with "+w.Adapter.Label()+" set to "+w.Set.String()+": "+w.Explain(&language.Default().Worked.Adapter).Formula)
			}
		}
	}
	out = append(out, "before this step: "+standing(h.Before), "after it: "+standing(h.After))
	return out
}

func derivedWords(d walk.Derived) string {
	words := map[model.Act]string{model.Refit: "refit", model.Tighten: "tighten", model.Clear: "take away", model.Reset: "reset"}[d.Verb]
	out := d.Label + " " + words + " " + d.Thing.Label()
	for _, f := range d.Fasteners {
		out += "; " + f.Fastener.Label()
		if !f.Torque.IsZero() {
			out += " " + f.Torque.String()
		}
	}
	if d.When != "" {
		out += " (" + d.When + ")"
	}
	return out
}

func standing(list []walk.Standing) string {
	if len(list) == 0 {
		return "as on a whole machine"
	}
	var each []string
	for _, s := range list {
		words := s.Label() + " " + s.Word
		if s.When != "" {
			words += " (" + s.When + ")"
		}
		each = append(each, words)
	}
	return strings.Join(each, ", ")
}

// entryOf is the entry that an id names.
func entryOf(m *model.Manual, t rename.Thing) model.Named {
	if t.Machine != nil {
		return t.Machine.Find(t.ID)
	}
	for _, list := range [][]model.Named{model.AsNamed(m.Procedures), model.AsNamed(m.Machines), model.AsNamed(m.Tools), model.AsNamed(m.Hazards), model.AsNamed(m.Holds), model.AsNamed(m.Supplies), model.AsNamed(m.Roles)} {
		for _, n := range list {
			if n.Base().ID == t.ID && kindOf(n) == t.Kind {
				return n
			}
		}
	}
	return nil
}

func kindOf(n model.Named) string {
	switch n.(type) {
	case *model.Procedure:
		return "procedure"
	case *model.Machine:
		return "machine"
	case *model.Tool:
		return model.LinkTool
	case *model.Hazard:
		return model.LinkHazard
	case *model.Hold:
		return model.LinkHold
	case *model.Supply:
		return "supply"
	case *model.Role:
		return model.LinkRole
	}
	return ""
}

func (s *Server) definition(p *protocol.DefinitionParams) (any, error) {
	none := []protocol.Location{}
	at, ok := s.spot(p.TextDocument, p.Position)
	if !ok {
		return none, nil
	}
	if here, is := at.Here(at.name, at.offset); is && here.Link != nil {
		switch l := here.Link; {
		case l.Step() != nil:
			return []protocol.Location{s.location(l.Step().At)}, nil
		case l.Phase() != nil:
			return []protocol.Location{s.location(l.Phase().At)}, nil
		case l.To != nil && l.To.Base().At.File != nil:
			return []protocol.Location{s.location(l.To.Base().At)}, nil
		}
	}
	if thing, is := rename.At(at.Manual(), at.name, at.offset); is {
		if n := entryOf(at.Manual(), thing); n != nil && n.Base().At.File != nil {
			return []protocol.Location{s.location(n.Base().At)}, nil
		}
	}
	return none, nil
}

func (s *Server) location(at position.Pos) protocol.Location {
	return protocol.Location{URI: s.uriOf(at.Path()), Range: span(at)}
}

func (s *Server) references(p *protocol.ReferenceParams) (any, error) {
	out := []protocol.Location{}
	at, ok := s.spot(p.TextDocument, p.Position)
	if !ok {
		return out, nil
	}
	thing, is := rename.At(at.Manual(), at.name, at.offset)
	if !is {
		return out, nil
	}
	n := entryOf(at.Manual(), thing)
	for _, place := range thing.Places(at.Manual()) {
		if !p.Context.IncludeDeclaration && n != nil && n.Base().At == place {
			continue
		}
		out = append(out, s.location(place))
	}
	return out, nil
}

func (s *Server) prepareRename(p *protocol.PrepareRenameParams) (any, error) {
	at, ok := s.spot(p.TextDocument, p.Position)
	if !ok {
		return nil, nil
	}
	if thing, is := rename.At(at.Manual(), at.name, at.offset); is {
		return span(thing.At), nil
	}
	return nil, nil
}

// renamed is what a rename changes: the protocol's library has no type for a
// list that holds edits and new names of files.
type renamed struct {
	DocumentChanges []any `json:"documentChanges"`
}

func (s *Server) rename(p *protocol.RenameParams) (any, error) {
	at, ok := s.spot(p.TextDocument, p.Position)
	if !ok {
		return nil, jsonrpc2.Errorf(jsonrpc2.InvalidParams, "this file is none of the manual's")
	}
	thing, is := rename.At(at.Manual(), at.name, at.offset)
	if !is {
		return nil, jsonrpc2.Errorf(jsonrpc2.InvalidParams, "nothing that can be renamed is named here")
	}
	o := rename.Options{Today: s.manual.Today(), Kind: thing.Kind, Old: thing.ID, New: p.NewName}
	if thing.Machine != nil {
		o.Machine = thing.Machine.ID
	}
	change, err := rename.Would(s.manual.Tree(), o)
	if err != nil {
		return nil, jsonrpc2.Errorf(jsonrpc2.InvalidParams, "%v", err)
	}
	return s.renamed(change), nil
}

func (s *Server) renamed(change *rename.Change) *renamed {
	out := &renamed{DocumentChanges: []any{}}
	for f, pieces := range change.Pieces {
		doc := protocol.TextDocumentEdit{TextDocument: protocol.OptionalVersionedTextDocumentIdentifier{
			TextDocumentIdentifier: protocol.TextDocumentIdentifier{URI: s.uriOf(f.Path)},
		}}
		for _, piece := range pieces {
			doc.Edits = append(doc.Edits, protocol.TextEdit{Range: span(f.At(piece.At, piece.At+piece.Cut)), NewText: piece.Text})
		}
		out.DocumentChanges = append(out.DocumentChanges, doc)
	}
	slices.SortFunc(out.DocumentChanges, func(a, b any) int {
		return strings.Compare(string(a.(protocol.TextDocumentEdit).TextDocument.URI), string(b.(protocol.TextDocumentEdit).TextDocument.URI))
	})
	for _, old := range sortedKeys(change.Moves) {
		out.DocumentChanges = append(out.DocumentChanges, protocol.RenameFile{
			Kind: protocol.RenameResourceOperation, OldURI: s.uriOf(old), NewURI: s.uriOf(change.Moves[old]),
		})
	}
	return out
}

func sortedKeys(m map[string]string) []string {
	var out []string
	for k := range m {
		out = append(out, k)
	}
	slices.Sort(out)
	return out
}

func (s *Server) codeAction(p *protocol.CodeActionParams) (any, error) {
	out := []protocol.CodeAction{}
	at, ok := s.spot(p.TextDocument, p.Range.Start)
	if !ok {
		return out, nil
	}
	to := offset(at.file, p.Range.End)
	for _, f := range s.manual.Findings() {
		if f.At.Path() != at.name || f.At.File.Text != at.file.Text || f.At.End < at.offset || f.At.Start > to {
			continue
		}
		for _, m := range at.Mends(f) {
			edits := map[protocol.DocumentURI][]protocol.TextEdit{}
			for _, e := range m.Edits {
				u := s.uriOf(e.At.Path())
				edits[u] = append(edits[u], protocol.TextEdit{Range: span(e.At), NewText: e.Text})
			}
			out = append(out, protocol.CodeAction{
				Title: m.Title, Kind: protocol.QuickFix, Diagnostics: []protocol.Diagnostic{s.diagnostic(f)}, Edit: &protocol.WorkspaceEdit{Changes: edits},
			})
		}
	}
	return out, nil
}

// procedure is what a document is of a procedure, nil where it is of none.
func (s *Server) procedure(of protocol.TextDocumentIdentifier) (at spot, proc *model.Procedure) {
	at, ok := s.spot(of, protocol.Position{})
	if ok {
		proc = at.Procedure(at.name)
	}
	return at, proc
}

func (s *Server) folding(p *protocol.FoldingRangeParams) (any, error) {
	out := []protocol.FoldingRange{}
	_, proc := s.procedure(p.TextDocument)
	if proc == nil {
		return out, nil
	}
	add := func(at position.Pos) {
		if r := span(at); r.End.Line > r.Start.Line {
			out = append(out, protocol.FoldingRange{StartLine: r.Start.Line, EndLine: r.End.Line, Kind: protocol.RegionFoldingRange})
		}
	}
	if end := strings.Index(proc.File.Text[min(3, len(proc.File.Text)):], "\n---"); strings.HasPrefix(proc.File.Text, "---") && end >= 0 {
		add(proc.File.At(0, end+3+len("\n---")))
	}
	for i := range proc.Phases {
		add(phaseExtent(proc, i))
	}
	for _, step := range proc.Steps {
		add(offers.Extent(step))
	}
	return out, nil
}

// phaseExtent is from a phase's heading to the last line before the next.
func phaseExtent(p *model.Procedure, i int) position.Pos {
	end := len(p.File.Text)
	if i+1 < len(p.Phases) {
		end = p.Phases[i+1].At.Start
	}
	start := min(p.Phases[i].At.Start, end)
	return p.File.At(start, start+len(strings.TrimRight(p.File.Text[start:end], "\n #\t")))
}

func (s *Server) symbols(p *protocol.DocumentSymbolParams) (any, error) {
	out := []protocol.DocumentSymbol{}
	at, proc := s.procedure(p.TextDocument)
	if proc == nil {
		return out, nil
	}
	w := at.Walks.Of(proc)
	for i, ph := range proc.Phases {
		where := phaseExtent(proc, i)
		symbol := protocol.DocumentSymbol{
			Name: orID(ph.Title.Plain, ph.ID), Kind: protocol.SymbolKindNamespace, Range: span(where), SelectionRange: span(proc.File.At(where.Start, where.Start)),
		}
		for _, step := range ph.Steps {
			symbol.Children = append(symbol.Children, stepSymbol(w, step))
		}
		out = append(out, symbol)
	}
	return out, nil
}

func orID(words, id string) string {
	if words = strings.TrimSpace(words); words != "" {
		return words
	}
	return id
}

// stepSymbol is a step in the outline, with the refit that follows from it.
func stepSymbol(w *walk.Walk, step *model.Step) protocol.DocumentSymbol {
	where := span(offers.Extent(step))
	words := ""
	for _, b := range step.Blocks {
		if words == "" {
			words = strings.Join(strings.Fields(b.Plain), " ")
		}
	}
	out := protocol.DocumentSymbol{Name: strings.TrimSpace(step.Number + " " + words), Kind: protocol.SymbolKindFunction, Range: where, SelectionRange: protocol.Range{Start: where.Start, End: where.Start}}
	for _, sub := range step.Subs {
		out.Children = append(out.Children, stepSymbol(w, sub))
	}
	for _, l := range step.Links {
		if r := w.Reversal(l); r != nil {
			for _, d := range r.Steps {
				out.Children = append(out.Children, protocol.DocumentSymbol{Name: derivedWords(d), Kind: protocol.SymbolKindEvent, Range: where, SelectionRange: out.SelectionRange})
			}
		}
	}
	return out
}
