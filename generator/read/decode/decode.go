// Package decode turns what was written in YAML into the manual's typed values, by the tags of their fields.
package decode

import (
	"reflect"
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/syntax"
)

// What can be wrong with a field.
var (
	UnknownField = finding.Rule{
		Code:  "unknown-field",
		Title: "A field that the format does not have",
		Why:   "A field that nobody reads looks as if it worked: a misspelt limit is no limit.",
		Mend:  "Write the field's name as the format has it, or take the line out. Inside { } a text with a comma needs quotes.",
	}
	WrongType = finding.Rule{
		Code:  "wrong-type",
		Title: "A value of the wrong kind",
		Why:   "A list where a text belongs, or a word that is not one of the choices, cannot be acted on.",
		Mend:  "Write the kind of value shown. Text that holds a comma inside { } or [ ], or a colon and a space, needs quotes.",
	}
	MissingField = finding.Rule{
		Code:  "missing-field",
		Title: "A field that must be there",
		Why:   "Without it the entry cannot be shown or judged.",
		Mend:  "Write the field.",
	}
)

// Decoder reads values and keeps what is wrong with them.
type Decoder struct {
	Findings []finding.Finding

	entry  *model.Entry // whose fields are read
	inside string       // of a field inside a field, the outer one and a dot
}

// within reads what stands inside a field.
func (d *Decoder) within(field string, read func() bool) bool {
	outer := d.inside
	d.inside += field + "."
	ok := read()
	d.inside = outer
	return ok
}

// of reads the fields of an entry of its own.
func (d *Decoder) of(e *model.Entry, read func() bool) bool {
	entry, inside := d.entry, d.inside
	d.entry, d.inside = e, ""
	ok := read()
	d.entry, d.inside = entry, inside
	return ok
}

// wrote notes where a field of the entry stands.
func (d *Decoder) wrote(field string, at position.Pos) {
	if d.entry != nil {
		d.entry.Wrote(d.inside+field, at)
	}
}

// lose notes that a field of the entry could not be read.
func (d *Decoder) lose(field string) {
	if d.entry != nil {
		d.entry.Lose(d.inside + field)
		d.entry.Misread = true
	}
}

// losses is how many fields of the entry could not be read until now.
func (d *Decoder) losses() int {
	if d.entry == nil {
		return 0
	}
	return d.entry.Losses()
}

func (d *Decoder) add(f finding.Finding) bool {
	d.Findings = append(d.Findings, f)
	return false
}

// Struct reads a map into the struct that out points to. The name says what
// is read, in messages; at is where a missing field is told. It is false where
// a field could not be read. An Entry in the struct keeps which, and is marked
// Unread where nothing could be read.
func (d *Decoder) Struct(n *syntax.Node, out any, what finding.Words, at position.Pos) bool {
	v := reflect.ValueOf(out).Elem()
	named, is := out.(model.Named)
	if !is {
		return d.fill(n, v, what, at)
	}
	if n.Kind != syntax.Map {
		named.Base().Unread, named.Base().Misread = true, true
	}
	return d.of(named.Base(), func() bool { return d.fill(n, v, what, at) })
}

func (d *Decoder) fill(n *syntax.Node, v reflect.Value, what finding.Words, at position.Pos) bool {
	if n.Kind != syntax.Map {
		return d.add(WrongType.At(placeOf(n, at), "%s is %s; it must be a map of fields", what, n.Kind).
			WithMend("write its fields, one a line: name: …"))
	}
	fields, ok := fieldsOf(v.Type()), true
	told := 0       // findings before the last pair
	parted := false // the last pair is the rest of a number that a comma parted
	meant := map[string]bool{}
	for i, p := range n.Pairs {
		f, known := find(fields, p.Key)
		if i > 0 && !known {
			if comma, is := decimalComma(n.Pairs[i-1].Value, p); is {
				d.Findings = d.Findings[:told]
				ok = d.add(comma)
				d.lose(n.Pairs[i-1].Key)
				parted = true
				continue
			}
			if parted && restOfNumber(n.Pairs[i-1], p) {
				continue
			}
		}
		parted = false
		told = len(d.Findings)
		if !known {
			ok = d.unknownField(n, i, fields, what, meant)
			continue
		}
		d.wrote(f.name, placeOf(p.Value, p.KeyAt))
		if f.word != "" && p.Value.Kind == syntax.Scalar && p.Value.Text == f.word {
			v.FieldByName(f.sets).SetBool(true)
			continue
		}
		if lost := d.losses(); !d.value(p.Value, v.FieldByIndex(f.index), f, p.KeyAt) {
			ok = false
			if d.losses() == lost { // where a field inside it was lost, that one is
				d.lose(f.name)
			}
		}
	}
	return d.needed(n, fields, v.Type(), what, at, meant) && ok
}

