package syntax

import (
	"errors"
	"regexp"
	"strings"

	"github.com/goccy/go-yaml"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
)

// failed turns the library's error into a finding in our words.
func (y *yamlReader) failed(err error) finding.Finding {
	var bad *yaml.SyntaxError
	if !errors.As(err, &bad) || bad.Token == nil {
		return Syntax.At(y.file.At(y.file.Offset(y.line+1, 1), 0), "this file cannot be read from here on")
	}
	at := y.pos(bad.Token)
	w := inOurWords(bad.Message)
	if tab := y.tabBefore(at.Start); tab >= 0 {
		return tabIndent.at(y.file.At(tab, tab+1))
	}
	switch {
	case blockHeader.MatchString(at.Text()):
		return (&words{finding.Say("a text that starts with %s", at.Text()[:1]), finding.Say("put the text in quotes")}).at(at)
	case w == misplaced && y.tooFarIn(at):
		return deeper.at(at)
	case w == notEnded && pastedSpace.MatchString(at.Text()):
		return pasted.at(at)
	case w == notEnded && noSpaceColon.MatchString(at.Text()):
		return glued.at(at)
	case w == openMap:
		return w.at(y.opened(at))
	case w == secondColon:
		return y.colonAfter(at)
	case w == noEscape:
		at = y.file.At(strings.LastIndexByte(y.file.Text[:at.Start], '\\'), at.Start)
	}
	return w.at(at)
}

// noSpaceColon is a key with its text set against the colon.
var noSpaceColon = regexp.MustCompile(`^[A-Za-z0-9-]+:[^\s/]`)

// blockHeader is a text that was taken for the sign of a text on the lines below.
var blockHeader = regexp.MustCompile(`^[|>]\s*[^\s#]`)

// pastedSpace is a key with a space behind it that is none to YAML.
var pastedSpace = regexp.MustCompile(`^[A-Za-z0-9-]+:[\x{00A0}\x{2007}\x{202F}\x{2003}]`)

// tooFarIn says that a line begins further in than the key above it, which holds
// a text already: nothing can stand under that.
func (y *yamlReader) tooFarIn(at position.Pos) bool {
	line, col := at.LineCol()
	for line--; line > y.line; line-- {
		above := y.file.Line(line)
		words := strings.TrimLeft(above, " ")
		if words == "" || words[0] == '#' {
			continue
		}
		return len(above)-len(words) < col-1
	}
	return false
}

// opened is the bracket that the map at a place was opened with, where that is
// in a line above: the last one before the place that nothing closes.
func (y *yamlReader) opened(at position.Pos) position.Pos {
	depth := 0
	for i := at.Start - 1; i >= y.file.Offset(y.line+1, 1); i-- {
		switch y.file.Text[i] {
		case '}':
			depth++
		case '{':
			if depth--; depth >= 0 {
				continue
			}
			if line, _ := at.LineCol(); y.file.Offset(line, 1) > i {
				return y.file.At(i, i+1)
			}
			return at
		}
	}
	return at
}

// colonAfter is the finding for a colon that stands in the text at a place.
func (y *yamlReader) colonAfter(at position.Pos) finding.Finding {
	text := y.file.Text[at.Start:]
	i := strings.Index(strings.ReplaceAll(text, "\n", " ")+" ", ": ")
	if i < 0 {
		return secondColon.at(at)
	}
	colon := y.file.At(at.Start+i, at.Start+i+1)
	if strings.Contains(text[:i], "\n") {
		return goesOn.at(colon)
	}
	return secondColon.at(colon)
}

// words are a fault and its mend as a person at a desk would say them.
type words struct{ say, mend finding.Words }

func (w *words) at(at position.Pos) finding.Finding {
	return Syntax.At(at, "%s", w.say).WithMend("%s", w.mend)
}

var quoteMend = finding.Say("put the text in quotes where it holds a colon and a space, a space and #, a comma inside { } or [ ], or starts with a sign")

var (
	secondColon = &words{finding.Say("a second colon in this line"), finding.Say("write a comma between two fields; %s", quoteMend)}
	goesOn      = &words{finding.Say("a colon in a line that continues the text above it"), finding.Say("indent it like the fields around it, or put the text in quotes")}
	tabIndent   = &words{finding.Say("a tab where spaces belong"), finding.Say("indent with spaces")}
	noEscape    = &words{finding.Say(`a \ that begins no known sign`), finding.Say("write the text in single quotes: '…'")}
	keptSign    = &words{finding.Say("a text that starts with a sign that YAML keeps for itself"), finding.Say("put the text in quotes")}
	deeper      = &words{finding.Say("this line stands further in than the one above it, which takes nothing under it"), finding.Say("begin it in the column of the keys around it; where # was taken away, take the space behind it away too")}
	notEnded    = &words{finding.Say("a key where the text before it has not ended"), finding.Say("put one key a line, with the same indent")}
	glued       = &words{finding.Say("a colon without a space after it"), finding.Say("write a space after the colon")}
	pasted      = &words{finding.Say("a space after the colon that is none: it was pasted from a word processor"), finding.Say("write a plain space after the colon")}
	misplaced   = &words{finding.Say("something that does not belong here"), finding.Say("look at the indent of this line and the one above; %s", quoteMend)}
	openMap     = &words{finding.Say("a map in { } that is not whole"), finding.Say("write key: value pairs with commas between, and } at the end; %s", quoteMend)}
	openList    = &words{finding.Say("a list in [ ] that is not whole"), finding.Say("write commas between the entries, and ] at the end; %s", quoteMend)}
)

// inOurWords says the library's more frequent errors; what it does not know is
// passed on as it is.
func inOurWords(message string) *words {
	for _, known := range []struct {
		has   string
		words *words
	}{
		{"mapping value is not allowed", secondColon},
		{"sequence end token", openList},
		{"']' must be specified", openList},
		{"flow map", openMap},
		{"'}' must be specified", openMap},
		{"could not find '", &words{finding.Say("a bracket that nothing opens"), finding.Say("take it out, or write the one that opens it")}},
		{"end character of", &words{finding.Say("a quoted text that is not closed"), finding.Say("write the closing quote")}},
		{"reserved character", keptSign},
		{"cannot start any token", tabIndent},
		{"unknown escape", noEscape},
		{"invalid key for this map", &words{finding.Say("a line that is no key of this map"), finding.Say("write key: value, with the indent of the lines above")}},
		{"unexpected key name", notEnded},
		{"value is not allowed", misplaced},
	} {
		if strings.Contains(message, known.has) {
			return known.words
		}
	}
	return &words{finding.Say("this cannot be read: %s", message), quoteMend}
}
