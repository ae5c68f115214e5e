package bind

import (
	"html"
	"net/url"
	"path"
	"strconv"
	"strings"
	"unicode/utf8"

	"golang.org/x/text/unicode/norm"

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
func (l *linker) bind(raw *syntax.Link) *model.Link {
	link := l.links.New()
	*link = model.Link{
		Kind: model.UnknownLink, Address: raw.Address, From: raw.From, Text: raw.Text, HTML: raw.HTML, Title: raw.Title, At: raw.At,
	}
	scheme, rest, has := model.SplitAddress(plainAddress(raw.Address))
	kind, known := model.KindNamed(scheme)
	switch {
	case raw.Image:
		l.picture(link, scheme, has)
	case !has:
		l.file(link)
	case known:
		link.Kind = kind
		l.typed(link, rest)
	default:
		l.scheme(link, scheme, rest)
	}
	return link
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
		link.Near = l.meant(link.ID)
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
	var ids []string
	for _, n := range things(l.machine()) {
		ids = append(ids, n.Base().ID)
	}
	return l.machine().Find(nearest.Of(id, ids))
}

// picture binds an image.
func (l *linker) picture(link *model.Link, scheme string, has bool) {
	if has {
		l.bad(link, UnsafeLink.At(link.At, "a picture from %s: is not shown: the pages fetch nothing from elsewhere", scheme).
			WithMend("put the picture into pictures/ and write its path from this file"))
		return
	}
	name, ok := l.inside(link.Address)
	if !ok {
		l.bad(link, MissingPicture.At(link.At, "there is no picture %s in the manual", orNothing(link.Address)).WithMend("%s", l.nearFile(name, finding.Say("write its path from this file, as in ../../pictures/seat.svg"))))
		return
	}
	link.Kind, link.ID = model.PictureLink, name
	l.publish(link, name)
}

// publish notes a file that a page shows or leads to. What is not published is
// told, and on the page its words stand alone.
func (l *linker) publish(link *model.Link, name string) {
	why, mend := l.publishable(name, fromFile)
	_, unsafe := l.unsafe[name]
	if why.IsZero() && !unsafe {
		l.draft.pictures = append(l.draft.pictures, name)
		return
	}
	link.Kind, link.Bad = model.UnknownLink, true
	if link.HTML == "" {
		link.HTML = html.EscapeString(link.Text)
	}
	if !why.IsZero() {
		l.add(UnsafeLink.At(link.At, "%s", why).WithMend("%s", mend))
		return
	}
	l.draft.unsafe = append(l.draft.unsafe, name)
}

// file binds a relative address: another procedure's file is that procedure.
func (l *linker) file(link *model.Link) {
	name, ok := l.inside(link.Address)
	if !ok {
		l.bad(link, BrokenLink.At(link.At, "there is no file %s in the manual", orNothing(link.Address)).WithMend("%s", l.nearFile(name, finding.Say("write its path from this file; a link to a procedure is best written see:its-id"))))
		return
	}
	link.Kind, link.ID = model.FileLink, name
	if id, _ := stem(name); strings.HasPrefix(name, "procedures/") && path.Ext(name) == ".md" {
		if to := l.procedures.byID[id]; to != nil {
			link.To = to
			return
		}
	}
	l.publish(link, name)
}

func orNothing(address string) finding.Words {
	if address == "" {
		return finding.Say("(the address is empty)")
	}
	return finding.Say("%s", address)
}

// inside is the path inside the manual that a relative address leads to.
func (l *linker) inside(address string) (string, bool) {
	address, _, _ = strings.Cut(address, "#")
	address, _, _ = strings.Cut(address, "?")
	if address == "" || strings.HasPrefix(address, "/") {
		return address, false
	}
	address = strings.ReplaceAll(address, "%20", " ")
	name := path.Join(path.Dir(l.draft.File.Path), address)
	return name, l.tree.Has(name)
}

// nearFile offers the file of the same name elsewhere in the manual.
func (l *linker) nearFile(name string, otherwise finding.Words) finding.Words {
	base := path.Base(name)
	best := ""
	for have := range l.tree.Paths {
		if path.Base(have) == base && base != "." && (best == "" || have < best) {
			best = have
		}
	}
	if best == "" {
		return otherwise
	}
	up := strings.Repeat("../", strings.Count(l.draft.File.Path, "/"))
	return finding.Say("did you mean %s?", up+best)
}

// typed binds a link of one of our kinds.
func (l *linker) typed(link *model.Link, rest string) {
	link.ID = rest
	switch link.Kind.Target {
	case model.NoTarget:
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
		if why := decode.BadIDWhy(rest); !why.IsZero() {
			l.bad(link, decode.BadID.At(link.At, "the step's name %q %s", rest, why).WithMend("use a to z, 0 to 9 and single hyphens"))
		}
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
		link.Near = P(near)
	}
}

func (l *linker) addIf(f *finding.Finding) { l.notes.addIf(f) }

// split parts the id of a link at the first of the signs.
func split(link *model.Link, signs string) {
	if i := strings.IndexAny(link.ID, signs); i >= 0 {
		link.ID, link.Sign, link.Frag = link.ID[:i], link.ID[i], link.ID[i+1:]
	}
}

func (l *linker) toProcedure(link *model.Link) {
	split(link, link.Kind.Frag)
	link.ID, link.Frag = decoded(link.ID), decoded(link.Frag)
	named(l, link, l.procedures)
	to, _ := link.To.(*model.Procedure)
	if to == nil || link.Sign == 0 {
		return
	}
	if link.Step = to.FindStep(link.Frag); link.Step == nil && !to.Broken {
		l.noStep(link, to)
	}
}

// noStep tells of a step that a procedure does not have.
func (l *linker) noStep(link *model.Link, in *model.Procedure) {
	var names []string
	for _, s := range in.Steps {
		if s.Name != "" {
			names = append(names, s.Name)
		}
	}
	f := UnknownReference.At(link.At, "%s has no step %s", in.Label(), link.Frag)
	if near := nearest.Of(link.Frag, names); near != "" {
		f = f.WithMend("did you mean %s?", near).WithFix(link.Frag, near)
	} else {
		f = f.WithMend("name the step there with [](step:%s)", syntax.PlainID(link.Frag))
	}
	l.bad(link, f)
}

func (l *linker) toPost(link *model.Link) {
	var names []string
	posts := l.draft.Posts
	if l.draft.Original != nil {
		posts = l.draft.Original.Posts
	}
	for _, p := range posts {
		if p.Key == link.ID {
			return
		}
		names = append(names, p.Key)
	}
	if l.draft.Broken || l.draft.Lost("posts") {
		link.Bad = true
		return
	}
	f := UnknownReference.At(link.At, "the procedure has no post %s", link.ID)
	if near := nearest.Of(link.ID, names); near != "" {
		f = f.WithMend("did you mean %s?", near)
	} else {
		f = f.WithMend("write it in the front matter: posts: { %s: where the person stands }", syntax.PlainID(link.ID))
	}
	l.bad(link, f)
}

// decoded is a part of an address without percent signs (RFC 3986, 2.1), its
// letters put together as an id has them. What is no such encoding stays.
func decoded(part string) string {
	if plain, err := url.PathUnescape(part); err == nil && utf8.ValidString(plain) {
		part = plain
	}
	return norm.NFC.String(part)
}

// phaseCalled finds a phase by its id, else the one phase whose id it was while
// ids were of a to z alone.
func (l *linker) phaseCalled(id string) *model.Phase {
	if ph := l.draft.FindPhase(id); ph != nil {
		return ph
	}
	var was *model.Phase
	for i, ph := range l.draft.Phases {
		if syntax.PlainID(l.draft.doc.Phases[i].Title.Plain) != id || id == "" {
			continue
		}
		if was != nil {
			return nil
		}
		was = ph
	}
	return was
}

// toPhase binds reverse:PHASE, reverse:PHASE#PART and reverse:PHASE!PART,PART.
func (l *linker) toPhase(link *model.Link) {
	split(link, link.Kind.Frag)
	link.ID = decoded(link.ID)
	if link.Phase = l.phaseCalled(link.ID); link.Phase == nil {
		var ids []string
		for _, p := range l.draft.Phases {
			ids = append(ids, p.ID)
		}
		f := UnknownReference.At(link.At, "the procedure has no phase %s", link.ID)
		if near := nearest.Of(link.ID, ids); near != "" {
			f = f.WithMend("did you mean %s?", near)
		} else if len(ids) > 0 {
			f = f.WithMend("its phases are: %s", strings.Join(ids, ", "))
		} else {
			f = f.WithMend("it has no phases yet: write one above its steps, such as ## Strip")
		}
		l.bad(link, f)
		return
	}
	if link.Sign == 0 || !l.hasMachine(link) {
		return
	}
	for _, id := range strings.Split(link.Frag, ",") {
		part, ok := l.thing(link, id).(*model.Part)
		if !ok {
			return
		}
		link.Parts = append(link.Parts, part)
	}
	if link.Sign == '#' {
		link.Part = link.Parts[0]
	}
}

func (l *linker) toOption(link *model.Link) {
	id, not := strings.CutPrefix(link.ID, "!")
	link.ID, link.Not = id, not
	if !l.hasMachine(link) {
		return
	}
	if _, known := l.machine().Option(id); known {
		return
	}
	link.Bad = true
	if !l.machineUnread() {
		l.addIf(unknownOption(l.machine(), id, link.At))
	}
}

// toHoldOf binds a link to a hold of a kind: what failed, what was answered,
// what was noted.
func (l *linker) toHoldOf(link *model.Link) {
	split(link, link.Kind.Frag)
	named(l, link, l.holds)
	hold, _ := link.To.(*model.Hold)
	if hold == nil || hold.Lost("kind", "answers") {
		return
	}
	switch target := link.Kind.Target; {
	case target == model.ToOutcome && hold.Kind != "measure" && hold.Kind != "look":
		l.bad(link, UnknownReference.At(link.At, "%s is a %s: only a measure or a look can fail", hold.Label(), hold.Kind).
			WithMend("for an ask hold write if:%s=ANSWER", hold.ID))
	case target == model.ToNote && hold.Kind != "note":
		l.bad(link, UnknownReference.At(link.At, "%s is a %s: it records no note", hold.Label(), hold.Kind).
			WithMend("name a hold of kind note"))
	case target == model.ToAnswer:
		l.answer(link, hold)
	}
}

func (l *linker) answer(link *model.Link, hold *model.Hold) {
	var answers []string
	for _, a := range hold.Answers {
		if a.Key == link.Frag && hold.Kind == "ask" {
			return
		}
		answers = append(answers, a.Key)
	}
	f := UnknownReference.At(link.At, "%s has no answer %q", hold.Label(), link.Frag)
	if hold.Kind != "ask" {
		f = UnknownReference.At(link.At, "%s is a %s: only an ask hold has answers", hold.Label(), hold.Kind)
	} else {
		f = f.WithMend("write if:%s=ANSWER with one of: %s", hold.ID, strings.Join(answers, ", "))
	}
	l.bad(link, f)
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
	if link.Step = l.draft.FindStep(link.Frag); link.Step == nil {
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
