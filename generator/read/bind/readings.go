package bind

import (
	"slices"
	"strings"

	"baybinder/generator/base/nearest"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/syntax"
)

// readings reads the plans, the people, the record and the revisions.
func (b *binder) readings() {
	b.planFiles()
	b.peopleFile()
	b.recordFile()
	b.revisionsFile()
}

func (b *binder) planFiles() {
	for _, f := range b.filesIn("readings/plans/", ".yaml") {
		id, _ := stem(f.Path)
		b.fileID(id, f)
		if first := b.plans.byID[id]; first != nil {
			b.add(syntax.DuplicateID.At(firstLine(f), "a second reading plan %s", id).
				WithMend("give one of the two files another name").See(first.At, "the first is here"))
			continue
		}
		node := b.yaml(f)
		if node == nil {
			continue
		}
		if node.Kind == syntax.Empty {
			node.Kind = syntax.Map
		}
		p := &model.Plan{Entry: model.Entry{ID: id, At: firstLine(f)}}
		b.decode(func(d *decode.Decoder) { d.Struct(node, p, "this plan", p.At) })
		r := reader{&b.notes, &p.Entry}
		leadAll(r, "gives", b.roles, p.Gives)
		leadAll(r, "read", b.procedures, p.Read)
		leadAll(r, "watch", b.procedures, p.Watch)
		leadUses(r, "perform", b.procedures, p.Perform)
		lead(r, "assessor", b.roles, &p.Assessor)
		b.plans.byID[id] = p
		b.m.Plans = append(b.m.Plans, p)
	}
}

// table reads a CSV file whose columns are known; each row is given as a map
// from column to cell.
func (b *binder) table(name string, columns []string, row func(map[string]syntax.Cell)) {
	f := b.file(name)
	if f == nil {
		return
	}
	t, findings := syntax.CSV(f)
	b.list = append(b.list, findings...)
	if len(findings) > 0 {
		b.brokenFile(name)
	}
	if !b.header(t, columns, f) {
		b.brokenFile(name)
		return
	}
	for _, cells := range t.Rows {
		byColumn := make(map[string]syntax.Cell, len(cells))
		for i, c := range cells {
			byColumn[t.Header[i].Text] = c
		}
		row(byColumn)
	}
}

// header judges a table's first row: every column must be there, and none that
// nobody reads.
func (b *binder) header(t *syntax.Table, columns []string, f *position.File) bool {
	ok := true
	var have []string
	for _, c := range t.Header {
		have = append(have, c.Text)
		if !slices.Contains(columns, c.Text) {
			found := decode.UnknownField.At(c.At, "%s has no column %s", f.Path, c.Text)
			if near := nearest.Of(c.Text, columns); near != "" {
				found = found.WithMend("did you mean %s?", near)
			}
			b.add(found)
			ok = false
		}
	}
	for _, c := range columns {
		if ok && !slices.Contains(have, c) {
			b.add(decode.MissingField.At(firstLine(f), "%s has no column %s", f.Path, c).
				WithMend("its first line is: %s", strings.Join(columns, ",")))
			ok = false
		}
	}
	return ok
}

// word is one of the words of a cell that holds a list, with its place.
func words(c syntax.Cell) []syntax.Cell {
	var out []syntax.Cell
	from := 0
	for _, w := range strings.Fields(c.Text) {
		i := strings.Index(c.Text[from:], w) + from
		out = append(out, syntax.Cell{Text: w, At: c.At.Part(i, i+len(w))})
		from = i + len(w)
	}
	return out
}

// day reads a date; an empty cell is no date.
func (b *binder) day(c syntax.Cell) model.Date {
	if c.Text == "" {
		return model.Date{}
	}
	d, ok := model.ParseDate(c.Text)
	if !ok {
		b.add(decode.WrongType.At(c.At, "%q is not a day of the calendar", c.Text).WithMend("write year-month-day: 2026-03-02"))
	}
	return d
}

func refTo[T any](c syntax.Cell) model.Ref[T] {
	return model.Ref[T]{ID: c.Text, At: c.At}
}

func (b *binder) peopleFile() {
	b.table("readings/people.csv", []string{"person", "name", "roles", "started", "plans"}, func(row map[string]syntax.Cell) {
		c := row["person"]
		p := &model.Person{Entry: model.Entry{ID: c.Text, At: c.At}, Name: row["name"].Text, Started: b.day(row["started"])}
		b.decode(func(d *decode.Decoder) { d.ID(c.Text, c.At) })
		for _, w := range words(row["roles"]) {
			p.Roles = append(p.Roles, b.gained(p, w))
		}
		for _, w := range words(row["plans"]) {
			p.Plans = append(p.Plans, refTo[model.Plan](w))
		}
		leadAll(reader{&b.notes, &p.Entry}, "plans", b.plans, p.Plans)
		if first := b.people.byID[p.ID]; first != nil {
			b.add(syntax.DuplicateID.At(c.At, "a second person %s", p.ID).WithMend("give the second an id of its own").See(first.At, "the first is here"))
			return
		}
		b.people.byID[p.ID] = p
		b.m.People = append(b.m.People, p)
	})
}

