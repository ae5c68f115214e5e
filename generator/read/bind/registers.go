package bind

import (
	"path"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/base/position"
	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/source"
	"baybinder/generator/read/syntax"
)

// shop reads shop.yaml over the shop's defaults.
func (b *binder) shop() {
	s := &model.Shop{
		Language:    language.Default().Code,
		ReviewEvery: must("12 months", quantity.Calendar),
		Limits: model.Limits{
			SafeVoltageDC: must("60 V dc", quantity.Voltage),
			SafeVoltageAC: must("30 V ac", quantity.Voltage),
			SafePressure:  must("0.5 bar", quantity.Pressure),  // where Directive 2014/68/EU begins
			SafeTouch:     must("48 °C", quantity.Temperature), // metal held for 10 min, ISO 13732-1, from memory
			Lift:          must("23 kg", quantity.Mass),
		},
		Writing: model.Writing{WordsInAStep: 20, ActionsInAStep: 1},
	}
	s.ID = "shop"
	b.m.Shop = s
	f := b.file("shop.yaml")
	if f == nil {
		s.Unread = slices.ContainsFunc(b.tree.Problems, func(p source.Problem) bool { return p.File.Path == "shop.yaml" })
		if !s.Unread {
			missing := position.NewFile("shop.yaml", "")
			b.add(decode.MissingField.At(missing.At(0, 0), "there is no shop.yaml, so the manual has no title").
				WithMend("write shop.yaml with the line title: …, or begin a manual with baybinder begin"))
		}
		return
	}
	s.At = firstLine(f)
	if node := b.yaml(f); node != nil {
		if node.Kind == syntax.Empty {
			node.Kind = syntax.Map
		}
		b.decode(func(d *decode.Decoder) { d.Struct(node, s, finding.Say("shop.yaml"), s.At) })
		b.shopAddress(s, node)
		b.shopLanguages(s, node)
	} else {
		s.Unread = true
	}
}

// must reads one of the program's own defaults.
func must(text string, dim quantity.Dimension) quantity.Quantity {
	q, err := quantity.Parse(text, dim)
	if err != nil {
		panic(err)
	}
	return q
}

// registers reads the five registers and their texts in other languages.
func (b *binder) registers() {
	b.m.Tools = register(b, b.tools)
	b.m.Hazards = register(b, b.hazards)
	b.m.Holds = register(b, b.holds)
	b.m.Supplies = register(b, b.supplies)
	b.m.Roles = register(b, b.roles)
	for _, s := range b.m.Supplies {
		if s.Unit == "" && !s.Lost("unit") {
			s.Unit = "each"
		}
	}
	for _, h := range b.m.Hazards {
		if h.Happens == "" {
			h.Happens = "could"
		}
	}
	b.unknownRegisters()
}

// register reads one register into its index.
func register[T any, P interface {
	*T
	model.Named
}](b *binder, x *index[T]) []*T {
	f := b.file(x.where)
	if f == nil {
		return nil
	}
	node := b.yaml(f)
	if node == nil || node.Kind == syntax.Empty {
		return nil
	}
	if !b.isMap(node, f.Path, finding.Say("a map from id to entry")) {
		b.brokenFile(f.Path)
		return nil
	}
	var list []*T
	for _, pair := range node.Pairs {
		entry := P(new(T))
		b.decode(func(d *decode.Decoder) { d.Entry(pair, entry) })
		x.byID[pair.Key] = (*T)(entry)
		list = append(list, (*T)(entry))
	}
	return list
}

var registerNames = []string{"tools", "hazards", "holds", "supplies", "roles"}

// unknownRegisters tells of files in register/ that nobody reads, and keeps
// the translations.
func (b *binder) unknownRegisters() {
	for _, f := range b.filesIn("register/", ".yaml") {
		name, language := stem(f.Path)
		switch {
		case !slices.Contains(registerNames, name) || path.Dir(f.Path) != "register":
			found := UnknownReference.At(firstLine(f), "there is no register %s, so this file is not read", name)
			if near := nearest.Of(name, registerNames); near != "" {
				found = found.WithMend("did you mean %s.yaml?", near)
			} else {
				found = found.WithMend("the registers are: %s", strings.Join(registerNames, ", "))
			}
			b.add(found)
		case language != "":
			b.words(f, name, language)
		}
	}
}

