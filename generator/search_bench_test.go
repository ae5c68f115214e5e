package generator_test

import (
	"context"
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"github.com/chromedp/chromedp"

	"baybinder/generator"
	"baybinder/generator/bigmanual"
	"baybinder/generator/show/search"
)

// typing types a query key by key into the search of a page that was just
// opened, and does at its end what the page does when no key comes for a while.
// It gives, for each key, the ms until
// the result stood below it; the files of the index that were read; and the
// time that a script tag with nothing in it takes on this machine.
const typing = `(async (query) => {
	const input = document.querySelector('#search input'), box = input.parentElement, keys = [];
	let text = '';
	const floor = performance.now();
	await new Promise((done) => { const s = document.createElement('script'); s.onload = done; s.src = 'search/nothing.js'; document.head.append(s); });
	const nothing = performance.now() - floor;
	input.focus();
	let rest = () => {};
	const later = window.setTimeout;
	window.setTimeout = (what, ms, ...args) => { rest = () => what(...args); };
	for (const c of query) {
		text += c;
		const shown = new Promise((done) => { const o = new MutationObserver(() => { o.disconnect(); done(); }); o.observe(box, { childList: true, subtree: true, characterData: true }); });
		const from = performance.now();
		input.value = text;
		input.dispatchEvent(new Event('input'));
		await shown;
		keys.push(performance.now() - from);
	}
	window.setTimeout = later;
	await rest();
	const files = [...document.querySelectorAll('script[src*="search/"]')].map((s) => s.getAttribute('src')).filter((s) => !s.includes('nothing'));
	return JSON.stringify({ keys, nothing, files, hits: box.querySelectorAll('.hits li').length });
})(`

// typed is what typing gives.
type typed struct {
	Keys    []float64
	Nothing float64
	Files   []string
	Hits    int
	KB      float64
}

// typeQuery types a query into the search page of a site.
func typeQuery(t testing.TB, ctx context.Context, site, query string) typed {
	t.Helper()
	must(t, chromedp.Do(ctx, chromedp.EmulateViewport(1280, 900), chromedp.Navigate("file://"+filepath.Join(site, "search.html"))))
	quoted, err := json.Marshal(query)
	must(t, err)
	var v typed
	must(t, json.Unmarshal([]byte(js[string](t, ctx, typing+string(quoted)+")")), &v))
	for _, name := range v.Files {
		info, err := os.Stat(filepath.Join(site, filepath.FromSlash(name)))
		must(t, err)
		v.KB += float64(info.Size()) / 1024
	}
	return v
}

// indexed builds the demo's site and gives it another index.
func indexed(t testing.TB, files map[string][]byte) string {
	t.Helper()
	site := demoAgain(t)
	must(t, os.RemoveAll(filepath.Join(site, "search")))
	must(t, os.Mkdir(filepath.Join(site, "search"), 0o755))
	for name, data := range files {
		must(t, os.WriteFile(filepath.Join(site, "search", name), data, 0o644))
	}
	return site
}

// wideQueries are words of bigmanual's vocabulary: often said, seldom said,
// two at once, begun only, with a slip.
var wideQueries = []string{"pumpumpum", "zedzedsel", "rapumpum vespumpum", "lotikpum barmonsel", "pumpumqu", "rqpumpum", "mon"}

// TestAQueryTypedReadsLittle types queries key by key at 10,000 procedures:
// all keys together read at most the design's 300 KB.
func TestAQueryTypedReadsLittle(t *testing.T) {
	t.Parallel()
	site := indexed(t, search.Collect("en", bigmanual.Documents(10000, 1), nil).Files())
	must(t, os.WriteFile(filepath.Join(site, "search", "nothing.js"), nil, 0o644))
	ctx, _ := browser(t)
	for _, q := range wideQueries {
		v := typeQuery(t, ctx, site, q)
		t.Logf("%q: %.0f KB in %d files, %d hits", q, v.KB, len(v.Files), v.Hits)
		if v.KB > 300 {
			t.Errorf("%q reads %.0f KB", q, v.KB)
		}
		if v.Hits == 0 {
			t.Errorf("%q finds nothing", q)
		}
	}
}

// The benchmark types queries at 10,000 procedures and reports the ms from a
// key to its first result (the middle one and the slowest of all keys, each
// query on a page just opened), the KB that the dearest query reads, and the
// ms that an empty script tag takes:
//
//	go test ./generator -run '^$' -bench Search -benchtime 3x
func BenchmarkSearch(b *testing.B) {
	b.Run("wide", func(b *testing.B) {
		benchmarkSearch(b, indexed(b, search.Collect("en", bigmanual.Documents(10000, 1), nil).Files()), wideQueries)
	})
	b.Run("manual", func(b *testing.B) {
		from, to := b.TempDir(), filepath.Join(b.TempDir(), "site")
		must(b, bigmanual.Write(from, 10000, 1))
		_, err := generator.Build(generator.Options{Manual: from, To: to, Today: demoDay})
		must(b, err)
		benchmarkSearch(b, to, []string{"job 02345", "pump", "seat tool 17", "joint dry", "hazrad"})
	})
}

func benchmarkSearch(b *testing.B, site string, queries []string) {
	must(b, os.WriteFile(filepath.Join(site, "search", "nothing.js"), nil, 0o644))
	ctx, _ := browser(b)
	typeQuery(b, ctx, site, queries[0]) // the browser has started
	var keys, nothing []float64
	most := 0.0
	for b.Loop() {
		for _, q := range queries {
			v := typeQuery(b, ctx, site, q)
			keys, nothing, most = append(keys, v.Keys...), append(nothing, v.Nothing), max(most, v.KB)
		}
	}
	slices.Sort(keys)
	slices.Sort(nothing)
	b.ReportMetric(keys[len(keys)/2], "ms/key")
	b.ReportMetric(keys[len(keys)*95/100], "ms/key-95%")
	b.ReportMetric(keys[len(keys)-1], "ms/key-slowest")
	b.ReportMetric(nothing[len(nothing)/2], "ms/empty-script")
	b.ReportMetric(most, "KB/query")
	b.ReportMetric(0, "ns/op")
}
