package generator_test

import (
	"fmt"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"baybinder/generator"
	"baybinder/generator/bigmanual"
)

// mostPage is what a page may weigh as it stands in the folder, in bytes; the
// front of a large manual may weigh twice as much. A kB is 1,024 bytes, as it is
// for the script and the style.
const mostPage, mostFront = 100 << 10, 200 << 10

// TestPagesAreLight weighs every page of the demo.
func TestPagesAreLight(t *testing.T) {
	t.Parallel()
	all := pages(t, demoSite(t))
	for name, data := range all {
		if path.Ext(name) == ".html" && len(data) > mostPage {
			t.Errorf("%s weighs %d bytes; %d are allowed", name, len(data), mostPage)
		}
	}
	if len(all["labels-2.html"]) == 0 {
		t.Error("the labels are one page")
	}
}

// largeSite is the site of a manual of n procedures, which no error stops.
func largeSite(t *testing.T, n int) map[string][]byte {
	t.Helper()
	from, to := filepath.Join(t.TempDir(), "manual"), filepath.Join(t.TempDir(), "site")
	must(t, bigmanual.Write(from, n, 1))
	r, err := generator.Build(generator.Options{Manual: from, To: to, Today: demoDay})
	must(t, err)
	if r.Stopped() {
		t.Fatalf("nothing was published: %v", r.Findings)
	}
	return pages(t, to)
}

// TestTheFrontOfALargeManual: the front grows with the machines and what is
// done on them, and not with the number of procedures; the writer's list is in
// parts, each light, and nothing of it is lost.
func TestTheFrontOfALargeManual(t *testing.T) {
	t.Parallel()
	sizes := map[int]int{}
	for _, n := range []int{300, 1500} {
		all := largeSite(t, n)
		sizes[n] = len(all["index.html"])
		for name, data := range all {
			if strings.HasPrefix(name, "snags") && len(data) > mostPage {
				t.Errorf("%d procedures: %s weighs %d bytes", n, name, len(data))
			}
		}
	}
	if sizes[1500] > mostFront || sizes[1500] > sizes[300]*11/10 {
		t.Errorf("the front weighs %d bytes at 300 procedures and %d at 1,500", sizes[300], sizes[1500])
	}
}

// TestListsOfALargeManualAreInParts: what every procedure uses, and a machine
// that all procedures are for, are light pages; each procedure stands on exactly
// one page of each list, and each page leads to all others.
func TestListsOfALargeManualAreInParts(t *testing.T) {
	t.Parallel()
	const n = 800
	all := largeSite(t, n)
	for name, data := range all {
		if strings.HasSuffix(name, ".html") && len(data) > mostPage && name != "index.html" {
			t.Errorf("%s weighs %d bytes", name, len(data))
		}
	}
	job := regexp.MustCompile(`<li><a href="[./]*procedures/(job-\d+)\.html"`)
	for _, list := range []string{"tools/socket-10.html tools/socket-10.uses-*.html", "machines/rig.procedures.html machines/rig.procedures-*.html"} {
		on, parts := map[string]int{}, 0
		for name, data := range all {
			if !slices.ContainsFunc(strings.Fields(list), func(glob string) bool { is, _ := path.Match(glob, name); return is }) {
				continue
			}
			parts++
			for _, m := range job.FindAllStringSubmatch(string(data), -1) {
				on[m[1]]++
			}
		}
		links := strings.Count(string(all[strings.Fields(list)[0]]), "<ol><li><a href") // the ways to the parts
		if len(on) != n || parts < 3 || links == 0 {
			t.Errorf("%s: %d procedures on %d pages, %d ways to them", list, len(on), parts, links)
		}
		for id, times := range on {
			if times != 1 {
				t.Errorf("%s: %s stands there %d times", list, id, times)
			}
		}
	}
	for _, m := range regexp.MustCompile(`href="[./]*(machines/rig\.procedures[^"#]*)#([a-z-]+)"`).FindAllStringSubmatch(string(all["machines/rig.html"]), -1) {
		if !strings.Contains(string(all[m[1]]), `id="`+m[2]+`"`) {
			t.Errorf("the machine's page leads to %s#%s, which is not there", m[1], m[2])
		}
	}
}

