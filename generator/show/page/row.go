package page

import (
	"slices"

	"baybinder/generator/base/parallel"
	"baybinder/generator/derive/backlinks"
	"baybinder/generator/model"
	"baybinder/generator/trade/faultcode"
)

// Row is all that pages other than those of procedures show of a procedure that
// is published: plain values, with which they are made again without it. Its
// addresses are from the site's folder.
type Row struct {
	Sheet
	For     string // the id of its machine; "" for any
	Use     int    // what it is for
	Retired bool
	Aids    []Aid    // the first aid for what it meets, calls included
	Uses    []RowUse // the entries of registers that it uses
	Codes   []RowCode
}

// RowUse is an entry that a procedure uses.
type RowUse struct {
	Of     string    // the path of the entry's page
	Steps  []RowStep // where
	Amount string    // of a supply: what the procedure's own steps use up
}

// RowStep is a step, and its anchor on its page.
type RowStep struct{ Number, Anchor string }

// RowCode is a fault code where a step names it.
type RowCode struct {
	Code faultcode.Code
	Step RowStep
	Of   string // the procedure
}

// rows are those of all published procedures, by path.
func (s *Site) rows() []Row {
	rows, at := make([]Row, len(s.Shown)), make(map[*model.Procedure]*Row, len(s.Shown))
	parallel.Each(len(s.Shown), func(i int) { rows[i] = s.row(s.Shown[i]) })
	for i, p := range s.Shown {
		at[p] = &rows[i]
	}
	useRows(s, at, s.Manual.Tools)
	useRows(s, at, s.Manual.Supplies)
	useRows(s, at, s.Manual.Hazards)
	useRows(s, at, s.Manual.Holds)
	useRows(s, at, s.Manual.Roles)
	return rows
}

func (s *Site) row(p *model.Procedure) Row {
	r := Row{Sheet: s.sheet(p), Use: useOf(p), Retired: p.Status == "retired", Aids: s.AidFor(p)}
	if p.For.To != nil {
		r.For = p.For.To.ID
	}
	for _, st := range p.Steps {
		for i := range st.Blocks {
			for _, f := range faultcode.Find(st.Blocks[i].Plain) {
				if f.Err == nil {
					r.Codes = append(r.Codes, RowCode{f.Code, stepAt(st), p.Label()})
				}
			}
		}
	}
	return r
}

func stepAt(st *model.Step) RowStep { return RowStep{st.Number, Anchor(st)} }

// useRows notes in the rows who uses the entries of a register.
func useRows[T any, P interface {
	*T
	model.Named
}](s *Site, at map[*model.Procedure]*Row, register []P) {
	for _, n := range register {
		of, uses := PageOf(n), s.Links.TakeUses(n)
		for _, u := range uses {
			at[u.Procedure].Uses = append(at[u.Procedure].Uses, s.rowUse(n, of, u))
		}
	}
}

func (s *Site) rowUse(n model.Named, of string, u backlinks.Use) RowUse {
	out := RowUse{Of: of}
	for _, st := range u.Steps {
		out.Steps = append(out.Steps, stepAt(st))
	}
	if supply, is := n.(*model.Supply); is {
		out.Amount = s.amountOf(supply, u.Procedure)
	}
	return out
}

// amountOf is how much of a supply a procedure's own steps use up, in the unit in
// which it is stocked.
func (s *Site) amountOf(u *model.Supply, p *model.Procedure) string {
	for _, use := range p.Supplies {
		if use.To == u && use.Amount != "" {
			return s.UsedUp(use)
		}
	}
	return ""
}

// At is a sheet as a page shows it that is up away from the site's folder.
func (s Sheet) At(up string) Sheet {
	if s.Address != "" {
		s.Address = up + s.Address
	}
	tongues := s.Tongues
	s.Tongues = make([]Link, len(tongues))
	for i, t := range tongues {
		t.Address = up + t.Address
		s.Tongues[i] = t
	}
	return s
}

// InUse are the rows of the procedures that are for a machine, "" for any, and
// not retired.
func (s *Site) InUse(machine string) []*Row {
	var out []*Row
	for i := range s.Rows {
		if r := &s.Rows[i]; r.For == machine && !r.Retired {
			out = append(out, r)
		}
	}
	return out
}

// UsedBy is a procedure that uses an entry.
type UsedBy struct {
	*Row
	*RowUse
}

// usesOf are the users of each entry, by the path of its page.
func usesOf(rows []Row) map[string][]UsedBy {
	all := map[string][]UsedBy{}
	for i := range rows {
		for k := range rows[i].Uses {
			u := &rows[i].Uses[k]
			all[u.Of] = append(all[u.Of], UsedBy{&rows[i], u})
		}
	}
	return all
}

// UsersOf are the procedures that use an entry, by path.
func (s *Site) UsersOf(n model.Named) []UsedBy { return s.users[PageOf(n)] }

// Take makes rows those of the site.
func (s *Site) Take(rows []Row) { s.Rows, s.users, s.Coded = rows, usesOf(rows), Coded(rows) }

// Coded says that steps of some procedures name fault codes.
func Coded(rows []Row) bool {
	return slices.ContainsFunc(rows, func(r Row) bool { return len(r.Codes) > 0 })
}
