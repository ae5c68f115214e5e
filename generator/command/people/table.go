package people

import (
	"bytes"
	"encoding/csv"
	"errors"
	"io"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/read/bind"
)

// table is a file of people, and where each of its rows stands in it.
type table struct {
	text   []byte
	header row // the longest
	rows   []row
}

// row is a row and its place, without the end of its line.
type row struct {
	cells    []string
	from, to int
}

// columns are those that the file may have, in the order in which it is begun.
func columns() []string { return bind.PeopleColumns.All() }

// read finds the rows of a file; an empty one gets its header.
func read(text []byte) (*table, error) {
	t := &table{text: slices.Clone(text)}
	if len(bytes.TrimSpace(bytes.TrimPrefix(text, []byte("\ufeff")))) == 0 {
		t.text = []byte(strings.Join(columns(), ",") + "\n")
	}
	mark := len(t.text) - len(bytes.TrimPrefix(t.text, []byte("\ufeff")))
	r := csv.NewReader(bytes.NewReader(t.text[mark:]))
	r.FieldsPerRecord = -1
	for first := true; ; first = false {
		from := mark + int(r.InputOffset())
		cells, err := r.Read()
		if errors.Is(err, io.EOF) {
			return t, t.whole()
		}
		if err != nil {
			return nil, err
		}
		to := mark + int(r.InputOffset())
		for from < to && strings.IndexByte("\r\n", t.text[from]) >= 0 {
			from++
		}
		for to > from && strings.IndexByte("\r\n", t.text[to-1]) >= 0 {
			to--
		}
		for i := range cells {
			cells[i] = strings.TrimSpace(cells[i])
		}
		t.take(row{cells, from, to}, first)
	}
}

// take takes a row in; a header line that comes again is no row.
func (t *table) take(r row, first bool) {
	header := first || !slices.ContainsFunc(r.cells, func(c string) bool { return !slices.Contains(columns(), c) })
	switch {
	case !header:
		t.rows = append(t.rows, r)
	case len(r.cells) > len(t.header.cells):
		t.header = r
	}
}

// whole says why nothing is changed in a file.
func (t *table) whole() error {
	if len(t.header.cells) == 1 && strings.Contains(t.header.cells[0], ";") {
		return finding.Refuse("its cells are parted by semicolons: save it with commas between the cells (CSV, comma separated, UTF-8)")
	}
	for _, c := range bind.PeopleColumns.Need {
		if !slices.Contains(t.header.cells, c) {
			return finding.Refuse("it has no column %s: its first line should be %s", c, strings.Join(bind.PeopleColumns.Need, ","))
		}
	}
	return nil
}

// add adds a row at the end.
func (t *table) add(cells map[string]string) error {
	var out []string
	for _, name := range t.header.cells {
		out = append(out, strings.Join(strings.Fields(cells[name]), " "))
	}
	if n := len(t.text); t.text[n-1] != '\n' {
		t.text = append(t.text, t.lineEnd()...)
	}
	t.text = append(t.text, line(out)+t.lineEnd()...)
	return nil
}

// set puts a cell into the rows of the people who are named; the column comes
// where it is not there yet.
func (t *table) set(column string, cells map[string]string) error {
	type edit struct {
		row
		now string
	}
	at, who := slices.Index(t.header.cells, column), slices.Index(t.header.cells, "person")
	var edits []edit
	if at < 0 {
		at = len(t.header.cells)
		edits = append(edits, edit{t.header, line(append(slices.Clone(t.header.cells), column))})
	}
	for _, r := range t.rows {
		if who >= len(r.cells) {
			continue
		}
		text, named := cells[r.cells[who]]
		if !named {
			continue
		}
		delete(cells, r.cells[who]) // of two rows of one id the first stands
		now := slices.Clone(r.cells)
		for len(now) <= at {
			now = append(now, "")
		}
		now[at] = text
		edits = append(edits, edit{r, line(now)})
	}
	if len(cells) > 0 {
		return finding.Refuse("it was changed meanwhile; nothing was written: run it again")
	}
	slices.SortFunc(edits, func(a, b edit) int { return b.from - a.from })
	for _, e := range edits {
		t.text = slices.Concat(t.text[:e.from], []byte(e.now), t.text[e.to:])
	}
	return nil
}

func (t *table) lineEnd() string {
	if bytes.Contains(t.text, []byte("\r\n")) {
		return "\r\n"
	}
	return "\n"
}

// line is a row as it is written, without the end of the line.
func line(cells []string) string {
	var out bytes.Buffer
	w := csv.NewWriter(&out)
	_ = w.Write(cells) // into memory
	w.Flush()
	return strings.TrimSuffix(out.String(), "\n")
}
