package bind

import (
	"regexp"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/ledger"
	"baybinder/generator/base/nearest"
	"baybinder/generator/base/picture"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/syntax"
)

// UnknownPerson is told at the cell that names them.
var UnknownPerson = finding.Rule{
	Code:  "unknown-person",
	Names: true,
	Title: "A record of someone who is not in readings/people.csv",
	Why:   "A record that belongs to nobody counts for nobody.",
	Mend:  "Write the person's id as people.csv has it, or add the person.",
}

// readings reads the plans, the people, the record and the revisions.
func (b *binder) readings() {
	b.planFiles()
	b.peopleFile()
	b.recordFile()
	b.rolesFile()
	b.revisionsFile()
	b.sums()
}

// sums looks at the pictures of what was issued with a hash of its words.
func (b *binder) sums() {
	b.m.Sums = map[string]string{}
	for _, r := range slices.Concat(b.m.Revisions, b.m.Renditions) {
		if r.Words == "" || r.Procedure.To == nil {
			continue
		}
		for _, name := range r.Procedure.To.Pictures() {
			if data, err := b.tree.Bytes(name); err == nil && b.m.Sums[name] == "" {
				b.m.Sums[name] = picture.Sum(name, data)
			}
		}
	}
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
		b.decode(func(d *decode.Decoder) { d.Struct(node, p, finding.Say("this plan"), p.At) })
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
// from column to cell. A column that the file has not got has empty cells.
func (b *binder) table(name string, columns syntax.Columns, row func(cells map[string]syntax.Cell, sum string)) {
	f := b.file(name)
	if f == nil {
		return
	}
	t, findings := syntax.CSV(f, columns)
	since := len(b.list)
	b.list = append(b.list, findings...)
	if b.bad(since) {
		b.brokenFile(name)
	}
	if len(t.Header) == 1 && strings.Contains(t.Header[0].Text, ";") {
		b.add(syntax.Syntax.At(firstLine(f), "the cells of %s are parted by semicolons", f.Path).
			WithMend("save it with commas between the cells (CSV, comma separated, UTF-8)"))
		b.brokenFile(name)
		return
	}
	if !b.header(t, columns, f) {
		b.brokenFile(name)
		return
	}
	for _, cells := range t.Rows {
		byColumn := make(map[string]syntax.Cell, len(cells))
		for _, c := range columns.Later {
			byColumn[c] = syntax.Cell{At: cells[0].At}
		}
		texts := make([]string, len(cells))
		for i, c := range cells {
			byColumn[t.Header[i].Text] = c
			texts[i] = c.Text
		}
		row(byColumn, ledger.Sum(texts))
	}
}

// bad says whether there is an error among what was found since, which makes a
// row of people count for nothing.
func (b *binder) bad(since int) bool {
	return slices.ContainsFunc(b.list[since:], func(f finding.Finding) bool { return f.Level == finding.Error })
}

// header judges a table's first row: every column must be there, and none that
// nobody reads.
func (b *binder) header(t *syntax.Table, of syntax.Columns, f *position.File) bool {
	columns := of.All()
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
	for _, c := range of.Need {
		if ok && !slices.Contains(have, c) {
			b.add(decode.MissingField.At(firstLine(f), "%s has no column %s", f.Path, c).
				WithMend("its first line is: %s", strings.Join(of.Need, ",")))
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
		b.add(decode.WrongType.At(c.At, "%q is not a day of the calendar", c.Text).WithMend("write 2026-03-02, as year, month and day"))
	}
	return d
}

func refTo[T any](c syntax.Cell) model.Ref[T] {
	return model.Ref[T]{ID: c.Text, At: c.At}
}

func (b *binder) peopleFile() {
	b.table("readings/people.csv", PeopleColumns, func(row map[string]syntax.Cell, _ string) {
		c := row["person"]
		p := &model.Person{Entry: model.Entry{ID: c.Text, At: c.At}, Name: row["name"].Text, Started: b.day(row["started"])}
		p.StartUnread = p.Started.IsZero() && row["started"].Text != ""
		b.decode(func(d *decode.Decoder) { d.ID(c.Text, c.At) })
		for _, w := range words(row["roles"]) {
			if g, read := b.gained(p, w); read {
				p.Roles = append(p.Roles, g)
			}
		}
		b.left(p, row["left"])
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

// follows says whether an absence begins when the one before it was over.
func follows(a, before model.Absence) bool {
	return !before.Back.IsZero() && !a.Last.Before(before.Back)
}

// left reads when a person left: the last day, or spans for who came back.
func (b *binder) left(p *model.Person, c syntax.Cell) {
	mend := finding.Say("write the last day, and of who came back the first day again too: 2027-03-15..2027-08-02")
	for _, w := range words(c) {
		last, back, span := strings.Cut(w.Text, "..")
		a := model.Absence{Last: b.day(syntax.Cell{Text: last, At: w.At.Part(0, len(last))})}
		if span {
			a.Back = b.day(syntax.Cell{Text: back, At: w.At.Part(len(last)+2, len(w.Text))})
		}
		switch {
		case last == "" || span && back == "":
			b.add(decode.WrongType.At(w.At, "%q has a day missing", w.Text).WithMend("%s", mend))
		case a.Last.IsZero() || span && a.Back.IsZero(): // it was told
		case span && !a.Last.Before(a.Back):
			b.add(decode.WrongType.At(w.At, "%q ends before it begins", w.Text).WithMend("%s", mend))
		case a.Last.Before(p.Started):
			b.add(decode.WrongType.At(w.At, "%q is before %s started, on %s", w.Text, p.Label(), p.Started).WithMend("mend the last day, or started"))
		case len(p.Left) > 0 && !follows(a, p.Left[len(p.Left)-1]):
			b.add(decode.WrongType.At(w.At, "%q begins before the absence in front of it is over", w.Text).WithMend("%s", mend))
		default:
			p.Left = append(p.Left, a)
			continue
		}
		p.LeftUnread = true
	}
}

// gained reads role or role@date; a role whose day cannot be read is held from
// no day.
func (b *binder) gained(p *model.Person, w syntax.Cell) (g model.Gained, read bool) {
	id, date, dated := strings.Cut(w.Text, "@")
	g = model.Gained{Ref: model.Ref[model.Role]{ID: id, At: w.At.Part(0, len(id))}}
	if dated {
		g.On = b.day(syntax.Cell{Text: date, At: w.At.Part(len(id)+1, len(w.Text))})
	}
	lead(reader{&b.notes, &p.Entry}, "roles", b.roles, &g.Ref)
	return g, !dated || !g.On.IsZero()
}

// The columns of the tables about people and revisions.
var (
	PeopleColumns = syntax.Columns{Need: []string{"person", "name", "roles", "started", "plans"}, Later: []string{"left"}}
	RecordColumns = syntax.Columns{
		Need:  []string{"date", "person", "procedure", "act", "fingerprint", "by"},
		Later: []string{"on", "language", "score", "note", "after"},
		Added: true,
	}
	RolesColumns    = syntax.Columns{Need: []string{"date", "person", "role", "act", "by", "reason"}, Added: true}
	RevisionColumns = syntax.Columns{
		Need:  []string{"procedure", "revision", "date", "fingerprint", "reason", "written", "checked", "approved", "walked", "readers"},
		Later: []string{"words", "language"},
		Added: true,
	}
)

func (b *binder) recordFile() {
	b.table("readings/record.csv", RecordColumns, func(row map[string]syntax.Cell, sum string) {
		before := len(b.list)
		r := model.Reading{
			At: row["date"].At, Date: b.day(row["date"]),
			Person: refTo[model.Person](row["person"]), Procedure: refTo[model.Procedure](row["procedure"]),
			Act: row["act"].Text, Fingerprint: row["fingerprint"].Text, FingerprintAt: row["fingerprint"].At,
			By: row["by"].Text, ByAt: row["by"].At, On: row["on"].Text, Language: row["language"].Text,
			Score: row["score"].Text, Note: row["note"].Text, After: row["after"].Text, AfterAt: row["after"].At, Sum: sum,
		}
		b.dated(row["date"])
		b.person(&r.Person)
		b.byAnyName(&r.Procedure)
		b.choice(row["act"], "read", "watched", "performed", "taught", "told", "inspected")
		b.print(row["fingerprint"], r.Act == "read")
		b.witness(row["by"])
		r.Bad = b.bad(before)
		b.m.Record = append(b.m.Record, r)
	})
}

// witness judges who is named beside a row; nobody may be.
func (b *binder) witness(c syntax.Cell) {
	if c.Text != "" {
		by := refTo[model.Person](c)
		b.person(&by)
	}
}

func (b *binder) rolesFile() {
	b.table("readings/roles.csv", RolesColumns, func(row map[string]syntax.Cell, _ string) {
		before := len(b.list)
		a := model.Award{
			At: row["date"].At, Date: b.day(row["date"]), Person: refTo[model.Person](row["person"]), Role: refTo[model.Role](row["role"]),
			Act: row["act"].Text, By: row["by"].Text, Reason: row["reason"].Text,
		}
		b.dated(row["date"])
		b.person(&a.Person)
		b.roleByAnyName(&a.Role)
		b.choice(row["act"], "gained", "renewed", "withdrawn")
		b.witness(row["by"])
		a.Bad = b.bad(before)
		b.m.Awards = append(b.m.Awards, a)
	})
}

// roleByAnyName leads to a role by its id or an earlier one.
func (b *binder) roleByAnyName(ref *model.Ref[model.Role]) {
	for _, r := range b.m.Roles {
		if b.roles.byID[ref.ID] == nil && slices.Contains(r.Was, ref.ID) {
			ref.To = r
			return
		}
	}
	lead(reader{&b.notes, new(model.Entry)}, "role", b.roles, ref)
}

func (b *binder) revisionsFile() {
	numbers := map[[3]string]position.Pos{}
	b.table("revisions.csv", RevisionColumns, func(row map[string]syntax.Cell, _ string) {
		r := model.Revision{
			At: row["procedure"].At, Procedure: refTo[model.Procedure](row["procedure"]), Number: row["revision"].Text,
			Date: b.day(row["date"]), Fingerprint: row["fingerprint"].Text, Reason: row["reason"].Text,
			Written: row["written"].Text, Checked: row["checked"].Text, Approved: row["approved"].Text, Walked: row["walked"].Text,
			CheckedAt: row["checked"].At, ApprovedAt: row["approved"].At,
			Readers: row["readers"].Text, Words: row["words"].Text, Language: row["language"].Text,
		}
		r.Kept = b.file(model.KeptPath(r.Procedure.ID, r.Number, r.Language))
		b.dated(row["date"])
		b.byAnyName(&r.Procedure)
		b.choice(row["readers"], "reread", "tell", "none", "retired")
		b.print(row["fingerprint"], true)
		b.hash(row["words"])
		b.once(numbers, &r, row["revision"])
		if r.Language != "" {
			b.m.Renditions = append(b.m.Renditions, r)
			return
		}
		b.m.Revisions = append(b.m.Revisions, r)
	})
	// Rows of two branches that were merged stand as they came.
	byDate := func(x, y model.Revision) int { return x.Date.Time().Compare(y.Date.Time()) }
	slices.SortStableFunc(b.m.Revisions, byDate)
	slices.SortStableFunc(b.m.Renditions, byDate)
}

var hashForm = regexp.MustCompile(`^[0-9a-f]{16}$`)

// hash tells of what is no hash of words; a row may have none.
func (b *binder) hash(c syntax.Cell) {
	if c.Text != "" && !hashForm.MatchString(c.Text) {
		b.add(decode.WrongType.At(c.At, "%q is no hash of words", c.Text).
			WithMend("it is 16 signs of 0-9 and a-f: take the row as it was written from version control"))
	}
}

// once tells of a revision that stands twice, as where two branches issued it
// at the same time: one number has one text.
func (b *binder) once(numbers map[[3]string]position.Pos, r *model.Revision, number syntax.Cell) {
	k := [3]string{r.Procedure.ID, r.Number, r.Language}
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
		b.add(decode.MissingField.At(c.At, "this row has no date").WithMend("write 2026-03-02, as year, month and day"))
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
	if near := model.WhoIsMeant(b.m.People, ref.ID); near != "" {
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
