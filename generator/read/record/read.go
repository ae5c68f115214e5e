package record

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"time"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/santhosh-tekuri/jsonschema/v6/kind"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/syntax"
)

// version is the form that is read.
const version = "1"

// Reader judges records by the published schema.
type Reader struct {
	schema *jsonschema.Schema
	fields []string // every field of the form, for the nearest name
}

// NewReader prepares the schema, which takes about a millisecond.
func NewReader() *Reader {
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(Schema))
	if err != nil {
		panic("record: the schema is no JSON: " + err.Error())
	}
	c := jsonschema.NewCompiler()
	c.AssertFormat() // a time that is no time is told
	const name = "record.schema.json"
	if err := c.AddResource(name, doc); err != nil {
		panic("record: the schema: " + err.Error())
	}
	r := &Reader{schema: c.MustCompile(name)}
	gather(doc, &r.fields)
	slices.Sort(r.fields)
	r.fields = slices.Compact(r.fields)
	return r
}

// gather lists the names of a schema's properties.
func gather(doc any, out *[]string) {
	switch v := doc.(type) {
	case map[string]any:
		if p, is := v["properties"].(map[string]any); is {
			for name := range p {
				*out = append(*out, name)
			}
		}
		for _, x := range v {
			gather(x, out)
		}
	case []any:
		for _, x := range v {
			gather(x, out)
		}
	}
}

// Read reads one file. The job is nil where the file is not of the form; then
// there is a finding.
func (r *Reader) Read(f *position.File) (*model.Job, []finding.Finding) {
	if found, ok := broken(f); !ok {
		return nil, []finding.Finding{found}
	}
	p := find(f)
	if len(p.found) > 0 {
		return nil, p.found
	}
	if found, is := p.otherForm(); is {
		return nil, []finding.Finding{found}
	}
	doc, err := jsonschema.UnmarshalJSON(strings.NewReader(f.Text))
	if err != nil {
		return nil, []finding.Finding{syntax.Syntax.At(f.At(0, 0), "this is not JSON: %v", err)}
	}
	if err := r.schema.Validate(doc); err != nil {
		var bad *jsonschema.ValidationError
		if !errors.As(err, &bad) {
			return nil, []finding.Finding{decode.WrongType.At(f.At(0, 0), "this record cannot be judged: %v", err)}
		}
		return nil, r.findings(p, bad)
	}
	if found := p.untimely(); len(found) > 0 {
		return nil, found
	}
	return p.job()
}

// timed are the fields of a record that hold a time.
var timed = strings.Fields("started saved at from until latest")

// dated is how a time begins: who hands over stands in a field called from too.
var dated = regexp.MustCompile(`^[0-9]{4}-[0-9]{2}-[0-9]{2}[Tt]`)

// untimely are the times of years that no shop works in: a page whose clock was
// never set, or a slip.
func (p *places) untimely() []finding.Finding {
	var found []finding.Finding
	for _, pointer := range slices.Sorted(maps.Keys(p.at)) {
		text, is := strings.CutPrefix(p.at[pointer].Text(), `"`)
		if !is || !dated.MatchString(text) || !slices.Contains(timed, pointer[strings.LastIndex(pointer, "/")+1:]) {
			continue
		}
		if _, ok := model.ParseDate(text[:len(time.DateOnly)]); !ok {
			found = append(found, decode.WrongType.At(p.at[pointer], "%s is %s; it must be %s", whose(pointer), short(p.at[pointer].Text()), aTime("date-time")).
				WithMend("put the file back as the page saved it"))
		}
	}
	return found
}

// aTime is how a time is written.
func aTime(format string) finding.Words {
	return finding.Say("a %s, as 2026-05-04T10:42:00+02:00", format)
}

// otherForm says that a record is of another form than ours: what else
// differs in it says nothing.
func (p *places) otherForm() (finding.Finding, bool) {
	at, has := p.at["/record"]
	if !has || at.Text() == version {
		return finding.Finding{}, false
	}
	return decode.WrongType.At(at, "this record is of form %s; this program reads form %s", at.Text(), version).
		WithMend("use the program of the site that the page came from, or a newer one"), true
}

// findings are the places where a record is not of the form, one a leaf of the
// schema's complaint.
func (r *Reader) findings(p *places, bad *jsonschema.ValidationError) []finding.Finding {
	if len(bad.Causes) == 0 {
		return r.leaf(p, bad)
	}
	var list []finding.Finding
	for _, cause := range bad.Causes {
		list = append(list, r.findings(p, cause)...)
	}
	return list
}