// needed tells of the fields that must be there and are not, if not by another
// name.
func (d *Decoder) needed(n *syntax.Node, fields []field, in reflect.Type, what finding.Words, at position.Pos, meant map[string]bool) bool {
	ok := true
	for _, f := range fields {
		if !f.need || n.Get(f.name) != nil {
			continue
		}
		if !meant[f.name] {
			d.add(MissingField.At(at, "%s has no %s", what, f.name).WithMend("%s", mendMissing(f, in)))
		}
		if !isLabel(f.name) {
			d.lose(f.name)
			ok = false
		}
	}
	return ok
}

// mendMissing says how a field is written, and what it is.
func mendMissing(f field, in reflect.Type) finding.Words {
	like := "…"
	switch {
	case len(f.one) > 0:
		return finding.Say("write %s: and one of %s", f.name, strings.Join(f.one, ", "))
	case in.FieldByIndex(f.index).Type.Kind() == reflect.Slice:
		like = "[ … ]"
	}
	if f.doc == "" || isLabel(f.name) {
		return finding.Say("write %s: %s", f.name, like)
	}
	return finding.Say("write %s: %s (%s)", f.name, like, finding.Say(f.doc))
}

// notIndented says that a line was meant to stand under the one before it, which
// holds nothing.
func notIndented(before, p syntax.Pair) bool {
	return before.Value.Kind == syntax.Empty && p.Value.Kind == syntax.Map
}

// isLabel says that nothing is judged by a field: an id stands in for it.
func isLabel(name string) bool { return name == "name" || name == "title" }

// unknownField tells of a field that there is none of. What it was meant for,
// where that can be said, is lost.
func (d *Decoder) unknownField(n *syntax.Node, i int, fields []field, what finding.Words, meant map[string]bool) bool {
	p := n.Pairs[i]
	f := UnknownField.At(p.KeyAt, "%s has no field %s", what, p.Key)
	field, mend := otherName(p.Key, fields)
	switch near := nearest.Of(p.Key, names(fields)); {
	case i > 0 && notIndented(n.Pairs[i-1], p):
		f = f.WithMend("write two spaces before it, so that it stands under %s:", n.Pairs[i-1].Key)
		field = n.Pairs[i-1].Key
	case !mend.IsZero():
		f = f.WithMend("%s", mend)
	case near != "":
		f, field = f.WithMend("did you mean %s?", near), near
	case strings.ContainsRune(p.Key, ' ') || p.Value.Kind == syntax.Empty:
		f = f.WithMend("put a text that holds a comma into quotes; the fields are: %s", strings.Join(names(fields), ", "))
	default:
		f = f.WithMend("the fields are: %s", strings.Join(names(fields), ", "))
	}
	if field != "" {
		meant[field] = true
		d.lose(field)
	}
	return d.add(f)
}

// placeOf is where a value stands; where there is none, the place of its key.
func placeOf(n *syntax.Node, key position.Pos) position.Pos {
	if n.Kind == syntax.Empty || n.At.File == nil {
		return key
	}
	return n.At
}

// setter is a value that is made of one word, such as a reference.
type setter interface {
	Set(text string, at position.Pos)
}

