package syntax

import (
	"regexp"

	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/text"

	"baybinder/generator/base/position"
)

// Definition is an address that is written apart from the links which use it:
// [name]: address.
type Definition struct {
	Address string
	At      position.Pos // of the address
}

var definitionAddress = regexp.MustCompile(`^[^\n]*?\]:[ \t]*\n?[ \t]*<?`)

// Definitions are those of a procedure's body, in order.
func Definitions(f *position.File) []Definition {
	base := bodyStart(f.Text)
	src := []byte(f.Text[base:])
	if _, deep := deepBracket(src); deep {
		return nil
	}
	if _, deep := deepLine(src); deep {
		return nil
	}
	var out []Definition
	_ = ast.Walk(markdown.Parser().Parse(text.NewReader(src)), func(n ast.Node, entering bool) (ast.WalkStatus, error) {
		d, is := n.(*ast.LinkReferenceDefinition)
		if !is || !entering || d.Pos() < 0 {
			return ast.WalkContinue, nil
		}
		from := base + d.Pos()
		from += len(definitionAddress.FindString(f.Text[from:]))
		at := f.At(from, from+len(d.Destination))
		if at.Text() == string(d.Destination) {
			out = append(out, Definition{Address: resolve(at.Text()), At: at})
		}
		return ast.WalkContinue, nil
	})
	return out
}
