package generator_test

import (
	"context"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"testing"
)

// Known: SEEN.

// partedAmounts are, of those that are seen on the open page, how many there are, and the
// words of each of which the number and the unit stand on two lines, by their
// rectangles.
func partedAmounts(t *testing.T, ctx context.Context) (all int, parted []string) {
	t.Helper()
	list := js[[]string](t, ctx, `(() => {
		const unit = '(?:[NcmkµM]?(?:N·m|bar|Pa|[VAΩFWHL])|lbf·(?:ft|in)|psi|[mµkc]?m|[mk]?g|min|[sh]|in|ft|oz|lb|gal|m³|kN|lbf|°[CF]?|rpm|km/h|%)';
		const amount = new RegExp('\\d[ \\n]' + unit + '(?![\\w·/³])', 'g'), blocks = new Map(), parted = [];
		const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
		for (let n = walk.nextNode(); n; n = walk.nextNode()) {
			let block = n.parentElement;
			if (block.closest('script, style, title, svg')) continue;
			while (getComputedStyle(block).display.startsWith('inline')) block = block.parentElement;
			blocks.set(block, [...(blocks.get(block) || []), n]);
		}
		let all = 0;
		for (const nodes of blocks.values()) {
			const text = nodes.map((n) => n.data).join(''), letter = (at) => {
				const n = nodes.find((n) => at < n.data.length || (at -= n.data.length, false)), r = document.createRange();
				r.setStart(n, at);
				r.setEnd(n, at + 1);
				return r.getBoundingClientRect();
			};
			for (const m of text.matchAll(amount)) {
				const number = letter(m.index), of = letter(m.index + 2);
				if (!number.height || !of.height) continue;
				all++;
				if (of.top > number.top + number.height / 2) parted.push(text.slice(Math.max(0, m.index - 30), m.index + m[0].length));
			}
		}
		return [String(all), ...parted];
	})()`)
	all, err := strconv.Atoi(list[0])
	must(t, err)
	return all, list[1:]
}

// unparted are the files of a site without the element that keeps a number on one line
// with its unit: what a page says, for those who look for words in it.
func unparted(site map[string][]byte) map[string][]byte {
	out := map[string][]byte{}
	for name, data := range site {
		out[name] = amountElement.ReplaceAll(data, nil)
	}
	return out
}

var amountElement = regexp.MustCompile(`</?bdi>`)

// TestNoNumberIsPartedFromItsUnit looks at every kind of page at the widths of a
// telephone, of a desk and of the narrowest window. Where nothing holds them
// together some are parted: this test sees it. What is copied has the plain space
// that the manual has.
func TestNoNumberIsPartedFromItsUnit(t *testing.T) {
	t.Parallel()
	ctx, _ := browser(t)
	site, seen, without := demoSite(t), 0, 0
	for _, page := range slices.Concat(pageKinds, []string{"procedures/replace-ram-seal.html"}) {
		open(t, ctx, filepath.Join(site, filepath.FromSlash(page)), 1280)
		for _, width := range []int64{1280, 390, 320} {
			resize(t, ctx, width, 900)
			all, parted := partedAmounts(t, ctx)
			for _, words := range parted {
				t.Errorf("%s at %d px: %q", page, width, words)
			}
			seen += all
		}
		js[int](t, ctx, `[...document.querySelectorAll("bdi")].map((e) => e.style.whiteSpace = "normal").length`)
		_, parted := partedAmounts(t, ctx)
		without += len(parted)
	}
	if seen < 5000 || without < 100 {
		t.Errorf("%d amounts were seen, %d of them parted where nothing holds them together", seen, without)
	}
	if copied := js[string](t, ctx, `getSelection().selectAllChildren(document.querySelector(".turns:has(bdi)")), getSelection().toString()`); copied != "1: 40 N·m (29.5 lbf·ft)" {
		t.Errorf("copied: %q", copied)
	}
}

// The name of an option is one piece beside its box: an amount in it that is not parted
// is no column of its own.
func TestNamesOfOptionsAreOnePiece(t *testing.T) {
	t.Parallel()
	ctx, _ := browser(t)
	open(t, ctx, filepath.Join(demoSite(t), "procedures", "replace-contactor-panel.html"), 320)
	got := js[[]string](t, ctx, `[...document.querySelectorAll('.option')].filter((e) => e.querySelector('bdi')).map((e) => e.children.length + ' ' + e.textContent.trim())`)
	if len(got) != 1 || got[0] != "2 Lithium pack, 80 V" {
		t.Errorf("%q", got)
	}
}