// gained reads role or role@date.
func (b *binder) gained(p *model.Person, w syntax.Cell) model.Gained {
	id, date, dated := strings.Cut(w.Text, "@")
	g := model.Gained{Ref: model.Ref[model.Role]{ID: id, At: w.At.Part(0, len(id))}}
	if dated {
		g.On = b.day(syntax.Cell{Text: date, At: w.At.Part(len(id)+1, len(w.Text))})
	}
	lead(reader{&b.notes, &p.Entry}, "roles", b.roles, &g.Ref)
	return g
}

func (b *binder) recordFile() {
	columns := []string{"date", "person", "procedure", "act", "fingerprint", "by"}
	b.table("readings/record.csv", columns, func(row map[string]syntax.Cell) {
		r := model.Reading{
			At: row["date"].At, Date: b.day(row["date"]),
			Person: refTo[model.Person](row["person"]), Procedure: refTo[model.Procedure](row["procedure"]),
			Act: row["act"].Text, Fingerprint: row["fingerprint"].Text, FingerprintAt: row["fingerprint"].At,
			By: row["by"].Text, ByAt: row["by"].At,
		}
		b.dated(row["date"])
		b.person(&r.Person)
		b.byAnyName(&r.Procedure)
		b.choice(row["act"], "read", "watched", "performed", "taught")
		b.print(row["fingerprint"], r.Act == "read")
		if r.By != "" {
			by := refTo[model.Person](row["by"])
			b.person(&by)
		}
		b.m.Record = append(b.m.Record, r)
	})
}

func (b *binder) revisionsFile() {
	columns := []string{"procedure", "revision", "date", "fingerprint", "reason", "written", "checked", "approved", "walked", "readers"}
	numbers := map[[2]string]position.Pos{}
	b.table("revisions.csv", columns, func(row map[string]syntax.Cell) {
		r := model.Revision{
			At: row["procedure"].At, Procedure: refTo[model.Procedure](row["procedure"]), Number: row["revision"].Text,
			Date: b.day(row["date"]), Fingerprint: row["fingerprint"].Text, Reason: row["reason"].Text,
			Written: row["written"].Text, Checked: row["checked"].Text, Approved: row["approved"].Text, Walked: row["walked"].Text,
			Readers: row["readers"].Text,
			Kept:    b.file("revisions/" + row["procedure"].Text + "/" + row["revision"].Text + ".md"),
		}
		b.dated(row["date"])
		b.byAnyName(&r.Procedure)
		b.choice(row["readers"], "reread", "tell", "none")
		b.print(row["fingerprint"], true)
		b.once(numbers, &r, row["revision"])
		b.m.Revisions = append(b.m.Revisions, r)
	})
	// Rows of two branches that were merged stand as they came.
	slices.SortStableFunc(b.m.Revisions, func(x, y model.Revision) int { return x.Date.Time().Compare(y.Date.Time()) })
}

// once tells of a revision that stands twice, as where two branches issued it
// at the same time: one number has one text.
func (b *binder) once(numbers map[[2]string]position.Pos, r *model.Revision, number syntax.Cell) {
	k := [2]string{r.Procedure.ID, r.Number}
	first, twice := numbers[k]
	if !twice {
		numbers[k] = r.At
		return
	}
	b.add(syntax.DuplicateID.At(number.At, "a second revision %s of %s", r.Number, r.Procedure.ID).
		WithMend("give the later of the two the next number, and its words in revisions/%s/ too", r.Procedure.ID).See(first, "the first is here"))
}

// dated tells of a row without a day: it would count for no time.
func (b *binder) dated(c syntax.Cell) {
	if c.Text == "" {
		b.add(decode.MissingField.At(c.At, "this row has no date").WithMend("write year-month-day: 2026-03-02"))
	}
}

// print tells of what is no fingerprint. Who watched or performed may have
// none; of what was read it is what says which words.
func (b *binder) print(c syntax.Cell, need bool) {
	switch {
	case c.Text == "" && need:
		b.add(decode.MissingField.At(c.At, "this row has no fingerprint, which says what the words were").
			WithMend("add rows with baybinder readings record, or baybinder issue"))
	case c.Text != "" && !model.IsFingerprint(c.Text):
		b.add(decode.WrongType.At(c.At, "%q is no fingerprint", c.Text).
			WithMend("it is a number, a hyphen and 16 signs of 0-9 and a-f, as in 1-8c1f0a93b2d4e5f6: take the row as it was written from version control"))
	}
}

func (b *binder) choice(c syntax.Cell, words ...string) {
	if !slices.Contains(words, c.Text) {
		b.add(decode.WrongType.At(c.At, "%q is not one of: %s", c.Text, strings.Join(words, ", ")))
	}
}

func (b *binder) person(ref *model.Ref[model.Person]) {
	ref.To = b.people.byID[ref.ID]
	if ref.To != nil || b.people.broken {
		return
	}
	f := UnknownPerson.At(ref.At, "%s is not in readings/people.csv", ref.ID)
	if near := nearest.Of(ref.ID, b.people.ids()); near != "" {
		f = f.WithMend("did you mean %s?", near)
	}
	b.add(f)
}

// byAnyName leads to a procedure by its id or an earlier one: history follows.
func (b *binder) byAnyName(ref *model.Ref[model.Procedure]) {
	if to := b.renamed[ref.ID]; to != nil && b.procedures.byID[ref.ID] == nil {
		ref.To = to
		return
	}
	to, f := b.procedures.find(ref.ID, ref.At)
	ref.To = to
	b.addIf(f)
}