// TestIndexesOfALargeShopAreInParts: with 500 tools, supplies and hazards, with
// units, signs and dates of calibration, every page of an index is light; a tool
// stands once by its kind and once by its shelf, others once; each page leads to
// all parts, and "by shelf" leads to where that order begins. The numbers of
// entries are those of design.md, supplies and hazards as many as tools.
func TestIndexesOfALargeShopAreInParts(t *testing.T) {
	t.Parallel()
	const n = 500
	var tools, supplies, hazards strings.Builder
	for i := range n {
		fmt.Fprintf(&tools, "tool-%d: { name: wrench number %d, kind: torque-wrench, kept: drawer %d, calibration: { every: 12 months, last: 2026-01-15 } }\n", i, i, i%40)
		fmt.Fprintf(&supplies, "supply-%d: { name: oil number %d, unit: L, kept: cabinet %d }\n", i, i, i%40)
		fmt.Fprintf(&hazards, "hazard-%d: { name: a danger by the number %d, nature: Charge., symbol: W012, harm: death, happens: will, consequence: Death., avoid: [Do not touch.] }\n", i, i)
	}
	all := pages(t, smallSite(t, map[string]string{
		"shop.yaml": "title: Shop\n", "register/tools.yaml": tools.String(), "register/supplies.yaml": supplies.String(), "register/hazards.yaml": hazards.String(),
	}))
	for _, list := range []struct {
		folder, entry string
		times         int
	}{{"tools", "tool", 2}, {"supplies", "supply", 1}, {"hazards", "hazard", 1}} {
		on, names := map[string]int{}, []string{}
		entry := regexp.MustCompile(`href="(?:\.\./` + list.folder + `/)?(` + list.entry + `-\d+)\.html"`)
		for name, data := range all {
			if is, _ := path.Match(list.folder+"/index*.html", name); !is {
				continue
			}
			names = append(names, path.Base(name))
			if len(data) > mostPage {
				t.Errorf("%s weighs %d bytes; %d are allowed", name, len(data), mostPage)
			}
			for _, m := range entry.FindAllStringSubmatch(string(data), -1) {
				on[m[1]]++
			}
		}
		if len(on) != n || len(names) < 2 {
			t.Errorf("%s: %d entries on %d pages", list.folder, len(on), len(names))
		}
		for id, times := range on {
			if times != list.times {
				t.Errorf("%s: %s stands there %d times, not %d", list.folder, id, times, list.times)
			}
		}
		for _, from := range names {
			for _, to := range names {
				if !strings.Contains(string(all[list.folder+"/"+from]), `<a href="`+to+`"`) {
					t.Errorf("%s/%s does not lead to %s", list.folder, from, to)
				}
			}
		}
	}
	for _, m := range regexp.MustCompile(`href="(index[^"#]*)#(first|second)"`).FindAllStringSubmatch(string(all["tools/index.html"]), -1) {
		if !strings.Contains(string(all["tools/"+m[1]]), `id="`+m[2]+`"`) {
			t.Errorf("the tools lead to %s#%s, which is not there", m[1], m[2])
		}
	}
	if !strings.Contains(string(all["tools/index.html"]), "#second") {
		t.Error("nothing leads from the tools by kind to the tools by shelf")
	}
}

// TestAPageGrowsWithItsSteps: a page on which everything comes off, part by
// part, and goes back, is twice as heavy with twice as many parts, and no more:
// where things stand is not told whole at each step.
func TestAPageGrowsWithItsSteps(t *testing.T) {
	t.Parallel()
	weight := func(n int) float64 {
		machine, steps := "name: Rig\nparts:\n", ""
		for i := range n {
			machine += fmt.Sprintf("  part-%d: { name: part number %d }\n", i, i)
			steps += fmt.Sprintf("%d. [Take part number %d off](remove:part-%d).\n", i+1, i, i)
		}
		all := pages(t, smallSite(t, map[string]string{
			"shop.yaml": "title: Shop\n", "machines/rig.yaml": machine,
			"procedures/all.md": "---\ntitle: All\nfor: rig\n---\n\n## Strip\n\n" + steps + "\n## Refit\n\n1. [Refit in reverse](reverse:strip).\n",
		}))
		return float64(len(all["procedures/all.html"]))
	}
	base, small, large := weight(1), weight(100), weight(200)
	if grown := (large - base) / (small - base); grown > 2.05 {
		t.Errorf("a page of 100 parts weighs %.0f bytes, one of 200 %.2f times as much", small, grown)
	}
}

// TestTheWritersListInParts: a manual with many findings has each of them on
// one page of the list, and every page leads to all.
func TestTheWritersListInParts(t *testing.T) {
	t.Parallel()
	files := map[string]string{"shop.yaml": "title: Shop\n"}
	for i := range 60 {
		files[fmt.Sprintf("procedures/job-%d.md", i)] = fmt.Sprintf("---\ntitle: Job %d\n---\n## Work\n\n", i) + strings.Repeat("1. Rinse the floor as needed.\n", 10)
	}
	all := pages(t, smallSite(t, files))
	told := regexp.MustCompile(`procedures/(job-\d+\.md:\d+):\d+</code>\s*[^[]*\[vague\]`)
	var lines []string
	parts := 0
	for name, data := range all {
		if !strings.HasPrefix(name, "snags") {
			continue
		}
		parts++
		for _, m := range told.FindAllStringSubmatch(string(data), -1) {
			lines = append(lines, m[1])
		}
		if n := strings.Count(string(data), `aria-current="page"`); n != 2 {
			t.Errorf("%s says %d times which part it is", name, n)
		}
		if !strings.Contains(string(data), `snags.html" aria-current="true"`) {
			t.Errorf("%s does not stand under its tab", name)
		}
	}
	slices.Sort(lines)
	if n := len(lines); parts < 3 || n != 600 || len(slices.Compact(lines)) != 600 {
		t.Errorf("%d parts have %d findings", parts, n)
	}
}
