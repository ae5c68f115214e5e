package check

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/prove/fingerprint"
	"baybinder/generator/prove/walk"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

const revisionsHead = "procedure,revision,date,fingerprint,reason,written,checked,approved,walked,readers,words,language\n"

// issue adds a row for a procedure, or a translation of it, as it stands, and keeps
// its words.
func issue(t *testing.T, files map[string]string, id, tag string, number int, day, readers string) {
	t.Helper()
	if files["shop.yaml"] == "" {
		files["shop.yaml"] = "title: Test shop\nalso: [es]\n"
	}
	m, _ := bind.Manual(source.FromText(files))
	all := slices.Concat(m.Procedures, m.Translated)
	i := slices.IndexFunc(all, func(p *model.Procedure) bool { return p.ID == id && p.Language == tag })
	if i < 0 {
		t.Fatalf("no procedure %s", id)
	}
	p, book := all[i], fingerprint.NewCache()
	if files["revisions.csv"] == "" {
		files["revisions.csv"] = revisionsHead
	}
	files["revisions.csv"] += fmt.Sprintf("%s,%d,%s,%s,It was time.,t-04,t-07,,,%s,%s,%s\n", id, number, day, book.Of(p), readers, fingerprint.Words(p, m.Sums), tag)
	name := fmt.Sprintf("revisions/%s/%d.md", id, number)
	if tag != "" {
		name = fmt.Sprintf("revisions/%s/%d.%s.md", id, number, tag)
	}
	files[name] = fingerprint.Keep(p.File.Text, book.Form(p))
}

// toldIn are the findings in a manual as file:line:column: level: code.
func toldIn(files map[string]string, preview bool) []string {
	if files["shop.yaml"] == "" {
		files["shop.yaml"] = "title: Test shop\nalso: [es]\n"
	}
	m, unbound := bind.Manual(source.FromText(files))
	c := &Context{Manual: m, Today: model.Date{Year: 2026, Month: 11, Day: 25}, Preview: preview}
	var out []string
	for _, f := range finding.Sort(slices.Concat(unbound, walk.All(m).Findings(m), Run(c))) {
		out = append(out, strings.Replace(place(f), ": ", ": "+f.Level.String()+": ", 1))
	}
	return out
}

const (
	sweep   = "---\ntitle: Sweep\nsummary: Of the bay.\n---\nDo it in the evening.\n\n## Work\n\n1. Sweep the bay.\n2. Sweep the yard.\n3. Wipe the bench.\n"
	sweepES = "---\ntitle: Barrer\nsummary: El taller.\n---\nPor la tarde.\n\n## Trabajo\n\n1. Barra el taller.\n2. Barra el patio.\n3. Limpie el banco.\n"
	closing = "---\ntitle: Close\n---\n## Work\n\n1. [](do:sweep)\n2. [Sweep again](do:sweep)\n3. Lock the door.\n"
	people  = "person,name,roles,started,plans\nt-01,First,,2026-01-01,\nt-02,Second,,2026-01-01,\n"
)

