package page

import (
	"fmt"
	"slices"
	"strings"

	"baybinder/generator/language"

	"baybinder/generator/model"
)

// reading is a manual as it is read in another language than the shop's: its
// pages are worked out from the originals, and say it in these words.
type reading struct {
	language   string
	said       map[field][]string
	procedures map[*model.Procedure]*model.Procedure // original → translation
	phases     map[*model.Phase]*model.Phase
	steps      map[*model.Step]*model.Step
}

// field is a text of a thing, by the format's name for it.
type field struct {
	of   any // the thing: a pointer
	name string
}

// In is the site as it is read in one of the shop's other languages.
func (s *Site) In(tag string) *Site {
	in := *s
	in.Speaks, in.Marker = Speaking(tag), language.Marker(tag)
	in.Words = &in.Speaks.Words
	in.read = &reading{
		language: tag, said: map[field][]string{},
		procedures: map[*model.Procedure]*model.Procedure{}, phases: map[*model.Phase]*model.Phase{}, steps: map[*model.Step]*model.Step{},
	}
	in.registers()
	in.machineTexts()
	for _, p := range s.Manual.Procedures {
		for _, use := range p.Hazards {
			in.read.override(use, nil)
		}
	}
	for _, t := range s.Manual.Translated {
		if p := t.Original; t.Language == tag && slices.Contains(s.spoken[p], tag) {
			in.read.procedure(p, t)
		}
	}
	return &in
}

// Language is the language of the site's pages.
func (s *Site) Language() string {
	if s.read != nil {
		return s.read.language
	}
	return s.Manual.Shop.Language
}

// Translated are the procedures that have a page in the site's language, which
// is not the shop's.
func (s *Site) Translated() []*model.Procedure {
	var out []*model.Procedure
	for _, p := range s.Shown {
		if s.read.procedures[p] != nil {
			out = append(out, p)
		}
	}
	return out
}

// registers gathers the texts of the registers and of the shop.
func (s *Site) registers() {
	m, r := s.Manual, s.read
	r.texts(m.WordsOf("shop", "", r.language), m.Shop)
	eachEntry(s, "tools", m.Tools)
	eachEntry(s, "hazards", m.Hazards)
	eachEntry(s, "holds", m.Holds)
	eachEntry(s, "supplies", m.Supplies)
	eachEntry(s, "roles", m.Roles)
	for _, h := range m.Holds {
		if w := m.WordsOf("holds", h.ID, r.language); w != nil {
			r.answers(h, "answers", h.Answers, w)
		}
	}
}

func eachEntry[T any, P interface {
	*T
	model.Named
}](s *Site, register string, list []P) {
	for _, e := range list {
		s.read.texts(s.Manual.WordsOf(register, e.Base().ID, s.read.language), e)
	}
}

// texts keeps the texts of one entry. The thing's key is its own pointer.
func (r *reading) texts(w *model.Words, of any) {
	if w == nil {
		return
	}
	for name, texts := range w.Texts {
		r.said[field{of, name}] = texts
	}
}

// answers keeps texts that have keys in the order of the original; "" stands
// where one is not translated.
func (r *reading) answers(of any, name string, pairs []model.Pair, w *model.Words) {
	var out []string
	for _, p := range pairs {
		text := ""
		if i := slices.Index(w.Keys[name], p.Key); i >= 0 {
			text = w.Texts[name][i]
		}
		out = append(out, text)
	}
	r.said[field{of, name}] = out
}

func (s *Site) machineTexts() {
	byID := map[string]*model.Machine{}
	for _, m := range s.Manual.Machines {
		byID[m.ID] = m
	}
	for i := range s.Manual.Words {
		w := &s.Manual.Words[i]
		id, is := strings.CutPrefix(w.Register, "machines/")
		m := byID[id]
		if !is || m == nil || w.Language != s.read.language {
			continue
		}
		if w.ID == id {
			s.read.texts(w, m)
			s.read.answers(m, "options", m.Options, w)
		} else if thing := m.Find(w.ID); thing != nil {
			s.read.texts(w, thing)
		}
	}
}

// procedure keeps a translation: its texts, and which of its phases and steps
// stand for which.
func (r *reading) procedure(p, t *model.Procedure) {
	r.procedures[p] = t
	keep := func(name string, texts ...string) { r.said[field{p, name}] = texts }
	keep("title", t.Title)
	keep("summary", t.Summary)
	for i, phase := range p.Phases[:min(len(p.Phases), len(t.Phases))] {
		r.phases[phase] = t.Phases[i]
	}
	byNumber := map[string]*model.Step{}
	for _, st := range t.Steps {
		byNumber[st.Number] = st
	}
	for _, st := range p.Steps {
		r.steps[st] = byNumber[st.Number]
	}
	for _, post := range t.Posts {
		r.said[field{p, "posts " + post.Key}] = []string{post.Value}
	}
	for _, use := range p.Hazards {
		for _, own := range t.Hazards {
			if own.To == use.To && own.Over != nil {
				r.override(use, own.Over)
			}
		}
	}
}

// override keeps the texts of a hazard as a procedure meets it: the register's
// where the procedure says nothing else, and the translation's own.
func (r *reading) override(use model.HazardUse, own *model.HazardOverride) {
	if use.Met == nil || use.Met == use.To || use.Over == nil {
		return
	}
	other := map[string]bool{}
	for _, t := range use.Over.Texts() {
		other[t.Field] = true
	}
	for _, t := range use.To.Texts() {
		if texts := r.said[field{use.To, t.Field}]; texts != nil && !other[t.Field] {
			r.said[field{use.Met, t.Field}] = texts
		}
	}
	if own != nil {
		for _, t := range own.Texts() {
			r.said[field{use.Met, t.Field}] = t.Words
		}
	}
}

