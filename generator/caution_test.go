package generator_test

import (
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// cautions are the texts of every caution before a step, box by box; folded are
// those behind a fold that is shut.
const cautions = `[...document.querySelectorAll('.step > .safety')].map((b) => [...b.querySelectorAll('.band, .nature, .say p, .avoid li, .wear li, .harm p')].map((e) => e.textContent.trim()).sort().join('|')).join('\n')`

const folded = `[...document.querySelectorAll('.step > .safety details:not([open])')].map((d) => [...d.querySelectorAll(':scope > :not(summary)')].map((e) => e.innerText || e.textContent).join('|')).join('\n')`

// TestALowWindowFoldsOnlyTheRestOfACaution compares what cautions say in a
// window as high as at 400 % zoom with what they say elsewhere: the same, of
// which only what a hazard is and what follows is folded; the fold opens, and is
// gone on paper and in a higher window.
func TestALowWindowFoldsOnlyTheRestOfACaution(t *testing.T) {
	t.Parallel()
	ctx, complaints := browser(t)
	work(t, ctx, "file://"+filepath.Join(demoSite(t), "procedures", "isolate-tug-traction.html")+"?unit=112")
	split := func() (all, shut []string) {
		return strings.Split(js[string](t, ctx, cautions), "\n"), strings.FieldsFunc(js[string](t, ctx, folded), func(r rune) bool { return r == '\n' })
	}
	show(t, ctx, "", 1366)
	whole, shut := split()
	if len(whole) < 3 || len(shut) > 0 {
		t.Fatalf("%d cautions at a desk, %d folded", len(whole), len(shut))
	}
	resize(t, ctx, 320, 256)
	low, shut := split()
	if !slices.Equal(unique(low), unique(whole)) {
		t.Errorf("in a low window cautions say\n%q, elsewhere\n%q", low, whole)
	}
	if len(shut) == 0 {
		t.Fatal("nothing is folded: the test looks at nothing")
	}
	if first := js[string](t, ctx, `[...document.querySelectorAll('.harm .band, .harm .nature, .harm .avoid, .harm .wear')].map((e) => e.textContent).join()`); first != "" {
		t.Errorf("folded is what must be seen first: %s", first)
	}
	js[any](t, ctx, `baybinder.page.lead(100); document.querySelector('.is-now .harm summary')?.click(); 0`)
	show(t, ctx, "print", 718)
	if _, shut := split(); len(shut) > 0 {
		t.Errorf("on paper %q is folded", shut)
	}
	show(t, ctx, "", 1366)
	if back, shut := split(); !slices.Equal(back, whole) || len(shut) > 0 {
		t.Errorf("at a desk again they say %q, folded %q", back, shut)
	}
	if order := js[string](t, ctx, `[...document.querySelectorAll('.step > .safety .say')].map((s) => [...s.children].map((e) => e.className || e.tagName).join()).filter((o) => !/^nature(,P)*(,avoid)?$/.test(o)).join('; ')`); order != "" {
		t.Errorf("the order of a box is lost: %s", order)
	}
	for _, c := range complaints() {
		t.Errorf("the browser says: %s", c)
	}
}

// unique are the texts of each box, each once.
func unique(boxes []string) []string {
	out := make([]string, len(boxes))
	for i, b := range boxes {
		parts := strings.Split(b, "|")
		slices.Sort(parts)
		out[i] = strings.Join(slices.Compact(parts), "|")
	}
	return out
}
