package record

import (
	"encoding/json"
	"errors"
	"io"
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/read/syntax"
)

// maxDepth is how deep a record may nest. The form needs five.
const maxDepth = 40

// places finds every value of a JSON text: by its JSON Pointer (RFC 6901),
// without escapes, for the form's keys need none. A field's key is under the
// value's pointer with "#" behind it.
type places struct {
	file  *position.File
	d     *json.Decoder
	at    map[string]position.Pos
	found []finding.Finding
}

// find walks a text that parses. Its findings are fields that are written
// twice, and values that nest without end.
func find(f *position.File) *places {
	p := &places{file: f, d: json.NewDecoder(strings.NewReader(f.Text)), at: map[string]position.Pos{}}
	p.d.UseNumber()
	p.value("", 0)
	return p
}

// next is the next token and its place. The decoder tells where a token ends;
// it begins behind the white space and the sign that part it from the last.
func (p *places) next() (json.Token, position.Pos, bool) {
	from := int(p.d.InputOffset())
	t, err := p.d.Token()
	if err != nil {
		return nil, position.Pos{}, false
	}
	to := int(p.d.InputOffset())
	for from < to && strings.IndexByte(" \t\r\n,:", p.file.Text[from]) >= 0 {
		from++
	}
	return t, p.file.At(from, to), true
}

func (p *places) value(pointer string, depth int) bool {
	t, at, ok := p.next()
	if !ok {
		return false
	}
	p.at[pointer] = at
	if depth > maxDepth {
		p.found = append(p.found, syntax.Syntax.At(at, "this nests deeper than %d levels", maxDepth).WithMend("it is no record; take the file out of records/"))
		return false
	}
	switch t {
	case json.Delim('{'):
		ok = p.fields(pointer, depth)
	case json.Delim('['):
		for i := 0; ok && p.d.More(); i++ {
			ok = p.value(pointer+"/"+strconv.Itoa(i), depth+1)
		}
	default:
		return true
	}
	if ok {
		_, _, ok = p.next() // the bracket that closes it
	}
	return ok
}

func (p *places) fields(pointer string, depth int) bool {
	for p.d.More() {
		key, at, ok := p.next()
		name, is := key.(string)
		if !ok || !is {
			return false
		}
		here := pointer + "/" + name
		if first, twice := p.at[here+"#"]; twice {
			p.found = append(p.found, syntax.DuplicateID.At(at, "%s is written twice here", name).
				WithMend("keep the one that is so").See(first, "the first is here"))
		}
		p.at[here+"#"] = at
		if !p.value(here, depth+1) {
			return false
		}
	}
	return true
}

// broken is the finding for a text that is not JSON; ok where it is.
func broken(f *position.File) (found finding.Finding, ok bool) {
	d := json.NewDecoder(strings.NewReader(f.Text))
	var any json.RawMessage
	err := d.Decode(&any)
	if err == nil {
		if _, err = d.Token(); errors.Is(err, io.EOF) {
			return finding.Finding{}, true
		}
		end := int(d.InputOffset())
		end += len(f.Text[end:]) - len(strings.TrimLeft(f.Text[end:], " \t\r\n"))
		return syntax.Syntax.At(f.At(end, end+1), "something stands behind the record").
			WithMend("keep one record in a file, and nothing behind it"), false
	}
	var bad *json.SyntaxError
	if errors.As(err, &bad) {
		at := max(int(bad.Offset)-1, 0)
		return syntax.Syntax.At(f.At(at, at+1), "this is not JSON: %s", strings.TrimPrefix(bad.Error(), "json: ")).
			WithMend("save the record again from the page, or put the file back as it was saved"), false
	}
	return syntax.Syntax.At(f.At(len(f.Text), len(f.Text)), "the record breaks off here: the file was not saved whole").
		WithMend("save the record again from the page; if the job is gone there, keep what is readable on paper"), false
}