// words reads register/<name>.<lang>.yaml: the same ids with their texts.
func (b *binder) words(f *position.File, name, language string) {
	b.knownLanguage(language, f)
	b.eachWords(f, model.Words{Register: name, Language: language}, textFields[name], func(id string) bool { return b.inRegister(name, id) })
}

// eachWords reads a file of texts by id; has says which ids there are.
func (b *binder) eachWords(f *position.File, like model.Words, fields []string, has func(id string) bool) {
	node := b.yaml(f)
	if node != nil && node.Kind == syntax.Empty {
		return
	}
	if node == nil || !b.isMap(node, f.Path, finding.Say("a map from id to texts")) {
		b.m.HalfRead = append(b.m.HalfRead, like)
		return
	}
	b.entryWords(f, like, fields, has, node.Pairs)
}

// entryWords reads entries of texts. Those of a machine's things may stand under its
// sections, as in its own file. An entry that is not there is told once, and its
// fields are not judged; where it holds entries itself, as a section does, these
// are read, so that nothing below it is told besides.
func (b *binder) entryWords(f *position.File, like model.Words, fields []string, has func(id string) bool, entries []syntax.Pair) {
	for _, entry := range entries {
		if b.machinesOwn(f, like, fields, has, entry) {
			continue
		}
		if b.isOrder(like, entry.Key) && entry.Value.Kind == syntax.List { // as in the machine's own file
			entry.Value = &syntax.Node{Kind: syntax.Map, At: entry.Value.At, Pairs: []syntax.Pair{{Key: "labels", KeyAt: entry.KeyAt, Value: entry.Value}}}
		}
		if !b.isMap(entry.Value, entry.Key, finding.Say("a map of texts")) {
			b.m.HalfRead = append(b.m.HalfRead, like)
			continue
		}
		if !has(entry.Key) && isSection(like, entry) {
			b.entryWords(f, like, fields, has, entry.Value.Pairs)
			continue
		}
		if !has(entry.Key) {
			b.m.HalfRead = append(b.m.HalfRead, like) // it may be meant for any of them
			found := UnknownReference.At(entry.KeyAt, "%s has no entry %s", originalOf(f.Path), entry.Key)
			if !holdsEntries(entry.Value) {
				b.add(found.WithMend("write the id as it stands there, or take the entry out"))
				continue
			}
			b.add(found.WithMend("take the line out and begin the ids below it at the left margin: here texts stand by id, without sections"))
			b.entryWords(f, like, fields, has, entry.Value.Pairs)
			continue
		}
		w := like
		w.ID, w.At = entry.Key, entry.KeyAt
		if w.Register == "machines/"+w.ID {
			b.fields(b.ownWords(w), fields, entry.Value)
			continue
		}
		b.fields(b.newWords(w), fields, entry.Value)
	}
}

// ownWords are the texts of a machine itself, which may stand by its id and as in its
// own file: those that were begun above in the file, or new ones. Their place is that
// of the id, where it stands there.
func (b *binder) ownWords(w model.Words) *model.Words {
	for i := len(b.m.Words) - 1; i >= 0 && b.m.Words[i].At.File == w.At.File; i-- {
		if own := &b.m.Words[i]; own.ID == w.ID {
			if w.At.Text() != "name" && w.At.Text() != "options" {
				own.At = w.At
			}
			return own
		}
	}
	return b.newWords(w)
}

func (b *binder) newWords(w model.Words) *model.Words {
	w.Texts, w.Keys, w.KeysAt = map[string][]string{}, map[string][]string{}, map[string][]position.Pos{}
	b.m.Words = append(b.m.Words, w)
	return &b.m.Words[len(b.m.Words)-1]
}

