package syntax

import (
	"encoding/csv"
	"errors"
	"io"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
)

// RowCut is told at the last row.
var RowCut = finding.Rule{
	Code:  "row-cut",
	Level: finding.Advice,
	Ours:  true,
	Title: "A last row whose line does not end",
	Why:   "Each row that the program adds ends its line. Where the last one does not, the file was cut: a disk was full, or a copy broke off. Half a name or half a fingerprint looks like a whole one.",
	Mend:  "See whether the row is whole, and end its line with Enter; else take the row out and record it again. No row is added behind it before.",
}

// Table is a CSV file: a header and rows, each cell with its place.
type Table struct {
	File   *position.File
	Header []Cell
	Rows   [][]Cell
}

// Cell is one field of a row, trimmed.
type Cell struct {
	Text string
	At   position.Pos
}

// Columns are those that a table may have: those that every row fills, and
// those that came later, which a header and a row may lack.
//
// Where rows are only ever added, each ends its line: a last one that does not
// was cut.
type Columns struct {
	Need  []string
	Later []string
	Added bool // rows are only ever added
}

// All is every column.
func (c Columns) All() []string { return slices.Concat(c.Need, c.Later) }

// CSV reads a file with a header line. A header line that comes again is passed
// over, as two branches that were merged may both have brought one; the longest
// names the cells, wherever it stands. Rows that have more cells than it, or
// fewer than the last column that every row fills, are findings and are left
// out; a cell that a row lacks is empty.
func CSV(f *position.File, columns Columns) (*Table, []finding.Finding) {
	t := &Table{File: f}
	rows, broken := csvRows(f)
	var headers, others [][]Cell
	for i, row := range rows {
		if i == 0 || isHeader(row, rows[0], columns) {
			headers = append(headers, row)
			continue
		}
		others = append(others, row)
	}
	for _, h := range headers {
		if len(h) > len(t.Header) {
			t.Header = h
		}
	}
	need := leastCells(t.Header, columns)
	var findings []finding.Finding
	for _, row := range others {
		if len(row) < need || len(row) > len(t.Header) {
			findings = append(findings, Syntax.At(row[0].At, "this row has %d cells, the header has %d", len(row), len(t.Header)).
				WithMend("write one cell for each column; an empty one is two commas in a row"))
			continue
		}
		for len(row) < len(t.Header) {
			row = append(row, Cell{At: row[0].At})
		}
		t.Rows = append(t.Rows, row)
	}
	findings = append(findings, broken...)
	if columns.Added && len(findings) == 0 {
		findings = t.cut()
	}
	return t, findings
}

// cut is the last row of a file whose line does not end, if there is one. Where
// it is cut within its last cell nothing else tells of it.
func (t *Table) cut() []finding.Finding {
	if len(t.Rows) == 0 || strings.HasSuffix(t.File.Text, "\n") {
		return nil
	}
	last := t.Rows[len(t.Rows)-1]
	at := last[len(last)-1].At
	for i := len(last) - 1; i > 0 && at == last[0].At; i-- { // cells that the row lacks
		at = last[i-1].At
	}
	return []finding.Finding{RowCut.At(at, "the line of this row does not end: the row may be cut, also within its last cell").
		WithMend("see whether the row is whole: then end its line with Enter; else take it out, and record it again")}
}

// isHeader says that a row is a header again: it begins as the first does, and
// all its cells are names of columns.
func isHeader(row, first []Cell, columns Columns) bool {
	return row[0].Text == first[0].Text && !slices.ContainsFunc(row, func(c Cell) bool { return !slices.Contains(columns.All(), c.Text) })
}

// leastCells is how many cells every row has: as far as the last column that came
// with the first header.
func leastCells(header []Cell, columns Columns) int {
	n := len(header)
	for n > 0 && slices.Contains(columns.Later, header[n-1].Text) {
		n--
	}
	return n
}

// csvRows are the rows of a file, as far as it parses.
func csvRows(f *position.File) (rows [][]Cell, broken []finding.Finding) {
	r := csv.NewReader(strings.NewReader(f.Text))
	r.FieldsPerRecord = -1
	for {
		record, err := r.Read()
		if errors.Is(err, io.EOF) {
			return rows, nil
		}
		var bad *csv.ParseError
		if errors.As(err, &bad) {
			at := f.At(lineStart(f, bad.Line)+bad.Column-1, 0)
			return rows, []finding.Finding{Syntax.At(at, "this row cannot be read: a quote is missing or stands in the middle of a cell").
				WithMend("write \"…\" around the whole cell, and \"\" for a quote inside it")}
		}
		rows = append(rows, cells(f, r, record))
	}
}

func cells(f *position.File, r *csv.Reader, record []string) []Cell {
	row := make([]Cell, len(record))
	for i, raw := range record {
		line, col := r.FieldPos(i)
		start := lineStart(f, line) + col - 1
		if strings.HasPrefix(f.Text[start:], `"`) && !strings.HasPrefix(raw, `"`) {
			start++
		}
		text := strings.TrimSpace(raw)
		start += strings.Index(raw, text)
		row[i] = Cell{Text: text, At: f.At(start, start+len(text))}
	}
	return row
}

// lineStart is the byte offset of a line counted from 1.
func lineStart(f *position.File, line int) int { return f.Offset(line, 1) }
