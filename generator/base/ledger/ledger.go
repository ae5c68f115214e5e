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
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/rogpeppe/go-internal/lockedfile"
)

// Row is a row by its columns.
type Row map[string]string

// Append adds a row to a file, which is made with the columns where it is not
// there. Where judge is not nil it sees the rows that stand, and its error
// keeps the row out.
func Append(name string, columns []string, row Row, judge func([]Row) error) (err error) {
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
	header, rows, err := read(stands)
	if err != nil {
		return fmt.Errorf("%s: %w", filepath.Base(name), err)
	}
	if judge != nil {
		if err := judge(rows); err != nil {
			return err
		}
	}
	added, err := written(stands, header, columns, row)
	if err != nil {
		return fmt.Errorf("%s: %w", filepath.Base(name), err)
	}
	return add(f, added, int64(len(stands)))
}

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
		return fmt.Errorf("%w; and part of the row may stand at the end of the file: take its last line out (%w)", err, cut)
	}
	return fmt.Errorf("no row was added: %w", err)
}

// read parses a file; an empty one has no header.
func read(text []byte) (header []string, rows []Row, err error) {
	r := csv.NewReader(bytes.NewReader(bytes.TrimPrefix(text, []byte("\ufeff"))))
	all, err := r.ReadAll()
	if err != nil || len(all) == 0 {
		return nil, nil, err
	}
	for _, name := range all[0] {
		header = append(header, strings.TrimSpace(name))
	}
	for _, cells := range all[1:] {
		row := Row{}
		for i, cell := range cells {
			row[header[i]] = strings.TrimSpace(cell)
		}
		rows = append(rows, row)
	}
	return header, rows, nil
}

// written is what is added to a file: its header where it has none, the end of
// a last line that has none, and the row in the order of the file's columns.
func written(stands []byte, header, columns []string, row Row) ([]byte, error) {
	var out bytes.Buffer
	w := csv.NewWriter(&out)
	w.UseCRLF = bytes.Contains(stands, []byte("\r\n"))
	if n := len(stands); header != nil && stands[n-1] != '\n' {
		out.WriteString("\n")
	}
	if header == nil {
		header = columns
		if err := w.Write(header); err != nil {
			return nil, err
		}
	}
	cells := make([]string, len(header))
	for i, name := range header {
		cells[i] = strings.Join(strings.Fields(row[name]), " ") // a row is one line, so that two branches merge
	}
	for _, name := range columns {
		if row[name] != "" && !slices.Contains(header, name) {
			return nil, fmt.Errorf("it has no column %s: its first line should be %s", name, strings.Join(columns, ","))
		}
	}
	if err := w.Write(cells); err != nil {
		return nil, err
	}
	w.Flush()
	return out.Bytes(), w.Error()
}