// What is issued stays issued: "An issued procedure whose words moved is
// changed-since-issue, whatever its fingerprint"; "A translation has a fingerprint of
// its own … one that moved since is changed-since-issue at its file, one without a row
// is not judged"; "A changed callee is advice to its callers, not an unreleased change
// of theirs" (the contract, reading plans and version 4).
func TestWhatIsIssuedStaysIssued(t *testing.T) {
	const own, ownAdvice, es = "procedures/sweep.md:1:1: error: changed-since-issue", "procedures/sweep.md:1:1: advice: changed-since-issue", "procedures/sweep.es.md:1:1: error: changed-since-issue"
	const below = "procedures/close.md:6:4: advice: changed-since-issue"
	issued := func() map[string]string {
		files := map[string]string{"procedures/sweep.md": sweep, "procedures/sweep.es.md": sweepES, "procedures/close.md": closing,
			"procedures/close.es.md": "---\ntitle: Cerrar\n---\n## Trabajo\n\n1. [](do:sweep)\n2. [Barra otra vez](do:sweep)\n3. Cierre la puerta.\n"}
		issue(t, files, "sweep", "", 1, "2026-04-20", "reread")
		issue(t, files, "close", "", 1, "2026-04-21", "reread")
		issue(t, files, "sweep", "es", 1, "2026-04-22", "tell")
		return files
	}
	again := func(readers string) func(map[string]string) {
		return func(files map[string]string) {
			files["procedures/sweep.md"] = strings.Replace(sweep, "Wipe the bench", "Wipe the vice", 1)
			issue(t, files, "sweep", "", 2, "2026-05-20", readers)
		}
	}
	seen := func(day string) func(map[string]string) {
		return func(files map[string]string) {
			again("reread")(files)
			files["readings/people.csv"] = people
			files["readings/record.csv"] = "date,person,procedure,act,fingerprint,by,on,language,score,note,after\n" + day + ",t-01,close,inspected,,t-02,,,,As it should be.,\n"
		}
	}
	change := func(file, was, is string) func(map[string]string) {
		return func(files map[string]string) { files[file] = strings.Replace(files[file], was, is, 1) }
	}
	for name, c := range map[string]struct {
		change  func(map[string]string)
		preview bool
		want    []string
	}{
		"as it was":                   {func(map[string]string) {}, false, nil},
		"a step":                      {change("procedures/sweep.md", "the yard", "the gate"), false, []string{own}},
		"a step, in a preview":        {change("procedures/sweep.md", "the yard", "the gate"), true, []string{ownAdvice}},
		"the summary alone":           {change("procedures/sweep.md", "Of the bay.", "Of all the bay."), false, []string{own}},
		"prose alone":                 {change("procedures/sweep.md", "in the evening", "at night"), false, []string{own}},
		"a translation's step":        {change("procedures/sweep.es.md", "el patio", "el portal"), false, []string{es}},
		"a translation's summary":     {change("procedures/sweep.es.md", "El taller.", "Todo el taller."), false, []string{es}},
		"in a preview":                {change("procedures/sweep.es.md", "El taller.", "Todo el taller."), true, []string{strings.Replace(es, "error", "advice", 1)}},
		"a translation without a row": {change("procedures/close.es.md", "la puerta", "el portal"), false, nil},
		"of what is no longer published": {func(files map[string]string) {
			change("procedures/sweep.md", "summary:", "status: draft\nsummary:")(files)
			change("procedures/sweep.es.md", "el patio", "el portal")(files)
			change("procedures/close.md", "(do:sweep)", "(see:sweep)")(files)
		}, false, []string{"procedures/close.md:1:1: error: changed-since-issue"}},
		"a callee, to be read again": {again("reread"), false, []string{below}},
		"a callee, to be told of":    {again("tell"), false, []string{below}},
		"a callee, of no concern":    {again("none"), false, nil},
		"a callee that is not issued": {func(files map[string]string) {
			again("reread")(files)
			change("procedures/sweep.md", "the yard", "the gate")(files)
		}, false, []string{own}},
		"inspected since":  {seen("2026-05-20"), false, nil},
		"inspected before": {seen("2026-05-19"), false, []string{below}},
	} {
		files := issued()
		c.change(files)
		got := slices.DeleteFunc(toldIn(files, c.preview), func(line string) bool { return !strings.HasSuffix(line, ": changed-since-issue") })
		if !slices.Equal(got, c.want) {
			t.Errorf("%s: told %q, want %q", name, got, c.want)
		}
	}
}

// Of many changes the first are told, and that there are more.
func TestOfManyChangesTheFirstAreTold(t *testing.T) {
	for _, c := range []struct {
		changes [][2]string
		more    bool
	}{
		{[][2]string{{"the yard", "the gate"}, {"the bench", "the vice"}}, false},
		{[][2]string{{"the bay.\n2", "the hall.\n2"}, {"the yard", "the gate"}, {"the bench", "the vice"}}, true},
	} {
		files := map[string]string{"shop.yaml": "title: Test shop\n", "procedures/sweep.md": sweep}
		issue(t, files, "sweep", "", 1, "2026-04-20", "reread")
		for _, to := range c.changes {
			files["procedures/sweep.md"] = strings.Replace(files["procedures/sweep.md"], to[0], to[1], 1)
		}
		found := findIn(files)
		if len(found) != 1 || strings.HasSuffix(found[0].Message, "; and more") != c.more {
			t.Errorf("%v: told %v", c.changes, found)
		}
	}
}

// otherThanIssued are the cases in which what is wrong can be read, and is another than
// what was issued: amounts that say nothing, and what is no longer there.
var otherThanIssued = map[string]bool{
	"callee, amount of a supply": true, "part, no count": true, "part, nothing held": true, "fluid, capacity in kg": true,
	"hold, limit": true, "hold, no limit": true, "wait, no time": true, "supply, unit": true,
}

// What could not be read is not known to be another than what was issued: each case
// has the one finding at the cause, where all procedures of the manual are issued too
// ("silences every finding that rests on it", the contract).
func TestUnreadOfWhatIsIssued(t *testing.T) {
	issued := unreadManual(t)
	m, _ := bind.Manual(source.FromText(maps.Clone(issued)))
	for _, p := range m.Procedures {
		issue(t, issued, p.ID, "", 1, "2026-04-20", "reread")
	}
	cases := slices.DeleteFunc(slices.Clone(unreadCases), func(c unreadCase) bool { return otherThanIssued[c.name] })
	spoilEach(t, append(cases, unreadCase{name: "nothing", file: "shop.yaml"}), func() map[string]string { return maps.Clone(issued) })
}
