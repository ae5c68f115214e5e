package training

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/model"
)

// FromColumns are those of a file of rows to be recorded: the record's, without
// what the program writes itself.
var FromColumns = []string{"date", "person", "procedure", "act", "by", "on", "language", "score", "note"}

// needColumns are those that a file of rows must have. A row without a day is of
// today, and an empty cell has what the command says of all.
var needColumns = []string{"person", "procedure"}

// From reads rows to be recorded out of a CSV file of any of FromColumns, in any
// order. What a cell leaves open is as in all. The error says all that is wrong,
// each with the file and the line.
func From(name string, text []byte, all Entry) ([]Entry, error) {
	r := csv.NewReader(bytes.NewReader(bytes.TrimPrefix(text, []byte("\ufeff"))))
	r.FieldsPerRecord = -1
	header, err := r.Read()
	if err != nil {
		return nil, finding.Refuse("%s holds no rows: its first line is %s", name, strings.Join(FromColumns, ","))
	}
	if err := fromHeader(name, header); err != nil {
		return nil, err
	}
	var out []Entry
	var wrong []error
	for {
		cells, err := r.Read()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			return nil, finding.Refuse("%s: %s", name, err)
		}
		line, _ := r.FieldPos(0)
		e, err := entryOf(header, cells, all)
		if err != nil {
			wrong = append(wrong, finding.Refuse("%s:%d: %s", name, line, err))
			continue
		}
		if e.Where = fmt.Sprintf("%s:%d", name, line); strings.Join(cells, "") != "" {
			out = append(out, e)
		}
	}
	if len(out)+len(wrong) == 0 {
		return nil, finding.Refuse("%s holds no row below its first line", name)
	}
	return out, errors.Join(wrong...)
}

// fromHeader judges the first line; its cells are trimmed.
func fromHeader(name string, header []string) error {
	if len(header) == 1 && strings.Contains(header[0], ";") {
		return finding.Refuse("the cells of %s are parted by semicolons: save it with commas between the cells (CSV, comma separated, UTF-8)", name)
	}
	for i, h := range header {
		header[i] = strings.TrimSpace(h)
		if slices.Contains(FromColumns, header[i]) || header[i] == "fingerprint" {
			continue
		}
		if near := nearest.Of(header[i], FromColumns); near != "" {
			return finding.Refuse("%s:1: there is no column %s: did you mean %s?", name, header[i], near)
		}
		return finding.Refuse("%s:1: there is no column %s: the first line is %s", name, header[i], strings.Join(FromColumns, ","))
	}
	for _, c := range needColumns {
		if !slices.Contains(header, c) {
			return finding.Refuse("%s:1: the column %s is not there: the first line is %s", name, c, strings.Join(FromColumns, ","))
		}
	}
	return nil
}

// entryOf is a row as an entry.
func entryOf(header, cells []string, e Entry) (Entry, error) {
	if len(cells) > len(header) {
		return e, finding.Refuse("this row has %d cells, the first line has %d", len(cells), len(header))
	}
	places := map[string]*string{
		"person": &e.Person, "procedure": &e.Procedure, "act": &e.Act, "by": &e.By, "on": &e.On, "language": &e.Language, "score": &e.Score, "note": &e.Note,
	}
	for i, cell := range cells {
		cell = strings.TrimSpace(cell)
		switch place := places[header[i]]; {
		case cell == "":
		case place != nil:
			*place = cell
		case header[i] == "fingerprint":
			return e, finding.Refuse("a fingerprint stands here: leave it empty, the program writes what stood on the day")
		default:
			day, ok := model.ParseDate(cell)
			if !ok {
				return e, finding.Refuse("%q is not a day of the calendar: write it as 2026-03-02", cell)
			}
			if e.Date.Before(day) {
				return e, finding.Refuse("%s lies ahead: today is %s", day, e.Date)
			}
			e.Date = day
		}
	}
	return e, nil
}
