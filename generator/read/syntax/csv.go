package syntax

import (
	"encoding/csv"
	"errors"
	"io"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
)

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

// CSV reads a file with a header line. Rows that do not have the header's
// number of cells are findings and are left out.
func CSV(f *position.File) (*Table, []finding.Finding) {
	t := &Table{File: f}
	r := csv.NewReader(strings.NewReader(f.Text))
	r.FieldsPerRecord = -1
	var findings []finding.Finding
	for {
		record, err := r.Read()
		if errors.Is(err, io.EOF) {
			return t, findings
		}
		var bad *csv.ParseError
		if errors.As(err, &bad) {
			at := f.At(lineStart(f, bad.Line)+bad.Column-1, 0)
			return t, append(findings, Syntax.At(at, "this row does not parse: a quote is missing or stands in the middle of a cell").
				WithMend("write \"…\" around the whole cell, and \"\" for a quote inside it"))
		}
		row := cells(f, r, record)
		switch {
		case t.Header == nil:
			t.Header = row
		case len(row) != len(t.Header):
			findings = append(findings, Syntax.At(row[0].At, "this row has %d cells, the header has %d", len(row), len(t.Header)).
				WithMend("write one cell for each column; an empty one is two commas in a row"))
		default:
			t.Rows = append(t.Rows, row)
		}
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
