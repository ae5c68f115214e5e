package main

import (
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
)

// mutant is one change of one place of a source file: the bytes from start to
// end become text.
type mutant struct {
	file       string
	line       int
	start, end int
	was, text  string
}

// place is where it is, FILE:LINE.
func (m mutant) place() string { return m.file + ":" + strconv.Itoa(m.line) }

// swapped are the operators that are taken for each other.
var swapped = map[token.Token]token.Token{
	token.EQL: token.NEQ, token.NEQ: token.EQL,
	token.LSS: token.LEQ, token.LEQ: token.LSS, token.GTR: token.GEQ, token.GEQ: token.GTR,
	token.LAND: token.LOR, token.LOR: token.LAND,
	token.ADD: token.SUB, token.SUB: token.ADD, token.MUL: token.QUO, token.QUO: token.MUL,
}

// sites are the mutants of the package in a folder, tests and generated files
// left out, in the order of their places.
func sites(folder string) ([]mutant, error) {
	names, err := filepath.Glob(filepath.Join(folder, "*.go"))
	if err != nil {
		return nil, err
	}
	var out []mutant
	for _, name := range names {
		if strings.HasSuffix(name, "_test.go") || strings.HasSuffix(name, ".qtpl.go") {
			continue
		}
		text, err := os.ReadFile(name)
		if err != nil {
			return nil, err
		}
		list, err := sitesOf(name, text)
		if err != nil {
			return nil, err
		}
		out = append(out, list...)
	}
	return out, nil
}

// sitesOf are the mutants of one file.
func sitesOf(name string, text []byte) ([]mutant, error) {
	set := token.NewFileSet()
	file, err := parser.ParseFile(set, name, text, parser.SkipObjectResolution)
	if err != nil {
		return nil, err
	}
	var out []mutant
	add := func(from, to token.Pos, with string) {
		at, end := set.Position(from), set.Position(to)
		out = append(out, mutant{name, at.Line, at.Offset, end.Offset, string(text[at.Offset:end.Offset]), with})
	}
	ast.Inspect(file, func(n ast.Node) bool {
		switch n := n.(type) {
		case *ast.BinaryExpr:
			if to, is := swapped[n.Op]; is && !(n.Op == token.ADD && isText(n)) {
				add(n.OpPos, n.OpPos+token.Pos(len(n.Op.String())), to.String())
			}
		case *ast.IfStmt:
			add(n.Cond.Pos(), n.Cond.End(), "!("+string(text[set.Position(n.Cond.Pos()).Offset:set.Position(n.Cond.End()).Offset])+")")
		case *ast.Ident:
			if other := map[string]string{"true": "false", "false": "true"}[n.Name]; other != "" {
				add(n.Pos(), n.End(), other)
			}
		case *ast.UnaryExpr: // -1 is often a sign alone: as none or all -2 is the same
			if one, is := n.X.(*ast.BasicLit); is && n.Op == token.SUB && one.Value == "1" {
				add(n.Pos(), n.End(), "0")
				return false
			}
		case *ast.CallExpr: // and so is the number of an infinite one
			if f, is := n.Fun.(*ast.SelectorExpr); is && f.Sel.Name == "Inf" {
				add(n.Lparen+1, n.Lparen+1, "-")
				return false
			}
		case *ast.BasicLit:
			if v, err := strconv.Atoi(n.Value); n.Kind == token.INT && err == nil {
				add(n.Pos(), n.End(), strconv.Itoa(v+1))
			}
		case *ast.ExprStmt:
			if _, call := n.X.(*ast.CallExpr); call {
				add(n.Pos(), n.End(), "")
			}
		case *ast.BranchStmt:
			if n.Tok == token.CONTINUE && n.Label == nil {
				add(n.Pos(), n.End(), "break")
			}
		}
		return true
	})
	slices.SortStableFunc(out, func(a, b mutant) int { return a.start - b.start })
	return out, nil
}

// isText says that a sum joins texts: it has a text literal in it.
func isText(n ast.Expr) bool {
	found := false
	ast.Inspect(n, func(x ast.Node) bool {
		lit, is := x.(*ast.BasicLit)
		found = found || is && lit.Kind == token.STRING
		return !found
	})
	return found
}

// apply gives the text of a file with the change made.
func (m mutant) apply(text []byte) []byte {
	return slices.Concat(text[:m.start], []byte(m.text), text[m.end:])
}
