package generator

import (
	"crypto/sha256"
	"encoding/hex"
	"regexp"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/check"
	"baybinder/generator/read/source"
)

// registered is a file of register/ as it was, by its entries. What a changed entry
// reaches goes by its id: whose text has it as a word may name it. An edit of
// roles, of ids or their order, and one that machines or the shop name, reaches
// too far to be followed.
type registered struct {
	Path, Sum string
	Entries   []entry
}

// entry is the text from one key to the next, as a hash.
type entry struct {
	ID, Sum string
	Picture bool // it may have one
}

// followed are the registers whose changes are followed.
var followed = []string{"tools", "supplies", "hazards", "holds"}

// registersOf are the registers of a manual, by path.
func registersOf(tree *source.Tree, sums map[string]string) []registered {
	var out []registered
	for _, f := range tree.Files {
		if sum, is := sums[f.Path]; is {
			out = append(out, registered{f.Path, sum, entriesOf(f.Text)})
		}
	}
	return out
}

// key begins an entry: in a map of YAML what belongs to one is indented.
var key = regexp.MustCompile(`(?m)^([a-z0-9-]+):`)

// entriesOf cuts a register's text into entries; what stands before the first has
// the id "".
func entriesOf(text string) []entry {
	var out []entry
	id, from := "", 0
	add := func(to int) {
		sum := sha256.Sum256([]byte(text[from:to]))
		out = append(out, entry{id, hex.EncodeToString(sum[:8]), strings.Contains(text[from:to], "picture")})
	}
	for _, at := range key.FindAllStringSubmatchIndex(text, -1) {
		add(at[0])
		id, from = text[at[2]:at[3]], at[0]
	}
	add(len(text))
	return out
}

// changes are entries of registers, by id, and the files that they stand in.
type changes struct{ ids, files []string }

// editedEntries are the entries whose text is another one, and those that lead to
// such; not known where more is new.
func (p *past) editedEntries(tree *source.Tree, sums map[string]string) (c changes, known bool) {
	for i := range p.Registers {
		r := &p.Registers[i]
		if sums[r.Path] == r.Sum {
			continue
		}
		f := tree.File(r.Path)
		if f == nil || !isFollowed(r.Path) {
			return c, false
		}
		now := registered{r.Path, sums[r.Path], entriesOf(f.Text)}
		ids, known := r.differs(&now)
		if !known {
			return c, false
		}
		c.add(r.Path, ids...)
		*r = now
	}
	return c, len(c.files) == 0 || c.lead(tree)
}

func isFollowed(name string) bool {
	return slices.Contains(followed, strings.TrimSuffix(strings.TrimPrefix(name, "register/"), ".yaml"))
}

// add adds entries of a file.
func (c *changes) add(file string, ids ...string) {
	for _, id := range ids {
		if !slices.Contains(c.ids, id) {
			c.ids = append(c.ids, id)
		}
	}
	if !slices.Contains(c.files, file) {
		c.files = append(c.files, file)
	}
}

// differs are the entries of which another text stands now; not known where not
// only that is another.
func (r *registered) differs(now *registered) (ids []string, known bool) {
	if len(r.Entries) != len(now.Entries) {
		return nil, false
	}
	for i, was := range r.Entries {
		is := now.Entries[i]
		if was == is {
			continue
		}
		if was.ID != is.ID || is.ID == "" || was.Picture || is.Picture {
			return nil, false
		}
		ids = append(ids, is.ID)
	}
	return ids, true
}

// lead adds the entries in whose text one is named; false where the shop, a machine
// or a plan names one, or may say something by signs that stand for it.
func (c *changes) lead(tree *source.Tree) bool {
	for n := 0; n < len(c.ids) && n < few; n++ {
		word := wordOf(c.ids[n])
		for _, f := range tree.Files {
			switch folder, _, _ := strings.Cut(f.Path, "/"); {
			case folder == "procedures" || folder == "revisions" || folder == "records" || strings.HasSuffix(f.Path, ".csv"): // these name no entries but roles, or are procedures
			case folder != "readings" && strings.ContainsAny(f.Text, `\&`):
				return false
			case !word.MatchString(f.Text):
			case !isFollowed(f.Path):
				return false
			default:
				c.add(f.Path, entriesNaming(f.Text, word)...)
			}
		}
	}
	return len(c.ids) <= few
}

// entriesNaming are the entries of a register in whose text a word stands.
func entriesNaming(text string, word *regexp.Regexp) (ids []string) {
	starts := key.FindAllStringSubmatchIndex(text, -1)
	for _, at := range word.FindAllStringIndex(text, -1) {
		i, _ := slices.BinarySearchFunc(starts, at[1], func(s []int, to int) int { return s[0] - to })
		if i > 0 {
			ids = append(ids, text[starts[i-1][2]:starts[i-1][3]])
		}
	}
	return ids
}

// wordOf finds an id that stands by itself.
func wordOf(id string) *regexp.Regexp {
	return regexp.MustCompile(`(?:^|[^A-Za-z0-9-])` + regexp.QuoteMeta(id) + `(?:[^A-Za-z0-9-]|$)`)
}

// naming are procedures, and those that may name an entry.
func (p *past) naming(tree *source.Tree, procedures []int, c changes) []int {
	if len(c.ids) == 0 {
		return procedures
	}
	words := []*regexp.Regexp{}
	for _, id := range c.ids {
		words = append(words, wordOf(id))
	}
	for i := range p.Procedures {
		f := tree.File(p.Procedures[i].Path)
		if f != nil && !slices.Contains(procedures, i) && mayName(f.Text, c.ids, words) {
			procedures = append(procedures, i)
		}
	}
	slices.Sort(procedures)
	return procedures
}

// standsFor finds signs in Markdown, YAML and addresses that stand for a letter.
var standsFor = regexp.MustCompile(`\\|&[#A-Za-z]|%[0-9A-Fa-f]{2}`)

// mayName says that a text has a word in it, or signs that may stand for one.
func mayName(text string, ids []string, words []*regexp.Regexp) bool {
	if strings.ContainsAny(text, `\&%`) && standsFor.MatchString(text) {
		return true
	}
	for i, id := range ids {
		if strings.Contains(text, id) && words[i].MatchString(text) {
			return true
		}
	}
	return false
}

// checkEntries looks at changed entries; false where something is found, or was,
// that is not of the procedures that they reach.
func (a *again) checkEntries(m *memory, kept []finding.Finding) bool {
	if len(a.Manual.Jobs) > 0 || len(a.Manual.Words) > 0 {
		return false
	}
	files, reached := map[string]bool{}, map[string]bool{}
	for _, name := range a.entries.files {
		files[name] = true
	}
	for _, p := range a.reached {
		reached[p.File.Path] = true
	}
	mended := files["register/hazards.yaml"] || files["register/holds.yaml"] // other procedures are told of these to mend something
	if slices.ContainsFunc(kept, func(f finding.Finding) bool {
		return files[f.At.Path()] || pointsInto(f, files) || mended && !reached[f.At.Path()]
	}) {
		return false
	}
	c := &check.Context{Manual: a.Manual, Today: m.o.Today, Preview: m.o.Preview}
	return !slices.ContainsFunc(check.Entries(c), func(f finding.Finding) bool { return files[f.At.Path()] || reached[f.At.Path()] })
}
