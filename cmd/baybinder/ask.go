package main

import (
	"encoding/csv"
	"slices"

	"baybinder/generator"
	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/model"
)

// asked is what the commands share that answer about one procedure.
type asked struct {
	Procedure string `arg:"" help:"The procedure's id, which is the name of its file."`
	CSV       bool   `name:"csv" help:"As CSV, with a header line."`
}

// read reads the manual and finds the procedure.
func (a *asked) read(g *globals) (*generator.Result, *model.Procedure, error) {
	r, err := generator.Check(g.options())
	if err != nil {
		return nil, nil, err
	}
	p, err := procedureNamed(r.Manual, a.Procedure)
	return r, p, err
}

func inFile(list []finding.Finding, p *model.Procedure) []finding.Finding {
	var in []finding.Finding
	for _, f := range list {
		if f.At.File == p.File {
			in = append(in, f)
		}
	}
	return in
}

// procedureNamed finds a procedure by its id, or by one that it had before.
func procedureNamed(m *model.Manual, id string) (*model.Procedure, error) {
	if p := model.ByID(m.Procedures, id); p != nil {
		return p, nil
	}
	for _, p := range slices.Backward(m.Procedures) {
		if slices.Contains(p.Was, id) {
			return p, nil
		}
	}
	if near := nearest.Of(id, model.IDs(m.Procedures)); near != "" {
		return nil, finding.Refuse("there is no procedure %s: did you mean %s?", id, near)
	}
	return nil, finding.Refuse("there is no procedure %s: an id is the name of a file in procedures/, without .md", id)
}

// table writes rows as CSV, the first of which is the header.
func (d *output) table(rows [][]string) error {
	for _, row := range rows {
		for i := range row {
			row[i] = finding.Cell(row[i])
		}
	}
	return csv.NewWriter(d.out).WriteAll(rows)
}
