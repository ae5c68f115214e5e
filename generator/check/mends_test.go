package check

import (
	"maps"
	"regexp"
	"strings"
	"testing"

	"baybinder/generator/base/casefile"
	"baybinder/generator/base/finding"
)

// badValues is a manual of fields as people write them wrong: ranges with a
// dash, lists in lists, lists for maps, words for lists.
var badValues = map[string]string{
	"shop.yaml": "title: Shop\n",
	"register/tools.yaml": `w1: { name: w, kind: torque-wrench, range: 20-100 N·m }
w2: { name: w, kind: torque-wrench, range: 20 N·m }
w3: { name: w, kind: torque-wrench, range: 0 to 5 stones }
s1: { name: s, kind: socket, fits: 13 mm, or: w1 }
s2: { name: s, kind: socket, fits: [[13 mm, 10 mm]] }
s3: { name: s, kind: socket, fits: [13-15 mm] }
a1: { name: a, kind: aid, length: 20-30 mm, owned: two }
`,
	"register/holds.yaml": `l1: { name: l, kind: measure, what: gap, limit: 2-3 mm }
l2: { name: l, kind: measure, what: gap, limit: 2 - 3 mm, at: plus to minus }
l3: { name: l, kind: measure, what: gap, limit: "< 5 mm" }
l4: { name: l, kind: measure, what: gap, limit: max 5 mm }
l5: { name: l, kind: measure, what: gap, limit: at most 5 mm, near: 4-5 mm, again-in: 3 mm }
w1: { name: w, kind: wait, for: 10-15 min }
w2: { name: w, kind: wait, for: 3 mm }
a1: { name: a, kind: ask, answers: [good, bad] }
`,
	"machines/rig.yaml": `name: Rig
options: { cab: Cab, canopy: Canopy }
only-one-of: [cab, canopy]
units: [{ serials: 101-130, options: canopy }]
points: { plug: { name: plug } }
energies:
  oil: { name: oil, kind: pressure, pressure: 6-8 bar, points: plug }
parts:
  lid: { name: lid, held-by: bolt, under: [[hood]] }
  hood: { name: hood, mass: 5-6 kg }
fasteners:
  bolt: { name: bolt, torque: 20-25 N·m }
  stud: { name: stud, stages: 20 N·m }
  nut: { name: nut, stages: [[20 N·m, 30 N·m]] }
  pin: { name: pin, sequence: [[1, 2]] }
orders: { round: left }
`,
	"procedures/job.md":   "---\ntitle: Job\nfor: rig\nexpects: [lid: off]\nneeds: fitter\npeople: 2-3\ntools: w1\n---\n\n## Work\n\n1. [Lid on](refit:lid). [](time:5-10min) [](people:some)\n",
	"register/roles.yaml": "fitter: { name: Fitter }\n",
}

// applied are the texts that a mend says to write, each in place of what it is
// told of.
func applied(f finding.Finding) []mended {
	at, text := f.At, f.At.File.Text
	put := func(s string) mended {
		return mended{text[:at.Start] + s + text[at.End:], at.Start, at.Start + len(s)}
	}
	mend, _, _ := strings.Cut(f.Mend, ";")
	mend = strings.TrimPrefix(mend, "take the inner brackets away: ")
	if m := regexp.MustCompile(`^did you mean ([^?]+)\?`).FindStringSubmatch(mend); m != nil {
		mend = "write " + m[1]
	}
	rest, is := strings.CutPrefix(mend, "write ")
	if !is {
		rest = mend
	}
	if _, such, has := strings.Cut(rest, "such as "); has {
		rest = such
	} else if !is && !regexp.MustCompile(`^[a-z-]+: [\[{]`).MatchString(rest) {
		return nil
	}
	var out []mended
	for _, way := range regexp.MustCompile(`, or (?:for a gas )?| or `).Split(rest, -1) {
		way = regexp.MustCompile(`, (?:with|in quotes|as|and|so|unless) .*$| \([^)]*\)$`).ReplaceAllString(way, "")
		if !regexp.MustCompile(`^(?:[a-z-]+: )?(?:[\[{"].*[\]}"]|(?:at most |at least )?[^\s…]+(?: [^\s…]+| to \S+ \S+)?)$`).MatchString(way) || strings.Contains(way, "…") {
			continue
		}
		if !strings.ContainsAny(way, "[{\"") {
			way, _, _ = strings.Cut(way, ",")
		}
		field, value, pair := strings.Cut(way, ": ")
		switch before := text[:at.Start]; {
		case strings.HasPrefix(at.Text(), "[") && strings.Contains(at.Text(), "](") && regexp.MustCompile(`^[a-z]+:\S+$`).MatchString(way):
			head, _, _ := strings.Cut(at.Text(), "](")
			out = append(out, put(head+"]("+way+")"))
		case pair && strings.Contains(text[:at.Start], field+": ") && strings.ContainsAny(value[:1], "[{"):
			out = append(out, wholeField(text, at.Start, field, value))
		case pair && strings.HasSuffix(strings.TrimRight(before, " "), field+":"):
			out = append(out, put(value))
		case !pair && at.Text() != "" && !strings.HasPrefix(at.Text(), "title") && f.Code != "bad-id" && !strings.Contains(f.Message, " is nothing") && f.Code != "syntax" && !strings.HasPrefix(at.Text(), "\""):
			out = append(out, put(way))
		}
	}
	return out
}

// mended is a file with what a mend says, and where that stands.
type mended struct {
	text       string
	start, end int
}

// wholeField writes another value for the field in whose value a place stands.
func wholeField(text string, place int, field, value string) mended {
	start := strings.LastIndex(text[:place], field+": ")
	start += len(field) + 2
	depth, end := 0, start
	for ; end < len(text); end++ {
		c := text[end]
		if c == '\n' || depth == 0 && (c == ',' || c == '}' || c == ']') && end > start {
			break
		}
		switch c {
		case '[', '{':
			depth++
		case ']', '}':
			if depth--; depth == 0 {
				end++
			}
		}
		if depth == 0 && end > start && (text[end-1] == ']' || text[end-1] == '}') {
			break
		}
	}
	return mended{text[:start] + value + text[end:], start, start + len(value)}
}

// follows are the codes of what was hidden while a text could not be read, and
// is no error of what was written in its place.
var follows = map[string]bool{"not-used": true, "too-few-people": true}

// What a mend says to write is no error in its turn, at the place where it is
// written: of every finding of the cases and of the values above whose mend
// names what to write.
func TestMendsLeadToNoOtherError(t *testing.T) {
	tried := 0
	manuals := map[string]map[string]string{"values": badValues}
	for _, name := range caseNames(t) {
		archive, _ := caseNamed(name)
		manuals[name] = casefile.Part(archive, "bad/")
	}
	for name, files := range manuals {
		for _, f := range findIn(files) {
			if f.At.File == nil || f.Level != finding.Error {
				continue
			}
			for _, m := range applied(f) {
				tried++
				again := maps.Clone(files)
				again[f.At.Path()] = m.text
				for _, g := range findIn(again) {
					if g.Level == finding.Error && g.At.Path() == f.At.Path() && g.At.Start >= m.start && g.At.Start < m.end && !follows[g.Code] {
						t.Errorf("%s: %s: %q: mend %q leads to: %s", name, f.Message, f.At.Text(), f.Mend, g.Message)
					}
				}
			}
		}
	}
	t.Logf("%d mends were tried", tried)
	if tried < 90 {
		t.Errorf("only %d mends were tried", tried)
	}
}