// isOrder says that an id is an order of the machine whose texts these are: its places
// are its labels.
func (b *binder) isOrder(like model.Words, id string) bool {
	machine, is := strings.CutPrefix(like.Register, "machines/")
	m := b.machines.byID[machine]
	return is && m != nil && slices.ContainsFunc(m.Orders, func(o model.Order) bool { return o.ID == id })
}

// isSection says that an entry is a section of a machine's file.
func isSection(like model.Words, entry syntax.Pair) bool {
	return strings.HasPrefix(like.Register, "machines/") && slices.Contains(machineSections, entry.Key)
}

// machinesOwn reads the machine's own texts where they stand as in its own file, and
// tells of that of an option alone, which stands with the others.
func (b *binder) machinesOwn(f *position.File, like model.Words, fields []string, has func(id string) bool, entry syntax.Pair) bool {
	id, is := strings.CutPrefix(like.Register, "machines/")
	m := b.machines.byID[id]
	if !is || m == nil || has(entry.Key) {
		return false
	}
	if entry.Key == "name" || entry.Key == "options" {
		like.ID, like.At = id, entry.KeyAt
		b.fields(b.ownWords(like), fields, &syntax.Node{Kind: syntax.Map, Pairs: []syntax.Pair{entry}})
		return true
	}
	_, option := m.Option(entry.Key)
	if option {
		b.add(UnknownReference.At(entry.KeyAt, "%s has no entry %s", originalOf(f.Path), entry.Key).
			WithMend("what is the machine's own stands by its id: %s: { %s }", id, "options: { "+entry.Key+": … }"))
	}
	return option
}

// holdsEntries says that all that a map holds are maps, as in a section.
func holdsEntries(n *syntax.Node) bool {
	return len(n.Pairs) > 0 && !slices.ContainsFunc(n.Pairs, func(p syntax.Pair) bool { return p.Value.Kind != syntax.Map })
}

// fields reads the texts of one entry.
func (b *binder) fields(w *model.Words, fields []string, node *syntax.Node) {
	for _, field := range node.Pairs {
		texts, keys, ok := b.texts(fields, field)
		if !ok {
			w.Unread = true
			continue
		}
		w.Texts[field.Key] = texts
		for _, k := range keys {
			w.Keys[field.Key], w.KeysAt[field.Key] = append(w.Keys[field.Key], k.Key), append(w.KeysAt[field.Key], k.KeyAt)
		}
	}
}

// shopWords reads shop.<lang>.yaml: what stands on every page.
func (b *binder) shopWords() {
	for _, f := range b.filesIn("shop.", ".yaml") {
		name, language := stem(f.Path)
		if name != "shop" || language == "" {
			continue
		}
		b.knownLanguage(language, f)
		like := model.Words{Register: "shop", Language: language, At: firstLine(f)}
		node := b.yaml(f)
		if node != nil && node.Kind == syntax.Empty {
			continue
		}
		if node == nil || !b.isMap(node, f.Path, finding.Say("a map of texts")) {
			b.m.HalfRead = append(b.m.HalfRead, like)
			continue
		}
		b.fields(b.newWords(like), textFields["shop"], node)
	}
}

// isMachineWords says that a file holds a machine's texts in another language:
// the shop has that language, or the machine is there.
func (b *binder) isMachineWords(f *position.File) bool {
	id, language := stem(f.Path)
	return language != "" && path.Dir(f.Path) == "machines" &&
		(slices.Contains(b.m.Shop.Also, language) || b.tree.Has("machines/"+id+".yaml"))
}

