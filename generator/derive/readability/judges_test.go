package readability

import (
	"baybinder/generator/language"
	"encoding/json"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"baybinder/generator/base/needed"
)

// Known: SEEN.

// The judges: npm's syllable 5.0.1 and flesch 2.0.1, text-readability 1.1.1,
// the CMU Pronouncing Dictionary through syllables 2.2.0, and silabea 1.0.0
// for Spanish. A word of the dictionary that it does not know has no syllable.
const judges = `
const { pathToFileURL } = require("url");
const path = require("path");
const tools = process.argv[1];
const load = (name) => import(pathToFileURL(path.join(tools, name)));
let text = "";
process.stdin.on("data", (d) => { text += d; }).on("end", async () => {
  const ask = JSON.parse(text);
  const { syllable } = await load("syllable/index.js");
  const { flesch } = await load("flesch/index.js");
  const spoken = (await load("syllables/index.js")).default;
  const whole = (await load("text-readability/main.js")).default;
  const silabea = require(path.join(tools, "silabea"));
  console.log(JSON.stringify({
    words: ask.words.map((w) => [spoken(w), syllable(w)]),
    easy: ask.easy ? (await load("text-readability/easy_words.js")).default : [],
    spanish: ask.spanish.map((w) => silabea.getSilabas(w).numeroSilaba),
    flesch: ask.counts.map((c) => flesch({ sentence: c.Sentences, word: c.Words, syllable: c.Syllables })),
    texts: ask.texts.map((t) => [whole.fleschReadingEase(t), whole.fleschKincaidGrade(t), whole.syllableCount(t), whole.lexiconCount(t), whole.sentenceCount(t)]),
  }));
});`

type question struct {
	Words   []string `json:"words"`
	Spanish []string `json:"spanish"`
	Counts  []Count  `json:"counts"`
	Texts   []string `json:"texts"`
	Easy    bool     `json:"easy"`
}

type verdict struct {
	Words   [][2]int     `json:"words"` // the dictionary's and syllable's
	Easy    []string     `json:"easy"`  // the list of easy words that text-readability holds
	Spanish []int        `json:"spanish"`
	Flesch  []float64    `json:"flesch"`
	Texts   [][5]float64 `json:"texts"` // ease, grade, syllables, words, sentences
}

func ask(t *testing.T, q question) (v verdict) {
	t.Helper()
	tools, err := filepath.Abs(filepath.Join("..", "..", "..", ".ci", "node_modules"))
	if err != nil {
		t.Fatal(err)
	}
	_, err = os.Stat(filepath.Join(tools, "text-readability"))
	node, noNode := exec.LookPath("node")
	needed.Judge(t, err == nil && noNode == nil, "a judge of reading")
	for _, list := range []*[]string{&q.Words, &q.Spanish, &q.Texts} {
		*list = append([]string{}, *list...)
	}
	q.Counts = append([]Count{}, q.Counts...)
	in, err := json.Marshal(q)
	if err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(node, "-e", judges, tools)
	cmd.Stdin = strings.NewReader(string(in))
	cmd.Stderr = os.Stderr
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("the judges: %v", err)
	}
	if err := json.Unmarshal(out, &v); err != nil {
		t.Fatalf("%v in %s", err, out)
	}
	if len(v.Words) != len(q.Words) || len(v.Spanish) != len(q.Spanish) || len(v.Flesch) != len(q.Counts) || len(v.Texts) != len(q.Texts) {
		t.Fatal("the judges left something out")
	}
	return v
}

// demo are the bodies of the demo manual's procedures, links as their words,
// those in Spanish or the others.
func demo(t *testing.T, spanish bool) (texts []string) {
	t.Helper()
	link := regexp.MustCompile(`\[([^\]]*)\]\([^)\s]*\)`)
	err := filepath.WalkDir(filepath.Join("..", "..", "..", "content", "procedures"), func(name string, d os.DirEntry, err error) error {
		if err != nil || d.IsDir() || strings.HasSuffix(name, ".es.md") != spanish {
			return err
		}
		data, err := os.ReadFile(name)
		if err != nil {
			return err
		}
		var steps []string
		for line := range strings.Lines(string(data)) {
			if number, rest, is := strings.Cut(strings.TrimSpace(line), ". "); is && strings.Trim(number, "0123456789") == "" {
				steps = append(steps, strings.TrimSpace(link.ReplaceAllString(rest, "$1")))
			}
		}
		texts = append(texts, strings.Join(steps, "\n"))
		return nil
	})
	if err != nil || len(texts) == 0 {
		t.Fatal(err, len(texts))
	}
	return texts
}

// wordsOf are the different words of texts, those of two letters or more.
func wordsOf(texts []string) []string {
	words := regexp.MustCompile(`\p{L}+`).FindAllString(strings.ToLower(strings.Join(texts, " ")), -1)
	slices.Sort(words)
	return slices.DeleteFunc(slices.Compact(words), func(w string) bool { return utf8.RuneCountInString(w) < 2 })
}

