package bind

import (
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/base/quantity"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/syntax"
)

// What can be wrong with a name or an address.
var (
	UnknownReference = finding.Rule{
		Code:  "unknown-reference",
		Title: "A name that nothing has",
		Why:   "A link to a tool, an energy or a procedure that is not there sends someone looking for it at the bay.",
		Mend:  "Write the id as its register, machine file or procedure has it, or make the entry.",
	}
	UnknownKind = finding.Rule{
		Code:  "unknown-kind",
		Title: "A link of a kind that the format does not have",
		Why:   "A link whose kind nobody knows does nothing, and looks as if it did.",
		Mend:  "Write one of the link kinds. A page elsewhere begins with https:.",
	}
	UnsafeLink = finding.Rule{
		Code:  "unsafe-link",
		Title: "An address that could run a program or fetch from elsewhere",
		Why:   "The pages run nothing that a text brought along, and they make no request outside the shop.",
		Mend:  "Link to a page with https:, or to a file inside the manual.",
	}
	BrokenLink = finding.Rule{
		Code:  "broken-link",
		Title: "A link to a file that is not in the manual",
		Why:   "It is found broken at the bay, with the job open.",
		Mend:  "Put the file into the manual's folder, or write its path from this file.",
	}
)

// bind binds one link: by its kind where its address has one, else as a file
// or a page elsewhere.
func (l *linker) bind(link *model.Link) {
	scheme, rest, has := model.SplitAddress(plainAddress(link.Address))
	kind, known := model.KindNamed(scheme)
	switch {
	case link.Kind == model.PictureLink:
		link.Kind = model.UnknownLink
		l.picture(link, scheme, has)
	case !has:
		l.file(link)
	case known:
		link.Kind = kind
		l.typed(link, rest)
	default:
		l.scheme(link, scheme, rest)
	}
}

// plainAddress drops white space and control signs, as browsers do before they
// look for a scheme.
func plainAddress(address string) string {
	return strings.Map(func(r rune) rune {
		if r <= ' ' || r == 0x7f {
			return -1
		}
		return r
	}, address)
}

func (l *linker) bad(link *model.Link, f finding.Finding) {
	link.Bad = true
	l.add(f)
}

// scheme sorts an address whose scheme is not one of ours.
func (l *linker) scheme(link *model.Link, scheme, rest string) {
	switch scheme {
	case "http", "https", "mailto":
		link.Kind = model.OutsideLink
	case "javascript", "vbscript", "data", "file":
		l.bad(link, UnsafeLink.At(link.At, "%s: is not followed from a page", scheme).
			WithMend("link to a page with https:, or to a file inside the manual"))
	default:
		f := UnknownKind.At(link.At, "there is no link kind %s:", scheme)
		var names []string
		for _, k := range model.Kinds {
			names = append(names, k.Name)
		}
		if near := nearest.Of(scheme, names); near != "" {
			f = f.WithMend("did you mean %s:?", near)
			link.Kind, _ = model.KindNamed(near)
			link.Odd = true
		} else {
			f = f.WithMend("the kinds are: %s", strings.Join(names, ", "))
		}
		l.bad(link, f)
		link.ID, _, _ = strings.Cut(rest, "#")
		link.Besides().Near = l.meant(link.ID)
	}
}

// meant is what a link of a kind that there is none of names, or nearly.
func (l *linker) meant(id string) model.Named {
	if to := l.machine().Find(id); to != nil {
		return to
	}
	if to := l.tools.byID[id]; to != nil {
		return to
	}
	if to := l.holds.byID[id]; to != nil {
		return to
	}
	if to := l.procedures.byID[id]; to != nil {
		return to
	}
	if l.machine() == nil {
		return nil
	}
	return l.machine().Find(nearest.Of(id, model.IDs(things(l.machine()))))
}

