package theme

import (
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// A class is a thing of the page, or a state that a script puts a thing into.
// States begin with "is-", and nothing else does; so a state can never meet
// the style of a thing, as a running wait once met the foot of a printed page.

// chosen are the classes that a template leaves to a value.
var chosen = map[string][]string{
	"b.Class": {"danger", "warning", "caution", "notice"},
	"s.Class": {"danger", "warning", "caution", "notice"},
	"m.Class": {"good", "due", "overdue", "stale", "acts", "none"},
	"r.Class": {"danger", "warning", "caution", "notice"},
}

// drawn are classes that code of the generator writes by a variable.
var drawn = []string{"in", "out", "work", "call", "wait", "halo"}

var (
	classAttribute = regexp.MustCompile(`<([a-z][a-z0-9]*)\b[^<>]*?\bclass=\\?"((?:[^"\\]|\{%s[^%]*%\})*)\\?"`)
	templateCode   = regexp.MustCompile(`\{%s? *([A-Za-z.]*)[^%]*%\}`)
	madeByScript   = regexp.MustCompile(`(?:make\('([a-z0-9]+)'|(button)\([^{}]*(?:=> \{[^{}]*\}|[^{}])*), \{[^{}]*?\bclass: '([^']*)'`)
	toggled        = regexp.MustCompile(`(?:classList|list)\.(?:toggle|add|remove)\('([^']*)'`)
	lookedFor      = regexp.MustCompile(`(?:querySelector(?:All)?|closest|matches|own)\(\s*'([^']*)'`)
	className      = regexp.MustCompile(`\.(-?[A-Za-z_][A-Za-z0-9_-]*)`)
	comment        = regexp.MustCompile(`(?s)/\*.*?\*/`)
	quoted         = regexp.MustCompile(`"[^"]*"`)
	rule           = regexp.MustCompile(`([^{}]+)\{([^{}]*)\}`)
	hides          = regexp.MustCompile(`display: *none|visibility: *hidden|left: *-\d+rem|-webkit-line-clamp`)
)

// maker is one place that makes elements of a class.
type maker struct {
	tag, first string // the element, and its first class: what the thing is
	at         string
}

// classNames is what the theme and the generator call things.
type classNames struct {
	made    map[string][]maker
	states  map[string]string // those that a script sets, by where
	sought  map[string]string // those that a script looks for
	styled  map[string]string // those that a style speaks of
	hiddens map[string]string // those that a style hides, with the rule
}

func read(t *testing.T, name string) string {
	t.Helper()
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

func (n *classNames) make(tag, classes, at string) {
	list := strings.Fields(classes)
	for _, c := range list {
		n.made[c] = append(n.made[c], maker{tag, list[0], at})
	}
}

// markup reads the classes that templates, and markup within Go code, write.
func (n *classNames) markup(t *testing.T, text, at string) {
	t.Helper()
	for _, m := range classAttribute.FindAllStringSubmatch(text, -1) {
		fixed := templateCode.ReplaceAllString(m[2], " ")
		n.make(m[1], fixed, at)
		for _, code := range templateCode.FindAllStringSubmatch(m[2], -1) {
			if !strings.HasPrefix(code[0], "{%s") || code[1] == "" {
				continue
			}
			values, known := chosen[code[1]]
			if !known {
				t.Errorf("%s: the class %s is chosen by a value; say in the test which it can be", at, code[1])
			}
			for _, v := range values {
				n.make(m[1], fixed+" "+v, at)
			}
		}
	}
}

func (n *classNames) script(text, at string) {
	for _, m := range madeByScript.FindAllStringSubmatch(text, -1) {
		n.make(m[1]+m[2], m[3], at)
	}
	for _, m := range toggled.FindAllStringSubmatch(text, -1) {
		n.states[m[1]] = at
	}
	for _, m := range lookedFor.FindAllStringSubmatch(text, -1) {
		for _, c := range className.FindAllStringSubmatch(m[1], -1) {
			n.sought[c[1]] = at
		}
	}
}

func (n *classNames) style(text, at string) {
	text = quoted.ReplaceAllString(comment.ReplaceAllString(text, ""), "")
	for _, m := range rule.FindAllStringSubmatch(text, -1) {
		for _, selector := range strings.Split(m[1], ",") {
			for _, c := range className.FindAllStringSubmatch(selector, -1) {
				n.styled[c[1]] = at
			}
			if hides.MatchString(m[2]) {
				n.hide(selector)
			}
		}
	}
}

// hide keeps the classes of the element that a rule hides: the last of its
// selector.
func (n *classNames) hide(selector string) {
	parts := strings.Fields(strings.NewReplacer(">", " ", "~", " ", "+", " ").Replace(selector))
	if len(parts) == 0 {
		return
	}
	last, _, _ := strings.Cut(parts[len(parts)-1], ":not")
	for _, c := range className.FindAllStringSubmatch(last, -1) {
		n.hiddens[c[1]] = strings.TrimSpace(selector)
	}
}

// gathered reads the theme, and the generator's markup.
func gathered(t *testing.T) *classNames {
	t.Helper()
	n := &classNames{map[string][]maker{}, map[string]string{}, map[string]string{}, map[string]string{}, map[string]string{}}
	for pattern, take := range map[string]func(text, at string){
		"*.qtpl":         func(text, at string) { n.markup(t, text, at) },
		"scripts/*.js":   n.script,
		"styles/*/*.css": n.style,
	} {
		files, err := filepath.Glob(pattern)
		if err != nil || len(files) == 0 {
			t.Fatalf("no %s: %v", pattern, err)
		}
		for _, f := range files {
			take(read(t, f), f)
		}
	}
	err := filepath.WalkDir("../generator", func(name string, d fs.DirEntry, err error) error {
		if err == nil && strings.HasSuffix(name, ".go") && !strings.HasSuffix(name, "_test.go") {
			n.markup(t, read(t, name), name)
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return n
}

func (n *classNames) exists(class string) bool {
	_, state := n.states[class]
	return state || len(n.made[class]) > 0 || slices.Contains(drawn, class)
}

// TestNamesOfClasses: what a script sets is a state, and only that; what a
// style hides is one thing; what a style or a script speaks of is there.
func TestNamesOfClasses(t *testing.T) {
	n := gathered(t)
	if len(n.made) < 100 || len(n.states) < 8 || len(n.styled) < 100 || len(n.hiddens) < 20 {
		t.Fatalf("%d made, %d states, %d styled, %d hidden: the test looks in the wrong place", len(n.made), len(n.states), len(n.styled), len(n.hiddens))
	}
	n.judge(t.Errorf)
}

func (n *classNames) judge(say func(format string, args ...any)) {
	for c, at := range n.states {
		if !strings.HasPrefix(c, "is-") {
			say("%s sets the class %s: a state's name begins with is-", at, c)
		}
	}
	for c, makers := range n.made {
		if strings.HasPrefix(c, "is-") {
			say("%s makes a thing called %s: is- is for states", makers[0].at, c)
		}
		if rule, hidden := n.hiddens[c]; hidden {
			for _, m := range makers {
				if m.tag != makers[0].tag || m.first != makers[0].first {
					say("%q hides .%s, which is a %s.%s in %s and a %s.%s in %s", rule, c, makers[0].tag, makers[0].first, makers[0].at, m.tag, m.first, m.at)
				}
			}
		}
	}
	for c, at := range n.styled {
		if !n.exists(c) && !token.MatchString(c) {
			say("%s has rules for .%s, which nothing makes", at, c)
		}
	}
	for c, at := range n.sought {
		if !n.exists(c) {
			say("%s looks for .%s, which nothing makes", at, c)
		}
	}
}

// token are the highlighter's own classes: at most two letters and a figure.
var token = regexp.MustCompile(`^[a-z]{1,2}\d?$`)

// TestNamesThatMeetAreFound shows the test the two faults that it is for.
func TestNamesThatMeetAreFound(t *testing.T) {
	n := gathered(t)
	n.markup(t, `<div class="strange"></div>`, "a.qtpl")
	n.markup(t, `<code class="strange"></code>`, "b.qtpl")
	n.style(`.strange, .nowhere { display: none; }`, "a.css")
	n.script(`e.classList.toggle('running', true); e.querySelector('.gone');`, "a.js")
	found := 0
	n.judge(func(string, ...any) { found++ })
	if found != 4 {
		t.Errorf("%d of 4 faults are found: two things of one name, a rule for nothing, a state called as a thing, a thing that is not there", found)
	}
}