func (r *Reader) leaf(p *places, bad *jsonschema.ValidationError) []finding.Finding {
	pointer := ""
	for _, part := range bad.InstanceLocation {
		pointer += "/" + part
	}
	at := p.at[pointer]
	var list []finding.Finding
	switch k := bad.ErrorKind.(type) {
	case *kind.Required:
		for _, name := range k.Missing {
			list = append(list, decode.MissingField.At(p.file.At(at.Start, at.Start+1), "%s has no field %s", whose(pointer), name).
				WithMend("put the file back as the page saved it: the page writes every field"))
		}
	case *kind.AdditionalProperties:
		for _, name := range k.Properties {
			found := decode.UnknownField.At(p.at[pointer+"/"+name+"#"], "a record has no field %s here", name)
			if near := nearest.Of(name, r.fields); near != "" && near != name {
				found = found.WithMend("did you mean %s?", near)
			}
			list = append(list, found)
		}
	default:
		list = append(list, decode.WrongType.At(at, "%s is %s; it must be %s", whose(pointer), short(at.Text()), wanted(bad.ErrorKind)).
			WithMend("put the file back as the page saved it"))
	}
	return list
}

// whose names a value by its pointer: "steps 3, at" of "/steps/2/at".
func whose(pointer string) finding.Words {
	if pointer == "" {
		return finding.Say("the record")
	}
	var out strings.Builder
	for i, part := range strings.Split(pointer[1:], "/") {
		n, err := strconv.Atoi(part)
		switch {
		case err == nil:
			fmt.Fprintf(&out, " %d", n+1)
		case i > 0:
			out.WriteString(", " + part)
		default:
			out.WriteString(part)
		}
	}
	return finding.Say("%s", out.String())
}

// short is a value as a message shows it.
func short(text string) finding.Words {
	if r := []rune(text); len(r) > 40 {
		return finding.Say("%s …", string(r[:40]))
	}
	if text == "" {
		return finding.Say("nothing")
	}
	return finding.Say("%s", text)
}

func wanted(k jsonschema.ErrorKind) finding.Words {
	switch k := k.(type) {
	case *kind.Type:
		return finding.Say("of type %s", finding.ListOf(" or ", k.Want))
	case *kind.Enum:
		var words []string
		for _, w := range k.Want {
			words = append(words, fmt.Sprint(w))
		}
		return finding.Say("one of: %s", strings.Join(words, ", "))
	case *kind.Format:
		return aTime(k.Want)
	case *kind.Pattern:
		return finding.Say("of the pattern %s", k.Want)
	case *kind.Minimum:
		return finding.Say("at least %s", k.Want.RatString())
	}
	return finding.Say("as the form has it")
}

// job is the typed record of a text that the schema takes.
func (p *places) job() (*model.Job, []finding.Finding) {
	name := strings.TrimSuffix(strings.TrimPrefix(p.file.Path, "records/"), ".json")
	j := &model.Job{File: p.file, Name: name}
	if err := json.Unmarshal([]byte(p.file.Text), j); err != nil { // a number that no float64 holds, a leap second
		at := p.ending(err)
		return nil, []finding.Finding{decode.WrongType.At(at, "%s is more than this program can hold", short(at.Text())).
			WithMend("put the file back as the page saved it")}
	}
	j.ProcedureAt, j.WorkerAt = p.at["/procedure"], p.at["/worker"]
	j.Unit.At, j.Unit.SerialAt = p.at["/unit#"], p.at["/unit/serial"]
	for i := range j.Unit.Options {
		j.Unit.OptionsAt = append(j.Unit.OptionsAt, p.at["/unit/options/"+strconv.Itoa(i)])
	}
	for i := range j.Steps {
		j.Steps[i].Place = p.at[fmt.Sprintf("/steps/%d/step", i)]
	}
	for i := range j.Holds {
		h := &j.Holds[i]
		h.Place = p.at[fmt.Sprintf("/holds/%d/hold", i)]
		for v := range h.Values {
			h.ValuesAt = append(h.ValuesAt, p.at[fmt.Sprintf("/holds/%d/values/%d/value", i, v)])
		}
	}
	return j, nil
}

// ending is the value that could not be held: the error tells where it ends.
func (p *places) ending(err error) position.Pos {
	var bad *json.UnmarshalTypeError
	if errors.As(err, &bad) {
		for pointer, at := range p.at {
			if at.End == int(bad.Offset) && !strings.HasSuffix(pointer, "#") {
				return at
			}
		}
	}
	return p.file.At(0, 0)
}
