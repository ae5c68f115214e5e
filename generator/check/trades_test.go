package check

import (
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"golang.org/x/tools/txtar"
)

// Known: DERIVED.

// The manuals were written from the format's text. Of nineteen what is to be found
// was written from it too, before it was run; of the other sixteen what was found
// was judged against it by hand, and then kept.

// Manuals of other trades: a press, a steam boiler, a goods lift, a battery
// rack, a wheel, a cooling compressor, a milling machine, an autoclave, a dosing
// pump, a belt conveyor, a bakery oven, an escalator, a printing press, the pitch
// drive of a wind turbine, an X-ray table, a swimming pool, a lathe in inches, a garage door, an ammonia chiller, a scissor lift, a band mill, a stage hoist, a tower clock, a chairlift, a paper guillotine and
// what else is in the folder, in English, Spanish and German. Each is right by the
// format, and nothing is found in it. Each is then spoiled in one place at a time,
// as who writes it might, and what is wrong by that is found, once, where it is
// wrong.
func TestManualsOfOtherTrades(t *testing.T) {
	for _, name := range trades(t) {
		t.Run(strings.TrimSuffix(filepath.Base(name), ".txtar"), func(t *testing.T) {
			t.Parallel()
			files, spoilings := trade(t, name)
			if found := sound(files); len(found) > 0 {
				t.Errorf("nothing is wrong, and found is:\n%s", strings.Join(found, "\n"))
			}
			for _, s := range spoilings {
				if strings.Count(files[s.in], s.was) == 0 {
					t.Fatalf("%s has no %q", s.in, s.was)
				}
				spoiled := changed(files, s.in, strings.Replace(files[s.in], s.was, s.is, 1))
				if found := sound(spoiled); !slices.Equal(found, s.found) {
					t.Errorf("%q for %q:\nfound\n%s\nwant\n%s", s.is, s.was, strings.Join(found, "\n"), strings.Join(s.found, "\n"))
				}
			}
		})
	}
}

// A manual saved with a byte-order mark and the line ends of another system is the
// same manual: nothing is found in it, and what is spoiled is found at its place.
func TestManualsOfOtherTradesSavedElsewhere(t *testing.T) {
	for _, name := range trades(t) {
		t.Run(strings.TrimSuffix(filepath.Base(name), ".txtar"), func(t *testing.T) {
			t.Parallel()
			files, spoilings := trade(t, name)
			if found := sound(elsewhere(files)); len(found) > 0 {
				t.Errorf("nothing is wrong, and found is:\n%s", strings.Join(found, "\n"))
			}
			s := spoilings[0]
			spoiled := changed(files, s.in, strings.Replace(files[s.in], s.was, s.is, 1))
			if found := sound(elsewhere(spoiled)); !slices.Equal(found, s.found) {
				t.Errorf("%q for %q:\nfound\n%s\nwant\n%s", s.is, s.was, strings.Join(found, "\n"), strings.Join(s.found, "\n"))
			}
		})
	}
}

func elsewhere(files map[string]string) map[string]string {
	out := map[string]string{}
	for name, text := range files {
		out[name] = "\ufeff" + strings.ReplaceAll(text, "\n", "\r\n")
	}
	return out
}

// A slip in one link of a right manual, in its kind or in what it names, is told
// at that link, and nothing else is: what could not be read is unknown.
func TestASlipInALinkIsToldAlone(t *testing.T) {
	for _, name := range trades(t) {
		t.Run(strings.TrimSuffix(filepath.Base(name), ".txtar"), func(t *testing.T) {
			t.Parallel()
			files, _ := trade(t, name)
			for path, text := range files {
				if !strings.HasPrefix(path, "procedures/") {
					continue
				}
				all := slips(text)
				for i := 0; i < len(all); i += 1 + len(all)/mostSlips {
					at := all[i]
					found := sound(changed(files, path, text[:at]+"x"+text[at:]))
					if len(found) != 1 || !strings.HasSuffix(found[0], " unknown-kind") && !strings.HasSuffix(found[0], " unknown-reference") {
						t.Errorf("%s: x before %q:\n%s", path, text[at:min(len(text), at+30)], strings.Join(found, "\n"))
					}
				}
			}
		})
	}
}

// mostSlips is in how many places of a procedure a slip is made, about: each is a
// check of the whole manual.
const mostSlips = 16

// slips are the places before the last letter of a link's kind, and of what it
// names.
func slips(text string) []int {
	var out []int
	for from := 0; ; {
		at := strings.Index(text[from:], "](")
		if at < 0 {
			return out
		}
		begin := from + at + 2
		end := begin + strings.IndexByte(text[begin:], ')')
		kind, id, typed := strings.Cut(text[begin:end], ":")
		if from = end; !typed {
			continue // a picture
		}
		out = append(out, begin+len(kind)-1)
		id, _, _ = strings.Cut(id, "#")
		id, _, _ = strings.Cut(id, "=")
		if len(id) > 2 && id[0] > '9' && kind != "pause" {
			out = append(out, begin+len(kind)+len(id))
		}
	}
}

// spoiling is one change of a manual and what is found by it.
type spoiling struct {
	in, was, is string
	found       []string // path:line:column code
}

func trades(t *testing.T) []string {
	t.Helper()
	names, _ := filepath.Glob("testdata/trades/*.txtar")
	if len(names) < 10 {
		t.Fatalf("there are %d manuals of other trades", len(names))
	}
	return names
}

// trade reads a manual and its spoilings: lines of in, was and is, and one of
// found for each finding.
func trade(t *testing.T, name string) (map[string]string, []spoiling) {
	t.Helper()
	archive, err := txtar.ParseFile(name)
	if err != nil {
		t.Fatal(err)
	}
	files := map[string]string{}
	var out []spoiling
	for _, f := range archive.Files {
		if f.Name != "breaks" {
			files[f.Name] = string(f.Data)
			continue
		}
		for line := range strings.Lines(string(f.Data)) {
			key, value, _ := strings.Cut(strings.TrimSpace(line), " ")
			if key == "in" {
				out = append(out, spoiling{})
			}
			last := &out[len(out)-1]
			switch key {
			case "in":
				last.in = value
			case "was":
				last.was = unquoted(t, value)
			case "is":
				last.is = unquoted(t, value)
			case "found":
				last.found = append(last.found, value)
			default:
				t.Fatalf("%s: %q", name, line)
			}
		}
	}
	return files, out
}

func unquoted(t *testing.T, text string) string {
	t.Helper()
	out, err := strconv.Unquote(text)
	if err != nil {
		t.Fatalf("%s: %v", text, err)
	}
	return out
}

func changed(files map[string]string, path, text string) map[string]string {
	out := map[string]string{}
	for name, was := range files {
		out[name] = was
	}
	out[path] = text
	return out
}

// sound is what is found in a manual, without what is advice about how it is
// written.
func sound(files map[string]string) []string {
	style := []string{"too-long", "hollow-link", "two-actions", "vague", "no-time", "not-translated"}
	var out []string
	for _, f := range findIn(files) {
		if !slices.Contains(style, f.Code) {
			out = append(out, strings.Replace(place(f), ": ", " ", 1))
		}
	}
	slices.Sort(out)
	return out
}
