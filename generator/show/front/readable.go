package front

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"sync"

	"baybinder/generator/base/parallel"
	"baybinder/generator/derive/readability"
	"baybinder/generator/language"
	"baybinder/generator/language/shape"
	"baybinder/generator/language/words"
	"baybinder/generator/model"
	"baybinder/generator/show/page"
	"baybinder/generator/trade/working"
)

// hardest is how many procedures of a language are listed.
const hardest = 50

// Readable is how hard the steps of the procedures in one language are to
// read.
type Readable struct {
	*words.Readable
	Language string // its own name
	Code     string
	Figure   string // what the figure is, its bands and its source
	Rows     []ReadableRow
	More     string // says that there are more; "" where these are all
}

// ReadableRow is one procedure, or its translation.
type ReadableRow struct {
	Procedure page.Link
	Ease      string
	Rough     bool      // Ease says why there is no figure
	Longest   string    // words
	Step      page.Link // of the longest sentence
	Words     string
}

// Counted is one procedure in one language, counted.
type Counted struct {
	Procedure page.Link
	Step      page.Link // of the longest sentence
	Count     readability.Count
	Ease      float64
	Known     bool
}

// readText is that, as it is read in its language.
type readText struct {
	Counted
	tag    string
	speaks *shape.Language
}

// counted counts the steps of every procedure that people work by, the
// translations by themselves: a list for each language, the shop's first.
func (s *Pages) counted() [][]Counted {
	out := [][]Counted{countedIn(s, s.Shown)}
	for _, tag := range s.Manual.Shop.Also {
		in := s.In(tag)
		out = append(out, countedIn(in, in.Translated()))
	}
	return out
}

func countedIn(s *Pages, procedures []*model.Procedure) []Counted {
	texts := make([]Counted, len(procedures))
	readers := sync.Pool{New: func() any { return readability.NewReader(s.Language()) }}
	parallel.Each(len(procedures), func(i int) {
		if procedures[i].Status == "retired" {
			return
		}
		reader := readers.Get().(*readability.Reader)
		texts[i] = s.readText(reader, procedures[i])
		readers.Put(reader)
	})
	return slices.DeleteFunc(texts, func(t Counted) bool { return t.Count.Words == 0 })
}

// readables are the tables of what was counted.
func (s *Pages) readables() []Readable {
	w := &s.Speaks.Readable
	out := readableIn(s.Language(), s.Survey.Counted[0], w)
	for i, tag := range s.Manual.Shop.Also {
		out = append(out, readableIn(tag, s.Survey.Counted[i+1], w)...)
	}
	return out
}

// readableIn is the table of one language; none where nothing is to be read.
func readableIn(tag string, counted []Counted, w *words.Readable) []Readable {
	if len(counted) == 0 {
		return nil
	}
	var texts []readText
	for _, c := range counted {
		texts = append(texts, readText{c, tag, page.Speaking(tag)})
	}
	slices.SortStableFunc(texts, harder)
	v := Readable{Readable: w, Language: language.NameOf(tag), Code: tag, Figure: w.Figure(codeOf(tag))}
	if len(texts) > hardest {
		v.More = fmt.Sprintf(w.More, hardest, len(texts))
		texts = texts[:hardest]
	}
	for i := range texts {
		v.Rows = append(v.Rows, texts[i].row(w))
	}
	return []Readable{v}
}

// harder sorts those with a figure before those without, then by it, then by
// the longest sentence.
func harder(a, b readText) int {
	switch {
	case a.Known != b.Known && a.Known:
		return -1
	case a.Known != b.Known:
		return 1
	}
	return cmp.Or(cmp.Compare(a.Ease, b.Ease), cmp.Compare(b.Count.Longest, a.Count.Longest))
}

// readText counts what the steps tell to do: the texts that the advice on
// sentences reads. Reasons are left out.
func (s *Pages) readText(reader *readability.Reader, p *model.Procedure) Counted {
	t := Counted{Procedure: s.Link("", p)}
	t.Procedure.Name = page.Unmarked(t.Procedure.Name) // a title that nobody has translated
	text, ends := s.instructions(p.Steps)
	begin := 0
	for i, st := range p.Steps {
		c := reader.Read(text[begin:ends[i]])
		begin = ends[i]
		if c.Longest > t.Count.Longest {
			t.Step = page.Link{Name: st.Number, Address: t.Procedure.Address + "#" + page.Anchor(st)}
		}
		t.Count.Add(c)
	}
	if t.Count.Words >= readability.Enough {
		t.Ease, t.Known = readability.Ease(t.Count, s.Language())
	}
	return t
}