// What nobody has translated is shown in the shop's language, between two
// signs that become a lang attribute as the page is finished: a screen reader
// speaks it right. The signs are private to the program (Unicode, section 23.5).
const opens, closes = "\ue000", "\ue001"

// Say is a text of a thing in the site's language.
func (s *Site) Say(of any, name, original string) string {
	return s.SayAll(of, name, []string{original})[0]
}

// SayAll is a list of texts of a thing in the site's language: as long as the
// original's, for a list of another length is not the same list.
func (s *Site) SayAll(of any, name string, original []string) []string {
	if s.read == nil {
		return original
	}
	texts := s.read.said[field{of, name}]
	out := make([]string, len(original))
	for i, text := range original {
		switch {
		case text == "":
		case len(texts) == len(original) && texts[i] != "":
			out[i] = texts[i]
		default:
			out[i] = opens + text + closes
		}
	}
	return out
}

// Untranslated is a text that has no words in other languages.
func (s *Site) Untranslated(text string) string { return s.Say(nil, "", text) }

// Name is the name of a thing in the site's language.
func (s *Site) Name(n model.Named) string {
	if p, ok := n.(*model.Procedure); ok {
		return s.Say(p, "title", p.Label())
	}
	return s.Say(n, "name", n.Label())
}

// LabelAt is the name of a fastener at a part.
func (s *Site) LabelAt(n model.Named, p *model.Part) string {
	if p == nil {
		return s.Name(n)
	}
	return fmt.Sprintf(s.Speaks.Several.AtThe, s.Name(n), s.Name(p))
}

// Option is the words of a machine's option.
func (s *Site) Option(m *model.Machine, id string) string {
	if m == nil {
		return ""
	}
	for i, text := range s.Options(m) {
		if m.Options[i].Key == id {
			return text
		}
	}
	return ""
}

// Options are the words of a machine's options, in their order.
func (s *Site) Options(m *model.Machine) []string {
	return s.SayAll(m, "options", values(m.Options))
}

func values(pairs []model.Pair) []string {
	var out []string
	for _, p := range pairs {
		out = append(out, p.Value)
	}
	return out
}

// Answers are the words of an answer to a hold.
func (s *Site) Answers(h *model.Hold) []model.Pair {
	out := slices.Clone(h.Answers)
	for i, text := range s.SayAll(h, "answers", values(h.Answers)) {
		out[i].Value = text
	}
	return out
}

// Own is a procedure as it is written in the site's language.
func (s *Site) Own(p *model.Procedure) *model.Procedure {
	if s.read != nil && s.read.procedures[p] != nil {
		return s.read.procedures[p]
	}
	return p
}

// PhaseOf is a phase as it is written in the site's language.
func (s *Site) PhaseOf(p *model.Phase) *model.Phase {
	if s.read != nil && s.read.phases[p] != nil {
		return s.read.phases[p]
	}
	return p
}

// BlocksOf are the paragraphs of a step as they are written in the site's
// language.
func (s *Site) BlocksOf(st *model.Step) []model.Block {
	if s.read != nil && s.read.steps[st] != nil {
		return s.read.steps[st].Blocks
	}
	return st.Blocks
}

// NoteOf is a note for the refit in the site's language: the first of one
// language is the first of the other.
func (s *Site) NoteOf(st *model.Step, note *model.Block) *model.Block {
	if s.read == nil || s.read.steps[st] == nil {
		return note
	}
	here := notes(s.read.steps[st].Blocks)
	for i, b := range notes(st.Blocks) {
		if b == note && i < len(here) {
			return here[i]
		}
	}
	return note
}

func notes(blocks []model.Block) []*model.Block {
	var out []*model.Block
	for i := range blocks {
		if blocks[i].Role == model.OnRefit {
			out = append(out, &blocks[i])
		}
	}
	return out
}

// LanguageLink is a page in one of its languages.
type LanguageLink struct {
	Language string
	Name     string
	Address  string
	Current  bool
}

// Tongues are the languages of a procedure's page; none where it has one.
func (s *Site) Tongues(up string, p *model.Procedure) []LanguageLink {
	var out []LanguageLink
	add := func(tag string) {
		out = append(out, LanguageLink{Language: tag, Name: language.NameOf(tag), Address: up + PageIn(p, s.Manual.Shop.Language, tag), Current: tag == s.Language()})
	}
	add(s.Manual.Shop.Language)
	for _, tag := range s.Manual.Shop.Also {
		if slices.Contains(s.spoken[p], tag) {
			add(tag)
		}
	}
	if len(out) == 1 {
		return nil
	}
	return out
}

// PageIn is the path of a procedure's page in a language:
// "procedures/isolate-press.es.html" beside the original's. An id holds no
// dot, so no procedure's own page has that name.
func PageIn(p *model.Procedure, shop, language string) string {
	if language == shop {
		return PageOf(p)
	}
	return folder(p) + "/" + p.ID + "." + language + ".html"
}

// PageOf is the path of a procedure's page as a reader of the site's language
// finds it.
func (s *Site) PageOf(p *model.Procedure) string {
	if s.read != nil && s.read.procedures[p] != nil {
		return PageIn(p, s.Manual.Shop.Language, s.read.language)
	}
	return PageOf(p)
}