// machineWords reads machines/<id>.<lang>.yaml: the texts of a machine's
// things by id, and the machine's own under its id.
func (b *binder) machineWords() {
	for _, f := range b.filesIn("machines/", ".yaml") {
		if !b.isMachineWords(f) {
			continue
		}
		id, language := stem(f.Path)
		b.knownLanguage(language, f)
		m := b.machines.byID[id]
		if m == nil && !b.machines.broken {
			b.add(UnknownReference.At(firstLine(f), "there is no machine %s that this translates", id).
				WithMend("name the file as the machine's: machines/ID.%s.yaml", language))
		}
		like := model.Words{Register: "machines/" + id, Language: language}
		b.eachWords(f, like, textFields["machines"], func(thing string) bool {
			return m == nil || m.Lost(machineSections...) || thing == id || m.Find(thing) != nil
		})
	}
}

// machineSections are the sections of a machine's file whose entries have ids.
var machineSections = []string{"points", "energies", "parts", "fasteners", "fluids", "settings", "orders"}

// MachineSections are those names, for who describes the files.
func MachineSections() []string { return slices.Clone(machineSections) }

// isMap tells of a value that must be a map and is none.
func (b *binder) isMap(n *syntax.Node, what string, must finding.Words) bool {
	if n.Kind != syntax.Map {
		b.add(decode.WrongType.At(n.At, "%s is %s; it must be %s", what, n.Kind, must).WithMend("write { name: … }"))
	}
	return n.Kind == syntax.Map
}

func (b *binder) inRegister(name, id string) bool {
	switch name {
	case "tools":
		return b.tools.byID[id] != nil || b.tools.broken
	case "hazards":
		return b.hazards.byID[id] != nil || b.hazards.broken
	case "holds":
		return b.holds.byID[id] != nil || b.holds.broken
	case "supplies":
		return b.supplies.byID[id] != nil || b.supplies.broken
	}
	return b.roles.byID[id] != nil || b.roles.broken
}

// textFields are the fields that people read, by where they stand.
var textFields = map[string][]string{
	"shop":     {"title", "notice", "emergency"},
	"machines": {"name", "options", "where", "value", "start", "mark-after", "sequence", "labels", "old", "lubricant", "retorque"},
	"tools":    {"name", "note", "kept"},
	"hazards":  {"name", "note", "nature", "consequence", "avoid", "first-aid"},
	"holds":    {"name", "note", "why", "what", "at", "if-not", "good", "answers"},
	"supplies": {"name", "note", "kept", "waste"},
	"roles":    {"name", "note"},
}

// texts reads one translated field: a text, a list of texts or a map of texts.
// What a map holds is returned beside its texts.
func (b *binder) texts(fields []string, p syntax.Pair) (texts []string, keys []syntax.Pair, ok bool) {
	if !slices.Contains(fields, p.Key) {
		b.add(decode.UnknownField.At(p.KeyAt, "%s is not a text that is translated", p.Key).
			WithMend("only what people read is translated: %s", strings.Join(fields, ", ")))
		return nil, nil, false
	}
	switch p.Value.Kind {
	case syntax.Scalar:
		return []string{p.Value.Text}, nil, true
	case syntax.List:
		texts, ok = b.textsOf(p, p.Value.Items)
		return texts, nil, ok
	case syntax.Map:
		var items []*syntax.Node
		for _, item := range p.Value.Pairs {
			items = append(items, item.Value)
		}
		texts, ok = b.textsOf(p, items)
		return texts, p.Value.Pairs, ok
	}
	b.add(decode.WrongType.At(p.KeyAt, "%s has no text", p.Key))
	return nil, nil, false
}

// textsOf are the texts of a list or a map, which hold nothing else.
func (b *binder) textsOf(p syntax.Pair, items []*syntax.Node) ([]string, bool) {
	var texts []string
	for _, item := range items {
		if item.Kind != syntax.Scalar {
			b.add(decode.WrongType.At(p.KeyAt, "%s holds %s where a text belongs", p.Key, item.Kind).
				WithMend("put a text that holds a comma, a colon or a bracket into quotes"))
			return nil, false
		}
		texts = append(texts, item.Text)
	}
	return texts, true
}

