package syntax

import (
	"html"
	"io"

	"github.com/alecthomas/chroma/v2"
	chromahtml "github.com/alecthomas/chroma/v2/formatters/html"
	"github.com/alecthomas/chroma/v2/lexers"
)

// codeClasses writes highlighted code by class names: a strict content
// security policy allows no style in the page.
var codeClasses = chromahtml.New(chromahtml.WithClasses(true), chromahtml.PreventSurroundingPre(true))

// noStyle stands for the colours: the theme's styles have those of the classes.
var noStyle = chroma.MustNewStyle("none", chroma.StyleEntries{})

// faultLog reads the logs that a machine's controller or a code reader prints:
// time stamps, codes, levels, and values with units.
var faultLog = chroma.MustNewLexer(
	&chroma.Config{Name: "fault log", Aliases: []string{"fault-log", "faults"}},
	func() chroma.Rules {
		return chroma.Rules{"root": {
			{Pattern: `\d{4}-\d\d-\d\d([T ]\d\d:\d\d(:\d\d(\.\d+)?)?Z?)?|\d\d:\d\d(:\d\d(\.\d+)?)?`, Type: chroma.LiteralDate},
			{Pattern: `\b[PCBU][0-3][0-9A-F]{3}(-[0-9A-F]{2})?\b`, Type: chroma.KeywordConstant},
			{Pattern: `\b(?i:fault|error|fail(ed)?|alarm|trip(ped)?|lost)\b`, Type: chroma.GenericError},
			{Pattern: `\b(?i:warn(ing)?|low|high|late)\b`, Type: chroma.GenericStrong},
			{Pattern: `\b(?i:ok|ready|cleared|pass(ed)?)\b`, Type: chroma.GenericInserted},
			{Pattern: `0x[0-9A-Fa-f]+`, Type: chroma.LiteralNumberHex},
			{Pattern: `[-+]?\b\d+(\.\d+)?`, Type: chroma.LiteralNumber},
			{Pattern: `[A-Za-z_][\w.-]*(?==)`, Type: chroma.NameAttribute},
			{Pattern: `#.*`, Type: chroma.Comment},
			{Pattern: `\w+|\s+|.`, Type: chroma.Text},
		}}
	},
)

// writeCode writes a code block. A language that is not known, and code that a
// lexer cannot read, is shown plain.
func writeCode(w io.Writer, language, text string) {
	_, _ = io.WriteString(w, "<pre tabindex=\"0\"><code class=\"listing\">")
	if !highlight(w, language, text) {
		_, _ = io.WriteString(w, html.EscapeString(text))
	}
	_, _ = io.WriteString(w, "</code></pre>\n")
}

func highlight(w io.Writer, language, text string) bool {
	lexer := lexerFor(language)
	if lexer == nil {
		return false
	}
	tokens, err := chroma.Coalesce(lexer).Tokenise(nil, text)
	if err != nil {
		return false
	}
	return codeClasses.Format(w, noStyle, tokens) == nil
}

func lexerFor(language string) chroma.Lexer {
	switch language {
	case "":
		return nil
	case "fault-log", "faults":
		return faultLog
	}
	return lexers.Get(language)
}
