package generator_test

import (
	"path"
	"strings"
	"testing"
)

// A page that nothing leads to is a page that nobody reads: from the front page
// every other one is reached by the links that stand on pages.
func TestEveryPageIsReached(t *testing.T) {
	t.Parallel()
	site := pages(t, demoSite(t))
	reached, open := map[string]bool{"index.html": true}, []string{"index.html"}
	for len(open) > 0 {
		page := open[0]
		open = open[1:]
		for _, e := range elements(t, site[page]) {
			file, _, _ := strings.Cut(e.attr["href"], "#")
			if to := path.Join(path.Dir(page), file); file != "" && path.Ext(to) == ".html" && site[to] != nil && !reached[to] {
				reached[to] = true
				open = append(open, to)
			}
		}
	}
	for name := range site {
		if path.Ext(name) == ".html" && !reached[name] {
			t.Errorf("%s: no page leads there from the front page", name)
		}
	}
}
