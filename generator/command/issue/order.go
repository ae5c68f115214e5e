package issue

import (
	"errors"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/check"
	"baybinder/generator/derive/training"
	"baybinder/generator/model"
	"baybinder/generator/prove/fingerprint"
)

// Order says what is issued, why and by whom.
type Order struct {
	Folder     string   // the manual's
	Procedures []string // by id
	Changed    bool     // besides: what is another than its last revision
	All        bool     // besides: what is not issued as it stands, never issued or changed
	Language   string   // "": the originals; else their translations
	Retire     bool     // taken out of use instead
	Instead    string   // by what; "" for nothing
	Number     int      // 0: one more than the last
	Date       model.Date
	Reason     string
	Written    string
	Checked    string
	Approved   string
	Walked     string
	Readers    string // reread, tell, none; "" where it is not said yet
}

// chosen are the texts that an order names, each once, in the manual's order:
// originals, or translations.
func chosen(m *model.Manual, found []finding.Finding, o Order) ([]*model.Procedure, error) {
	var wrong []error
	for _, id := range o.Procedures {
		if model.ByID(m.Procedures, id) == nil {
			wrong = append(wrong, training.NoProcedure(m, id))
		}
	}
	var out []*model.Procedure
	for _, p := range m.Procedures {
		named := slices.Contains(o.Procedures, p.ID)
		text := textOf(m, p, o.Language)
		switch {
		case text == nil && named:
			wrong = append(wrong, finding.Refuse("%s has no translation into %s", p.ID, o.Language))
		case named:
			if why := o.unfit(m, text); why != nil {
				wrong = append(wrong, why)
				continue
			}
			out = append(out, text)
		case text != nil && p.Issued() && o.wants(m, found, text):
			out = append(out, text)
		}
	}
	if len(wrong) == 0 && len(out) == 0 {
		return nil, o.nothing()
	}
	return out, errors.Join(wrong...)
}

// nothing says why an order is of nothing.
func (o Order) nothing() error {
	if o.All || o.Changed {
		return ErrNothing
	}
	return finding.Refuse("say what is issued: its id, several ids, --changed or --all")
}

// ErrNothing says that all that was asked for is issued as it stands.
var ErrNothing = finding.Refuse("nothing is to be issued: all is issued as it stands")

// textOf is a procedure, or its translation; nil where there is none.
func textOf(m *model.Manual, p *model.Procedure, language string) *model.Procedure {
	if language == "" {
		return p
	}
	for _, t := range m.Translated {
		if t.ID == p.ID && strings.EqualFold(t.Language, language) {
			return t
		}
	}
	return nil
}

// unfit says why a text that was named cannot be issued, or retired.
func (o Order) unfit(m *model.Manual, text *model.Procedure) error {
	p, last := originalOf(m, text), lastOf(m, text)
	switch {
	case o.Retire && p.Status == "retired" && last != nil && last.Readers == "retired":
		return finding.Refuse("%s is retired already, since %s", p.ID, last.Date)
	case p.Draft() && !o.Retire, p.Draft() && last == nil:
		return finding.Refuse("%s is draft: take that status out before it is issued", p.ID)
	}
	return nil
}

// wants says whether --all or --changed takes a text in.
func (o Order) wants(m *model.Manual, found []finding.Finding, text *model.Procedure) bool {
	if lastOf(m, text) == nil {
		return o.All
	}
	return (o.All || o.Changed) && slices.ContainsFunc(found, func(f finding.Finding) bool {
		return f.Rule == &check.ChangedSinceIssue && f.Level == finding.Error && f.At.File == text.File
	})
}

// originalOf is the procedure that a text is, or is a translation of.
func originalOf(m *model.Manual, text *model.Procedure) *model.Procedure {
	for _, p := range m.Procedures {
		if p.ID == text.ID {
			return p
		}
	}
	return text
}

// lastOf is the last issued revision of a text, or nil.
func lastOf(m *model.Manual, text *model.Procedure) *model.Revision {
	if text.Language == "" {
		return fingerprint.Last(m, text)
	}
	return fingerprint.LastRendition(m, text)
}

// Unissued are the procedures in use that have no revision.
func Unissued(m *model.Manual) []*model.Procedure {
	revised := map[*model.Procedure]bool{}
	for i := range m.Revisions {
		revised[m.Revisions[i].Procedure.To] = true
	}
	var out []*model.Procedure
	for _, p := range m.Procedures {
		if p.Issued() && !revised[p] {
			out = append(out, p)
		}
	}
	return out
}