// typed binds a link of one of our kinds.
func (l *linker) typed(link *model.Link, rest string) {
	link.ID = rest
	switch link.Kind.Target {
	case model.NoTarget:
		l.oneOf(link, "")
	case model.ToTool:
		named(l, link, l.tools)
	case model.ToSupply:
		named(l, link, l.supplies)
	case model.ToRole:
		named(l, link, l.roles)
	case model.ToHazard:
		named(l, link, l.hazards)
	case model.ToHold:
		named(l, link, l.holds)
	case model.ToMachine:
		named(l, link, l.machines)
	case model.ToProcedure:
		l.toProcedure(link)
	case model.ToPost:
		l.toPost(link)
	case model.ToPhase:
		l.toPhase(link)
	case model.ToOption:
		l.toOption(link)
	case model.ToOutcome, model.ToAnswer, model.ToNote:
		l.toHoldOf(link)
	case model.ToRefit:
		l.oneOf(link, "refit")
	case model.ToPause:
		l.oneOf(link, "", "never")
	case model.ToName:
		l.names(link)
	case model.ToPeople:
		l.people(link)
	case model.ToTime:
		l.time(link)
	case model.ToWithin:
		l.within(link)
	default:
		l.toMachineThing(link)
	}
}

// named binds a link to an entry of a register or a file.
func named[T any, P interface {
	*T
	model.Named
}](l *linker, link *model.Link, x *index[T]) {
	to, f := x.find(link.ID, link.At)
	if to != nil {
		link.To = P(to)
		return
	}
	link.Bad = true
	l.addIf(f)
	if f == nil {
		return
	}
	if near := x.byID[x.near(link.ID)]; near != nil {
		link.Besides().Near = P(near)
	}
}

// names takes the name of a step, which no other step of the procedure has.
func (l *linker) names(link *model.Link) {
	if why := decode.BadIDWhy(link.ID); !why.IsZero() {
		l.bad(link, decode.BadID.At(link.At, "the step's name %q %s", link.ID, why).WithMend("use a to z, 0 to 9 and single hyphens"))
		return
	}
	if first, twice := l.named[link.ID]; twice {
		l.add(syntax.DuplicateID.At(link.At, "a second step named %s", link.ID).
			WithMend("give it a name of its own: a link to it would lead to the first").See(first, "the first is here"))
		return
	}
	l.named[link.ID] = link.At
}

func (l *linker) addIf(f *finding.Finding) { l.notes.addIf(f) }

// split parts the id of a link at the first of the signs.
func split(link *model.Link, signs string) {
	if i := strings.IndexAny(link.ID, signs); i >= 0 {
		link.Besides().Frag = link.ID[i+1:]
		link.ID, link.Sign = link.ID[:i], link.ID[i]
	}
}

func (l *linker) oneOf(link *model.Link, words ...string) {
	if contains(words, link.ID) {
		return
	}
	var ways []string
	for _, w := range words {
		ways = append(ways, link.Kind.Name+":"+w)
	}
	l.bad(link, UnknownReference.At(link.At, "%s:%s says nothing", link.Kind.Name, link.ID).WithMend("write %s", finding.ListOf(" or ", ways)))
}

func (l *linker) people(link *model.Link) {
	n, err := strconv.Atoi(link.ID)
	if err != nil || n < 1 || n > 99 {
		l.bad(link, decode.Quantity.At(link.At, "people:%s is not a number of people", link.ID).WithMend("write people:2"))
		return
	}
	link.Number = &quantity.Quantity{Value: float64(n)}
}

// within binds within:TIME and within:TIME#STEP, a step of the same procedure.
func (l *linker) within(link *model.Link) {
	split(link, link.Kind.Frag)
	l.time(link)
	if link.Bad || link.Sign == 0 {
		return
	}
	if link.Besides().Step = l.draft.FindStep(link.Frag()); link.Step() == nil {
		l.noStep(link, l.draft.Procedure)
	}
}

func (l *linker) time(link *model.Link) {
	if link.Number = l.times[link.ID]; link.Number != nil {
		return
	}
	name := link.Kind.Name
	q, err := quantity.Parse(link.ID, quantity.Duration)
	if err == nil && q.Base() <= 0 {
		l.bad(link, decode.Quantity.At(link.At, "a time must be longer than nothing").WithMend("write %s:8min", name))
		return
	}
	if err != nil {
		l.bad(link, decode.BadAmount(err, link.At, name).WithMend("write %[1]s:90s, %[1]s:8min or %[1]s:1h30min", name))
		return
	}
	link.Number = &q
	l.times[link.ID] = &q
}
