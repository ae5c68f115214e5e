package main

import (
	"maps"
	"path"
	"slices"
	"strings"

	"baybinder/generator"
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/syntax"
)

// whole says, before an answer about a procedure, what in the manual could not
// be read. Where the answer is made of that it is refused: a list of gear that
// lacks what a broken register holds looks like a whole one.
func (d *output) whole(r *generator.Result, p *model.Procedure) error {
	from := sources(p)
	if in := slices.DeleteFunc(unread(r.Findings, true), func(name string) bool { return !from(name) }); len(in) > 0 {
		d.remark("Something in %s could not be read, and what is asked for is made of it: nothing is said, as it would lack that. baybinder check says what to mend.", listed(in))
		return errFound
	}
	if lost := unread(r.Findings, false); len(lost) > 0 {
		d.remark("Something in %s could not be read; it has no part in this answer. baybinder check says what to mend.", listed(lost))
	}
	return nil
}

// rests says beside an answer that it rests on texts that have errors, or on one
// that is retired.
func (d *output) rests(r *generator.Result, p *model.Procedure) {
	switch instead := p.Instead.To; {
	case p.Status != "retired":
	case instead == nil:
		d.remark("%s is retired.", p.Label())
	default:
		d.remark("%s is retired; in its place stands %s.", p.Label(), instead.Label())
	}
	for _, q := range reached(p) {
		if n := finding.Errors(inFile(r.Findings, q)); n > 0 {
			d.remark("%s has %s, and what is said here rests on it: baybinder check tells them.", q.File.Path, finding.Count(n, "%d error", "%d errors"))
		}
	}
}

// notRead are the findings after which something of the text is in no answer: a
// list that does not parse, a field or a name that nobody knows.
var notRead = []*finding.Rule{
	&syntax.Syntax, &decode.UnknownField, &decode.WrongType, &decode.BadID, &syntax.DuplicateID, &decode.Quantity,
	&bind.UnknownReference, &bind.UnknownKind, &syntax.Heading,
}

// unread are the files in which something could not be read; with drafts also
// where that stops no build.
func unread(list []finding.Finding, drafts bool) []string {
	in := map[string]bool{}
	for _, f := range list {
		if slices.Contains(notRead, f.Rule) && (drafts || f.Level == finding.Error) {
			in[f.At.Path()] = true
		}
	}
	return slices.Sorted(maps.Keys(in))
}

// sources says which files an answer about a procedure is made of: its own and
// those of what it performs, their machines, the registers and the shop's.
// Texts in other languages are not.
func sources(p *model.Procedure) func(name string) bool {
	own := map[string]bool{"shop.yaml": true, "shop.yml": true}
	for _, q := range reached(p) {
		own[q.File.Path] = true
		own["machines/"+q.For.ID+".yaml"] = true
		own["machines/"+q.For.ID+".yml"] = true
	}
	gone := slices.ContainsFunc(reached(p), performsUnknown)
	return func(name string) bool {
		register := strings.HasPrefix(name, "register/") && strings.Count(path.Base(name), ".") == 1
		return own[name] || register || name == "register" || name == "machines" ||
			gone && strings.HasPrefix(name, "procedures")
	}
}

// performsUnknown says that a procedure performs one that could not be found:
// it may be in a file that could not be read.
func performsUnknown(p *model.Procedure) bool {
	return slices.ContainsFunc(p.Calls, func(l *model.Link) bool { return l.To == nil })
}

// reached are a procedure and all that it performs.
func reached(p *model.Procedure) []*model.Procedure {
	out, seen := []*model.Procedure{p}, map[*model.Procedure]bool{p: true}
	for i := 0; i < len(out); i++ {
		for _, call := range out[i].Calls {
			if to, is := call.To.(*model.Procedure); is && !seen[to] {
				seen[to] = true
				out = append(out, to)
			}
		}
	}
	return out
}

// tablesRead says, before an answer from the lists of people, records and
// revisions and from files of other folders, which of them have errors: rows
// may be missing from the answer. It ends with an error that is to be returned
// after the answer; where the answer would ask too little of somebody, refuse
// is true and there is none.
func (d *output) tablesRead(r *generator.Result, others ...string) (refuse bool, err error) {
	folders := append([]string{"readings/"}, others...)
	bad, decides := map[string]bool{}, map[string]bool{}
	for _, f := range r.Findings {
		name := f.At.Path()
		in := func(folder string) bool { return strings.HasPrefix(name, folder) }
		if f.Level == finding.Error && (slices.ContainsFunc(folders, in) || name == "revisions.csv") {
			bad[name] = true
		}
		if asks(f) {
			decides[name] = true
		}
	}
	if len(decides) > 0 {
		d.remark("%s could not be read, and what is asked for is made of it: nothing is said, as it would lack that. baybinder check says what to mend.", listed(slices.Sorted(maps.Keys(decides))))
		return true, errFound
	}
	if lost := slices.DeleteFunc(unread(r.Findings, false), func(name string) bool { return bad[name] }); len(lost) > 0 {
		d.remark("Something in %s could not be read: baybinder check says what.", listed(lost))
	}
	if len(bad) == 0 {
		return false, nil
	}
	d.remark("Something in %s could not be read, so this answer may leave something out: baybinder check says what.", listed(slices.Sorted(maps.Keys(bad))))
	return false, errFound
}

// asks says that a file does not parse that says what is asked of people: who
// there is, what they are to read, and what was issued since they did. Rows
// that are lost from the record only ask for more.
func asks(f finding.Finding) bool {
	if f.Rule != &syntax.Syntax {
		return false
	}
	name := f.At.Path()
	return slices.Contains([]string{"readings", "readings/people.csv", "revisions.csv", "register/roles.yaml", "register"}, name) ||
		strings.HasPrefix(name, "readings/plans")
}

// listed is "a", "a and b", and of many the first few and how many more.
func listed(names []string) finding.List {
	const most = 4
	list := finding.ListOf(" and ", names)
	if n := len(names) - most; n > 0 {
		list = finding.ListOf(" and ", names[:most])
		list.Items = append(list.Items, finding.Count(n, "%d more file", "%d more files"))
	}
	return list
}