// value reads one field's value. Every kind of field has its case here, or is
// one of the manual's own shapes.
func (d *Decoder) value(n *syntax.Node, v reflect.Value, f field, key position.Pos) bool {
	if ok, done := d.shape(n, v, f, key); done {
		return ok
	}
	if set, is := v.Addr().Interface().(setter); is {
		if namesNothing(n) {
			return d.wrong(n, f, key, finding.Say("the id of a thing"), finding.Say("write the id, or take it out"))
		}
		return d.word(n, f, key, func(text string) { set.Set(text, n.At) })
	}
	switch v.Kind() {
	case reflect.String:
		return d.word(n, f, key, v.SetString)
	case reflect.Int:
		return d.number(n, v, f, key)
	case reflect.Bool:
		return d.yesNo(n, v, f, key)
	case reflect.Slice:
		return d.list(n, v, f, key)
	case reflect.Pointer:
		v.Set(reflect.New(v.Type().Elem()))
		return d.within(f.name, func() bool { return d.fill(n, v.Elem(), finding.Say("%s", f.name), key) })
	case reflect.Struct:
		return d.within(f.name, func() bool { return d.fill(n, v, finding.Say("%s", f.name), key) })
	}
	panic("decode: no case for a field of type " + v.Type().String())
}

// namesNothing says that quotes with nothing in them stand where an id belongs.
func namesNothing(n *syntax.Node) bool { return n.Kind == syntax.Scalar && n.Text == "" }

// word reads a text, and holds it against the words that the field may have.
func (d *Decoder) word(n *syntax.Node, f field, key position.Pos, set func(string)) bool {
	if n.Kind != syntax.Scalar {
		return d.wrong(n, f, key, finding.Say("a text"), mendText(n, f))
	}
	if len(f.one) > 0 && !contains(f.one, n.Text) {
		return d.add(NotOneOf(n.At, f.name, n.Text, f.one))
	}
	set(n.Text)
	return true
}

// NotOneOf is the finding for a text that is none of the words that a field may
// hold.
func NotOneOf(at position.Pos, field, text string, words []string) finding.Finding {
	f := WrongType.At(at, "%s cannot be %q", field, text)
	if near := nearest.Spelled(text, words); near != "" {
		return f.WithMend("did you mean %s? It is one of: %s", near, strings.Join(words, ", "))
	}
	return f.WithMend("write one of: %s", strings.Join(words, ", "))
}

// mendText says how a text is written: of a list in a list, that the inner
// brackets go.
func mendText(n *syntax.Node, f field) finding.Words {
	if f.item && n.Kind == syntax.List {
		return finding.Say("take the inner brackets away: %s: [%s]", f.name, wordsIn(n, "one, two"))
	}
	if f.item {
		return finding.Say("write %s: [one, two], a text in quotes where it holds a colon, a comma or a bracket, or starts with #", f.name)
	}
	return finding.Say("write %s: text, in quotes where it holds a colon, a comma or a bracket, or starts with #", f.name)
}

// wordsIn are the plain words of a node, as a list has them; else what stands
// for them.
func wordsIn(n *syntax.Node, otherwise string) string {
	var out []string
	for _, item := range n.Items {
		if item.Kind != syntax.Scalar || item.Text == "" {
			return otherwise
		}
		out = append(out, item.Text)
	}
	for _, p := range n.Pairs {
		out = append(out, p.Key)
	}
	if n.Kind == syntax.Scalar && n.Text != "" {
		return n.Text
	}
	if len(out) == 0 {
		return otherwise
	}
	return strings.Join(out, ", ")
}

func contains(list []string, s string) bool {
	for _, x := range list {
		if x == s {
			return true
		}
	}
	return false
}

func (d *Decoder) wrong(n *syntax.Node, f field, key position.Pos, want, mend finding.Words) bool {
	is := n.Kind.Says()
	if n.Kind == syntax.Scalar {
		is = finding.Say("%q", n.Text)
	}
	return d.add(WrongType.At(placeOf(n, key), "%s is %s; it must be %s", f.name, is, want).WithMend("%s", mend))
}

func (d *Decoder) number(n *syntax.Node, v reflect.Value, f field, key position.Pos) bool {
	i, err := strconv.Atoi(n.Text)
	if n.Kind != syntax.Scalar || err != nil || i < 0 || i > 1_000_000 || strings.HasPrefix(n.Text, "+") || (len(n.Text) > 1 && n.Text[0] == '0') {
		return d.wrong(n, f, key, finding.Say("a whole number"), finding.Say("write %s: 2", f.name))
	}
	if f.some && i == 0 {
		return d.wrong(n, f, key, finding.Say("a whole number from 1 on"), finding.Say("write %s: 2", f.name))
	}
	v.SetInt(int64(i))
	return true
}

