package generator_test

import (
	"go/ast"
	"go/token"
	"maps"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/check"
)

// ruleCodes are the codes of the rules' literals in a file. In the walk a rule
// has a short name.
func ruleCodes(f *ast.File) (codes []string) {
	ast.Inspect(f, func(n ast.Node) bool {
		lit, is := n.(*ast.CompositeLit)
		if !is || !typeNamed(lit.Type, "Rule", "rule") {
			return true
		}
		for _, e := range lit.Elts {
			if pair, is := e.(*ast.KeyValueExpr); is && named(pair.Key) == "Code" {
				if code, is := pair.Value.(*ast.BasicLit); is {
					codes = append(codes, strings.Trim(code.Value, `"`))
				}
			}
		}
		return true
	})
	return codes
}

func typeNamed(t ast.Expr, names ...string) bool {
	if s, is := t.(*ast.SelectorExpr); is {
		return named(s.X) == "finding" && slices.Contains(names, s.Sel.Name)
	}
	return slices.Contains(names, named(t))
}

func named(e ast.Expr) string {
	if id, is := e.(*ast.Ident); is {
		return id.Name
	}
	return ""
}

// Each literal of a rule is in the catalogue, each entry of the catalogue is a
// literal, and there is one of each code. That a case finds it is another test,
// in check.
func TestCatalogueHoldsEveryRule(t *testing.T) {
	t.Parallel()
	where := map[string]string{}
	for dir, files := range goFiles(t) {
		for _, f := range files {
			for _, code := range ruleCodes(f) {
				if there, twice := where[code]; twice {
					t.Errorf("%s has a literal in %s and in %s", code, there, dir)
				}
				if where[code] = dir; check.Named(code) == nil {
					t.Errorf("%s has the rule %s, and the catalogue does not: write it into check/catalogue.go, check/families.go or check/numbers/judge.go", dir, code)
				}
			}
		}
	}
	for _, r := range check.Catalogue() {
		if where[r.Code] == "" {
			t.Errorf("%s is in the catalogue, and no literal of a rule has it", r.Code)
		}
	}
}

// A finding is made by its rule: nothing else can give it a code.
func TestCatalogueMakesEveryFinding(t *testing.T) {
	t.Parallel()
	for dir, files := range goFiles(t) {
		if dir == "generator/base/finding" {
			continue
		}
		for _, f := range files {
			ast.Inspect(f, func(n ast.Node) bool {
				switch n := n.(type) {
				case *ast.CompositeLit:
					if typeNamed(n.Type, "Finding") && len(n.Elts) > 0 {
						t.Errorf("%s makes a finding by itself: write rule.At(…)", dir)
					}
				case *ast.AssignStmt:
					for _, to := range n.Lhs {
						s, is := to.(*ast.SelectorExpr)
						if is && imports(f, "baybinder/generator/base/finding") && (s.Sel.Name == "Rule" || s.Sel.Name == "Code") && n.Tok == token.ASSIGN {
							t.Errorf("%s writes to a %s: a finding is of the rule that made it", dir, s.Sel.Name)
						}
					}
				}
				return true
			})
		}
	}
}

// A rule is named by its variable, never by a text of the asker's own: a slip in
// one would match nothing. Codes of one word mean other things too, and are left
// out. The audit of a person's jobs, which stands below the rules, prints two of
// them as its reasons.
func TestCatalogueCodesAreWrittenOnce(t *testing.T) {
	t.Parallel()
	for dir, files := range goFiles(t) {
		for _, f := range files {
			count := map[string]int{}
			ast.Inspect(f, func(n ast.Node) bool {
				if lit, is := n.(*ast.BasicLit); is && lit.Kind == token.STRING {
					count[strings.Trim(lit.Value, "\"`")]++
				}
				return true
			})
			for _, code := range ruleCodes(f) {
				count[code]--
			}
			for _, text := range slices.Sorted(maps.Keys(count)) {
				if strings.Contains(text, "-") && count[text] > 0 && check.Named(text) != nil && dir != "generator/derive/training" {
					t.Errorf("%s names the rule %s by its code: compare with the rule", dir, text)
				}
			}
		}
	}
}