// instructions is what steps tell to do, in words alone, and where each of them
// ends in it.
func (s *Pages) instructions(steps []*model.Step) (text string, ends []int) {
	room := make([]byte, 0, 128*len(steps))
	ends = make([]int, len(steps))
	for i, st := range steps {
		blocks := s.BlocksOf(st)
		for k := range blocks {
			if b := &blocks[k]; b.Instructs() {
				room = s.plain(room, b)
			}
		}
		ends[i] = len(room)
	}
	return string(room), ends
}

func (t *readText) row(w *words.Readable) ReadableRow {
	to := t.Procedure
	row := ReadableRow{Procedure: to, Longest: t.counted(to.Name, t.Count.Longest), Words: t.counted(to.Name, t.Count.Words), Rough: !t.Known, Step: t.Step}
	switch grade, graded := readability.Grade(t.Count, t.tag); {
	case t.Known && graded:
		row.Ease = t.worked(to.Name, fmt.Sprintf(w.EaseGrade, math.Round(t.Ease), max(0, math.Round(grade))))
	case t.Known:
		row.Ease = t.worked(to.Name, fmt.Sprintf("%.0f", math.Round(t.Ease)))
	case t.Count.Words < readability.Enough:
		row.Ease = w.TooShort
	default:
		row.Ease = w.NoFormula
	}
	return row
}

// worked is a figure with its formula.
func (t *readText) worked(name, text string) string {
	c, w := t.Count, &t.speaks.Worked.Sums
	by := func(f *shape.Formula) string {
		sign := func(x float64) string {
			if x < 0 {
				return " − " + inFull(-x)
			}
			return " + " + inFull(x)
		}
		return fmt.Sprintf("%s%s · %d/%d%s · %d/%d", inFull(f.Base), sign(f.Sentence), c.Words, c.Sentences, sign(f.Word), c.Syllables, c.Spoken)
	}
	speaks := language.Known(t.tag)
	explained := working.Working{
		Formula: w.Ease, Put: by(speaks.Ease), Result: inFull(math.Round(t.Ease)), Source: w.EaseSource,
		Terms: []working.Term{{Sign: "a", Words: w.Sentence, Value: inFull(speaks.Ease.Sentence)}, {Sign: "b", Words: w.Word, Value: inFull(speaks.Ease.Word)}},
	}
	if grade, graded := readability.Grade(c, t.tag); graded {
		explained.Assumes = []string{w.Grade + " = " + by(speaks.Grade) + " = " + inFull(max(0, math.Round(grade)))}
	}
	return page.Worked(text, page.Computed{Title: fmt.Sprintf(w.How, name+": "+text), Working: explained.With(language.Marker(t.tag))})
}

// counted is a number of words.
func (t *readText) counted(name string, n int) string {
	c, w := t.Count, &t.speaks.Worked.Sums
	put := fmt.Sprintf("%d, %d", c.Longest, c.Words)
	return page.Worked(strconv.Itoa(n), page.Computed{Title: fmt.Sprintf(w.How, name+": "+put), Working: working.Working{
		Formula: w.Longest, Put: put, Result: put, Source: w.Page,
	}})
}

// inFull is a number as it is, with a minus sign.
func inFull(x float64) string {
	return strings.Replace(strconv.FormatFloat(x, 'f', -1, 64), "-", "−", 1)
}

// plain adds the words of a block as the page shows them, without markup, on
// lines of their own. A text in code is quoted: it is one word to the count. A
// list's items and the blocks in it end a line.
func (s *Pages) plain(text []byte, b *model.Block) []byte {
	for r := range b.Runs() {
		switch {
		case r.Link != nil:
			text = s.plainLink(text, r.Link)
		case !r.Mark:
			text = append(text, strings.ReplaceAll(r.Words(), "\n", " ")...)
		default:
			text = append(text, inPlace[r.Name()]...)
		}
	}
	return append(text, '\n')
}

// inPlace is what stands for a mark in words alone.
var inPlace = map[string]string{"code": "`", "/code": "`", "/li": "\n", "/p": "\n", "/pre": "\n", "ul": "\n", "br": "\n"}

func (s *Pages) plainLink(text []byte, l *model.Link) []byte {
	switch {
	case l.Kind == model.PictureLink:
	case l.Text != "":
		return append(text, l.Text...)
	case !stopped(text): // behind a full stop it is a note of the page's
		return append(text, s.RegisterWords(l)...)
	}
	return text
}

// stopped says that a text ends with a sentence.
func stopped(text []byte) bool {
	for i := len(text) - 1; i >= 0; i-- {
		if text[i] != ' ' {
			return strings.IndexByte(".!?", text[i]) >= 0
		}
	}
	return false
}

// codeOf is the code of the language whose words those of a tag are; the tag
// itself where the program does not speak it.
func codeOf(tag string) string {
	if l := language.Known(tag); l != nil {
		return l.Code
	}
	return tag
}
