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

// readText is one procedure in one language, counted.
type readText struct {
	site      *Pages // as it is read in that language
	procedure *model.Procedure
	count     readability.Count
	longest   *model.Step // nil where there is no word
	ease      float64
	known     bool
}

// readables count the steps of every procedure that people work by, the
// translations by themselves: a table for each language, the shop's first.
func (s *Pages) readables() []Readable {
	w := &s.Speaks.Readable
	out := readableIn(s, s.Shown, w)
	for _, tag := range s.Manual.Shop.Also {
		in := s.In(tag)
		out = append(out, readableIn(in, in.Translated(), w)...)
	}
	return out
}

// readableIn is the table of one language; none where nothing is to be read.
func readableIn(s *Pages, procedures []*model.Procedure, w *words.Readable) []Readable {
	texts := make([]readText, len(procedures))
	readers := sync.Pool{New: func() any { return readability.NewReader(s.Language()) }}
	parallel.Each(len(procedures), func(i int) {
		reader := readers.Get().(*readability.Reader)
		texts[i] = s.readText(reader, procedures[i])
		readers.Put(reader)
	})
	texts = slices.DeleteFunc(texts, func(t readText) bool { return t.count.Words == 0 || t.procedure.Status == "retired" })
	if len(texts) == 0 {
		return nil
	}
	slices.SortStableFunc(texts, harder)
	v := Readable{Readable: w, Language: language.NameOf(s.Language()), Code: s.Language(), Figure: w.Figure(codeOf(s.Language()))}
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
	case a.known != b.known && a.known:
		return -1
	case a.known != b.known:
		return 1
	}
	return cmp.Or(cmp.Compare(a.ease, b.ease), cmp.Compare(b.count.Longest, a.count.Longest))
}

// readText counts what the steps tell to do: the texts that the advice on
// sentences reads. Reasons are left out.
func (s *Pages) readText(reader *readability.Reader, p *model.Procedure) readText {
	t := readText{site: s, procedure: p}
	var text []byte
	for _, st := range p.Steps {
		blocks := s.BlocksOf(st)
		text = text[:0]
		for i := range blocks {
			if b := &blocks[i]; b.Instructs() {
				text = s.plain(text, b)
			}
		}
		c := reader.Read(string(text))
		if c.Longest > t.count.Longest {
			t.longest = st
		}
		t.count.Add(c)
	}
	if t.count.Words >= readability.Enough {
		t.ease, t.known = readability.Ease(t.count, s.Language())
	}
	return t
}

func (t *readText) row(w *words.Readable) ReadableRow {
	to := t.site.Link("", t.procedure)
	to.Name = page.Unmarked(to.Name) // a title that nobody has translated
	row := ReadableRow{
		Procedure: to, Longest: t.counted(to.Name, t.count.Longest), Words: t.counted(to.Name, t.count.Words), Rough: !t.known,
		Step: page.Link{Name: t.longest.Number, Address: to.Address + "#" + page.Anchor(t.longest)},
	}
	switch grade, graded := readability.Grade(t.count, t.site.Language()); {
	case t.known && graded:
		row.Ease = t.worked(to.Name, fmt.Sprintf(w.EaseGrade, math.Round(t.ease), max(0, math.Round(grade))))
	case t.known:
		row.Ease = t.worked(to.Name, fmt.Sprintf("%.0f", math.Round(t.ease)))
	case t.count.Words < readability.Enough:
		row.Ease = w.TooShort
	default:
		row.Ease = w.NoFormula
	}
	return row
}

// worked is a figure with its formula.
func (t *readText) worked(name, text string) string {
	c, w := t.count, &t.site.Speaks.Worked.Sums
	by := func(f *shape.Formula) string {
		sign := func(x float64) string {
			if x < 0 {
				return " − " + inFull(-x)
			}
			return " + " + inFull(x)
		}
		return fmt.Sprintf("%s%s · %d/%d%s · %d/%d", inFull(f.Base), sign(f.Sentence), c.Words, c.Sentences, sign(f.Word), c.Syllables, c.Spoken)
	}
	speaks := language.Known(t.site.Language())
	explained := working.Working{
		Formula: w.Ease, Put: by(speaks.Ease), Result: inFull(math.Round(t.ease)), Source: w.EaseSource,
		Terms: []working.Term{{Sign: "a", Words: w.Sentence, Value: inFull(speaks.Ease.Sentence)}, {Sign: "b", Words: w.Word, Value: inFull(speaks.Ease.Word)}},
	}
	if grade, graded := readability.Grade(c, t.site.Language()); graded {
		explained.Assumes = []string{w.Grade + " = " + by(speaks.Grade) + " = " + inFull(max(0, math.Round(grade)))}
	}
	return page.Worked(text, page.Computed{Title: fmt.Sprintf(w.How, name+": "+text), Working: explained})
}

// counted is a number of words.
func (t *readText) counted(name string, n int) string {
	c, w := t.count, &t.site.Speaks.Worked.Sums
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