// Of the words that the dictionary knows, the rules may be off in one of 25,
// and the sum in one syllable of 100: the 3,000 easy words (Dale and Chall's
// list, as text-readability holds it) and the demo manual's. The npm package
// syllable, which goes by spelling too, is off in as many.
func TestEnglishSyllablesAreTheDictionarys(t *testing.T) {
	all := map[string][]string{"easy words": ask(t, question{Easy: true}).Easy, "the demo manual": wordsOf(demo(t, false))}
	plain := regexp.MustCompile(`^[a-z]{2,}$`)
	for what, words := range all {
		words = slices.DeleteFunc(words, func(w string) bool { return !plain.MatchString(w) })
		known, off, here, there, offThere := 0, 0, 0, 0, 0
		for i, n := range ask(t, question{Words: words}).Words {
			if n[0] == 0 {
				continue
			}
			own := max(1, language.Default().Syllables([]byte(words[i])))
			known, here, there = known+1, here+own, there+n[0]
			if own != n[0] {
				off++
			}
			if n[1] != n[0] {
				offThere++
			}
		}
		t.Logf("%s: %d words, %d off (syllable: %d); %d syllables, the dictionary %d", what, known, off, offThere, here, there)
		if known < 700 || off*25 > known || math.Abs(float64(here-there)) > .01*float64(there) {
			t.Errorf("%s: of %d words %d are off; %d syllables, the dictionary %d", what, known, off, here, there)
		}
	}
	bad := ask(t, question{Words: []string{"mechanism", "valve"}}).Words
	if bad[0] != [2]int{4, 4} || bad[1] != [2]int{1, 1} {
		t.Errorf("the judges do not object to mechanism with 3 or valve with 2: %v", bad)
	}
}

// Spanish spelling says it: no word may be off but abbreviations, which have no
// vowel.
func TestSpanishSyllablesAreTheJudges(t *testing.T) {
	words := slices.DeleteFunc(wordsOf(demo(t, true)), func(w string) bool { return !strings.ContainsAny(w, "aeiouáéíóúü") })
	words = append(words, "ahí", "búho", "aéreo", "baúl", "guía", "pingüino", "construí", "ayuda", "hoy", "muy", "buey", "averiguáis", "caída", "quien", "guerra", "reúne", "cooperar")
	for i, n := range ask(t, question{Spanish: words}).Spanish {
		if own := language.Known("es").Syllables([]byte(words[i])); own != n {
			t.Errorf("%s: %d here, %d there", words[i], own, n)
		}
	}
	if bad := ask(t, question{Spanish: []string{"baúl"}}).Spanish[0]; bad == 1 {
		t.Error("the judge does not object to baúl with one syllable")
	}
}

// The formula is the package flesch's, to the last figure.
func TestTheFormulaIsThePackages(t *testing.T) {
	var counts []Count
	for _, text := range demo(t, false) {
		c := NewReader("en").Read(text)
		c.Words = c.Spoken // it knows no words without syllables
		counts = append(counts, c)
	}
	for i, there := range ask(t, question{Counts: counts}).Flesch {
		if ease, known := Ease(counts[i], "en"); !known || math.Abs(ease-there) > 1e-9 {
			t.Errorf("%+v: %v here, %v there", counts[i], ease, there)
		}
	}
}

// hard is a text that nobody should call easy, and plain one that nobody
// should call hard. They are ours.
const (
	hard  = "Notwithstanding considerable organizational complexity, the aforementioned maintenance documentation necessitates comprehensive familiarization with electromechanical interdependencies, manufacturer recommendations, and administrative authorization requirements."
	plain = "Put the bolt in the hole. Turn it by hand. Look at the gap. Then go on to the next bolt. Do this at each side. Take the rag and wipe the seat dry."
)

// samples are texts of 100 words, made of whole sentences of four words or more
// without figures, codes and signs inside.
func samples(texts []string) (out []string) {
	signs := regexp.MustCompile(`[^A-Za-z ]`)
	var sample strings.Builder
	words := 0
	for line := range strings.Lines(strings.Join(texts, "\n")) {
		for s := range strings.SplitSeq(line, ". ") {
			s = strings.Trim(s, " .\n")
			n := len(strings.Fields(s))
			if n < 4 || signs.MatchString(s) {
				continue
			}
			sample.WriteString(strings.ToUpper(s[:1]) + s[1:] + ". ")
			if words += n; words >= Enough {
				out = append(out, strings.TrimSpace(sample.String()))
				sample.Reset()
				words = 0
			}
		}
	}
	return out
}

// text-readability counts by spelling, splits sentences only before a capital
// letter, and leaves out those of one or two words: where it and the rules here
// see the same sentences, the ease may differ by 10, one band; the syllables of
// a text by 5 in 100.
func TestTheWholeIsThePackages(t *testing.T) {
	texts := append([]string{hard, plain}, samples(demo(t, false))...)
	if len(texts) < 10 {
		t.Fatalf("only %d texts are compared", len(texts))
	}
	for i, there := range ask(t, question{Texts: texts}).Texts {
		c := NewReader("en").Read(texts[i])
		ease, known := Ease(c, "en")
		grade, _ := Grade(c, "en")
		if !known || math.Abs(ease-there[0]) > 10 || math.Abs(grade-there[1]) > 1.5 {
			t.Errorf("%.60q: ease %.1f, there %.1f; grade %.1f, there %.1f", texts[i], ease, there[0], grade, there[1])
		}
		if math.Abs(float64(c.Syllables)-there[2]) > .05*there[2] || c.Words != int(there[3]) || c.Sentences != int(there[4]) {
			t.Errorf("%.60q: %+v, there %v", texts[i], c, there)
		}
		switch i {
		case 0:
			if ease > 0 || there[0] > 0 {
				t.Errorf("hard is not hard: here %.1f, there %.1f", ease, there[0])
			}
		case 1:
			if ease < 100 || there[0] < 100 {
				t.Errorf("plain is not easy: here %.1f, there %.1f", ease, there[0])
			}
		}
	}
}
