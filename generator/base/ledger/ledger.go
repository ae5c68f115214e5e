// Package ledger adds rows to the CSV files in which rows are only ever added.
//
// What stands in the file is never written again. A lock makes two people who
// add at once wait for each other; what they must not both add is judged while
// it is held.
package ledger

import (
	"bytes"
	"encoding/csv"
	"errors"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/rogpeppe/go-internal/lockedfile"

	"baybinder/generator/base/finding"
)

// Row is a row by its columns.
type Row map[string]string

// Columns are those of a file. Later ones came after the first, and a file, or
// a row, may lack them. Where After is one of them, a row that is added names
// there the row that it was added after.
type Columns struct {
	Need  []string
	Later []string
	After string
}

func (c Columns) all() []string { return slices.Concat(c.Need, c.Later) }

// Append adds rows to a file, which is made with the columns where it is not
// there: all of them, or none. Where judge is not nil it sees the rows that
// stand, and its error keeps the rows out. Columns that the file lacks and a row
// needs are brought by a longer header line before the rows: what stands is
// never written again.
func Append(name string, columns Columns, rows []Row, judge func([]Row) error) (err error) {
	if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
		return err
	}
	f, err := lockedfile.OpenFile(name, os.O_RDWR|os.O_CREATE, 0o644)
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, f.Close()) }()
	stands, err := io.ReadAll(f)
	if err != nil {
		return err
	}
	t, err := read(stands, columns)
	if err == nil && len(t.rows) > 0 && stands[len(stands)-1] != '\n' {
		err = errCut
	}
	if err != nil {
		return finding.Refuse("%s: %s", filepath.Base(name), err)
	}
	if judge != nil {
		if err := judge(t.byColumn()); err != nil {
			return err
		}
	}
	added, err := t.written(stands, columns, rows)
	if err != nil {
		return finding.Refuse("%s: %s", filepath.Base(name), err)
	}
	return add(f, added, int64(len(stands)))
}

// errCut is about a last row that may be cut within its last cell: a row added
// behind it would hide that.
var errCut = errors.New("the line of its last row does not end, so the row may be cut: see whether it is whole and end its line with Enter, or take it out")

// file is what add needs of an open file.
type file interface {
	io.WriterAt
	Truncate(size int64) error
}

// add writes behind what stands, all or nothing: where the disk is full, what
// did go in is taken out again, as half a row would spoil the next one too.
func add(f file, added []byte, stands int64) error {
	_, err := f.WriteAt(added, stands)
	if err == nil {
		return nil
	}
	if cut := f.Truncate(stands); cut != nil {
		return finding.Refuse("%s; and part of the row may stand at the end of the file: take its last line out (%s)", err, cut)
	}
	return finding.Refuse("no row was added: %s", err)
}

// table is what stands in a file.
type table struct {
	header []string // the longest; nil where the file is empty
	rows   [][]string
}

// read parses a file; an empty one has no header. A header line that comes again
// is no row.
func read(text []byte, columns Columns) (*table, error) {
	r := csv.NewReader(bytes.NewReader(bytes.TrimPrefix(text, []byte("\ufeff"))))
	r.FieldsPerRecord = -1
	all, err := r.ReadAll()
	if err != nil {
		return nil, err
	}
	t := &table{}
	for i, cells := range all {
		for k := range cells {
			cells[k] = strings.TrimSpace(cells[k])
		}
		switch again := i > 0 && cells[0] == all[0][0] && !slices.ContainsFunc(cells, func(c string) bool { return !slices.Contains(columns.all(), c) }); {
		case i > 0 && !again:
			t.rows = append(t.rows, cells)
		case len(cells) > len(t.header):
			t.header = cells
		}
	}
	return t, t.whole(columns)
}

// whole says which row is cut short or has too much.
func (t *table) whole(columns Columns) error {
	need := len(t.header)
	for need > 0 && slices.Contains(columns.Later, t.header[need-1]) {
		need--
	}
	for i, cells := range t.rows {
		if len(cells) < need || len(cells) > len(t.header) {
			return finding.Refuse("row %d has %d cells, and the header %d: baybinder check says where", i+1, len(cells), len(t.header))
		}
	}
	return nil
}

func (t *table) byColumn() []Row {
	var rows []Row
	for _, cells := range t.rows {
		row := Row{}
		for i, cell := range cells {
			row[t.header[i]] = cell
		}
		rows = append(rows, row)
	}
	return rows
}

// written is what is added to a file: the end of a last line that has none, a
// header where there is none or one of more columns is needed, and the rows in
// the order of the file's columns.
func (t *table) written(stands []byte, columns Columns, rows []Row) ([]byte, error) {
	var out bytes.Buffer
	w := csv.NewWriter(&out)
	w.UseCRLF = bytes.Contains(stands, []byte("\r\n"))
	if n := len(stands); t.header != nil && stands[n-1] != '\n' {
		out.WriteString("\n")
	}
	header, err := t.headerFor(columns, rows)
	if err != nil {
		return nil, err
	}
	if len(header) > len(t.header) {
		_ = w.Write(header) // into memory
	}
	last := ""
	if n := len(t.rows); n > 0 {
		last = Sum(t.rows[n-1])
	}
	for _, row := range rows {
		cells := make([]string, len(header))
		for i, name := range header {
			cells[i] = strings.Join(strings.Fields(row[name]), " ") // a row is one line, so that two branches merge
			if name == columns.After && name != "" {
				cells[i] = last
			}
		}
		_ = w.Write(cells)
		last = Sum(cells)
	}
	w.Flush()
	return out.Bytes(), w.Error()
}

// headerFor is the header that rows are written by: the file's own, with all of
// the later columns behind it where a row needs one that it lacks.
func (t *table) headerFor(columns Columns, rows []Row) ([]string, error) {
	if t.header == nil {
		return columns.all(), nil
	}
	if len(t.header) == 1 && strings.Contains(t.header[0], ";") {
		return nil, finding.Refuse("its cells are parted by semicolons: save it with commas between the cells (CSV, comma separated, UTF-8)")
	}
	lacks := func(name string) bool { return !slices.Contains(t.header, name) }
	needed := func(name string) bool {
		return name == columns.After || slices.ContainsFunc(rows, func(r Row) bool { return r[name] != "" })
	}
	for _, name := range columns.Need {
		if lacks(name) && needed(name) {
			return nil, finding.Refuse("it has no column %s: its first line should be %s", name, strings.Join(columns.Need, ","))
		}
	}
	header := t.header
	if slices.ContainsFunc(columns.Later, func(name string) bool { return lacks(name) && needed(name) }) {
		header = slices.Concat(t.header, slices.DeleteFunc(slices.Clone(columns.Later), func(name string) bool { return !lacks(name) }))
	}
	return header, nil
}