// knownLanguage tells of a file in a language that the shop does not have.
func (b *binder) knownLanguage(language string, f *position.File) bool {
	own := language == b.m.Shop.Language
	if !own && slices.Contains(b.m.Shop.Also, language) || b.m.Shop.Lost("also") {
		return true
	}
	if own {
		b.add(UnknownReference.At(firstLine(f), "%s is the manual's own language: this is no translation", language).
			WithMend("put the text into the file without the language in its name, or mend language: in shop.yaml"))
		return false
	}
	if also := b.relatedTag(language); also != "" && b.alsoAt[also].File != nil {
		b.otherRegion(language, also)
		return false
	}
	b.add(UnknownReference.At(firstLine(f), "the shop has no language %s", language).
		WithMend("write also: [%s] in shop.yaml, or take the dot out of the file's name", language))
	return false
}

// leadRegisters makes the references between entries lead.
func (b *binder) leadRegisters() {
	if l := b.m.Shop.Locks; l != nil {
		lead(reader{&b.notes, &b.m.Shop.Entry}, "locks", b.tools, &l.Tool)
	}
	if issue := b.m.Shop.Issue; issue != nil {
		for _, refs := range [][]model.Ref[model.Role]{issue.Checked, issue.Approved} {
			for i := range refs {
				b.roleByAnyName(&refs[i])
			}
		}
	}
	for _, t := range b.m.Tools {
		r := reader{&b.notes, &t.Entry}
		leadAll(r, "or", b.tools, t.Or)
		leadAll(r, "needs", b.roles, t.Needs)
		b.picture(t.Picture, t.At)
	}
	for _, h := range b.m.Hazards {
		leadAll(reader{&b.notes, &h.Entry}, "wear", b.tools.asking(", kind: ppe"), h.Wear)
		b.of(&h.Entry, &h.Of)
		b.picture(h.Picture, h.At)
	}
	for _, h := range b.m.Holds {
		r := reader{&b.notes, &h.Entry}
		lead(r, "with", b.tools, &h.With)
		lead(r, "proved-on", b.tools, &h.ProvedOn)
		lead(r, "call", b.roles, &h.Call)
		lead(r, "by", b.roles, &h.By)
		b.of(&h.Entry, &h.Of)
		b.picture(h.Picture, h.At)
	}
	for _, s := range b.m.Supplies {
		leadAll(reader{&b.notes, &s.Entry}, "hazards", b.hazards, s.Hazards)
		b.picture(s.Picture, s.At)
	}
}

// of judges an energy or fluid that an entry names: some machine must have it.
// Which one is meant depends on the procedure that uses the entry.
func (b *binder) of(e *model.Entry, ref *model.Ref[model.Entry]) {
	if ref.ID == "" || b.machines.broken {
		return
	}
	var have []string
	for _, m := range b.m.Machines {
		for _, e := range m.Energies {
			have = append(have, e.ID)
		}
		for _, f := range m.Fluids {
			have = append(have, f.ID)
		}
		if m.Lost("energies", "fluids") || slices.Contains(have, ref.ID) {
			return
		}
	}
	e.Lose("of")
	f := UnknownReference.At(ref.At, "no machine has an energy or a fluid %s", ref.ID)
	if near := nearest.Of(ref.ID, have); near != "" {
		f = f.WithMend("did you mean %s?", near)
	} else {
		f = f.WithMend("write the id as a machine's file has it, or take of: out")
	}
	b.add(f)
}

// picture judges the picture of an entry, whose path begins at the manual.
func (b *binder) picture(name string, at position.Pos) {
	if name == "" {
		return
	}
	name = path.Clean(name)
	if !b.tree.Has(name) {
		b.add(MissingPicture.At(at, "there is no picture %s", name).WithMend("write its path from the manual's folder: pictures/…"))
		return
	}
	if why, mend := b.publishable(name, fromManual); !why.IsZero() {
		b.add(UnsafeLink.At(at, "%s", why).WithMend("%s", mend))
		return
	}
	if _, bad := b.unsafe[name]; bad {
		b.shown[name] = true
		return
	}
	b.m.Pictures[name] = true
}