func (d *Decoder) yesNo(n *syntax.Node, v reflect.Value, f field, key position.Pos) bool {
	if n.Kind != syntax.Scalar || (n.Text != "yes" && n.Text != "no") {
		mend := finding.Say("write %s: yes, or %s: no", f.name, f.name)
		if f.word != "" {
			mend = finding.Say("write %s: yes, or %s: no; a plug that stays with the one who pulled it has %s: %s", f.name, f.name, f.name, f.word)
		}
		return d.wrong(n, f, key, finding.Say("yes or no"), mend)
	}
	v.SetBool(n.Text == "yes")
	return true
}

// list reads a list of values, or a map of entries by id.
func (d *Decoder) list(n *syntax.Node, v reflect.Value, f field, key position.Pos) bool {
	if v.Type().Elem().Kind() == reflect.Pointer {
		return d.entries(n, v, f, key)
	}
	if f.many && n.Kind == syntax.Scalar {
		n = &syntax.Node{Kind: syntax.List, Items: []*syntax.Node{n}, At: n.At}
	}
	if _, ids := reflect.New(v.Type().Elem()).Interface().(setter); ids {
		n = keysAlone(n)
	}
	if n.Kind != syntax.List {
		return d.wrong(n, f, key, finding.Say("a list"), finding.Say("write %s: [%s]", f.name, wordsIn(n, "one, two")))
	}
	if v.Type().Elem().Kind() == reflect.Slice && flat(n) {
		return d.wrong(n, f, key, finding.Say("a list of lists"), finding.Say("write %s: [[%s]]", f.name, wordsIn(n, "one, two")))
	}
	f.item = true
	ok := true
	out := reflect.MakeSlice(v.Type(), 0, len(n.Items))
	for i, item := range n.Items {
		if v.Type().Elem().Kind() == reflect.String {
			d.wrote(f.name+"."+item.Text, item.At)
			ok = d.uncut(n.Items[max(i-1, 0)], item) && ok
		}
		one := reflect.New(v.Type().Elem()).Elem()
		if !d.value(item, one, f, key) {
			ok = false
			continue
		}
		out = reflect.Append(out, one)
	}
	v.Set(out)
	return ok
}

// keysAlone is a map of ids that have no amounts as the list of them; anything
// else as it is.
func keysAlone(n *syntax.Node) *syntax.Node {
	list := &syntax.Node{Kind: syntax.List, At: n.At}
	for _, p := range n.Pairs {
		if p.Value.Kind != syntax.Empty {
			return n
		}
		list.Items = append(list.Items, &syntax.Node{Kind: syntax.Scalar, Text: p.Key, At: p.KeyAt})
	}
	if n.Kind != syntax.Map {
		return n
	}
	return list
}

// flat says that a list which holds lists holds words alone.
func flat(n *syntax.Node) bool {
	for _, item := range n.Items {
		if item.Kind != syntax.Scalar {
			return false
		}
	}
	return len(n.Items) > 0
}

// entries reads a map from id to entry into a slice of pointers, as written.
func (d *Decoder) entries(n *syntax.Node, v reflect.Value, f field, key position.Pos) bool {
	if n.Kind != syntax.Map {
		return d.wrong(n, f, key, finding.Say("a map from id to entry"), finding.Say("write under %s:, two spaces in: the-id: { name: … }", f.name))
	}
	for _, p := range n.Pairs {
		entry := reflect.New(v.Type().Elem().Elem())
		d.Entry(p, entry.Interface().(model.Named))
		v.Set(reflect.Append(v, entry))
	}
	return true // what of an entry could not be read, the entry itself knows
}

// Entry reads one entry of a map by id.
func (d *Decoder) Entry(p syntax.Pair, out model.Named) {
	base := out.Base()
	base.ID, base.At = p.Key, p.KeyAt
	d.ID(p.Key, p.KeyAt)
	d.Struct(p.Value, out, finding.Say("%s", p.Key), p.KeyAt)
}
