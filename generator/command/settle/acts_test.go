package settle

import (
	"os"
	"regexp"
	"strings"
	"testing"

	"golang.org/x/tools/txtar"
	"pgregory.net/rapid"

	"baybinder/generator/base/finding"
	"baybinder/generator/check"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/source"
)

// mixer is the small manual that the twenty texts are read with.
func mixer(t testing.TB) []txtar.File {
	archive, err := txtar.ParseFile("../../read/jotting/testdata/shops/mixer.txt")
	if err != nil {
		t.Fatal(err)
	}
	return archive.Files
}

const job = "procedures/job.md"

// steps are sentences of a job, some with links already, of which links can be
// made, and such as must stay words.
var sentences = []string{
	"Switch off at the mixer isolator and lock it.", "[Switch off](isolate:mixer-isolator) and put your padlock on it.", "Undo the cover screws with the 8 mm socket.",
	"[Take the rear cover off](remove:rear-cover).", "Take the rear cover off. [mains](hazard:mains-shock)", "[Prove the mains supply dead](prove:mains). [mains dead](hold:mains-dead)",
	"Prove the mains supply dead. [mains dead](hold:mains-dead)", "Loosen the tension bolt; take the old drive belt off.", "Put the new drive belt on.", "Tighten the tension bolt to 45 N·m with the 17 mm spanner.",
	"Refit the rear cover and tighten the cover screws.", "[Refit in reverse](reverse:strip)", "Unlock the mixer isolator, then switch the mixer isolator on.", "Remove the lock.",
	"Do not remove the bowl guard.", "If it squeaks, tighten the motor bolts.", "Remove the **rear cover**\n   with the lamp.", "Put the drip tray under it.", "Take the drip tray away.", "Drain the gearbox oil.",
	"Fill the gearbox oil with 1.2 L gear oil.", "`Remove the rear cover.`", "Remove the motor bracket.", "Remove *the rear cover*.", "See https://example.com/rear cover", "Wipe with a lint-free rag.\n\n   [Because](why:) you remove the rear cover.",
}

func drawnJob(t *rapid.T) string {
	var b strings.Builder
	b.WriteString("---\ntitle: Job\nfor: dough-mixer\n" + rapid.SampledFrom([]string{"", "status: draft\n", "tools: [socket-8]\n"}).Draw(t, "front") + "---\n")
	for _, phase := range []string{"Strip", "Refit"} {
		b.WriteString("\n## " + phase + "\n\n")
		for _, s := range rapid.SliceOfN(rapid.SampledFrom(sentences), 1, 4).Draw(t, phase) {
			b.WriteString("1. " + s + "\n")
		}
	}
	return b.String()
}

// typed is a link of a kind of the manual, with its words.
var typed = regexp.MustCompile(`\[([^\]]*)\]\([a-z-]+:[a-z0-9-]*\)`)

// bare is the body of a procedure with its links' words alone.
func bare(text string) string {
	_, body, _ := strings.Cut(text, "\n---\n")
	return typed.ReplaceAllString(body, "$1")
}

func errorsOf(t *rapid.T, dir string) map[string]int {
	tree, err := source.Read(dir)
	if err != nil {
		t.Fatal(err)
	}
	m, found := bind.Manual(tree)
	out := map[string]int{}
	for _, f := range append(found, check.Run(&check.Context{Manual: m, Today: today})...) {
		if f.Level == finding.Error {
			out[f.Code]++
		}
	}
	return out
}

// TestActsPutInLinksAndNothingElse: whatever a procedure says, no word of it
// changes, there are no more errors of any code, every link that was there is
// there, and a second time there is nothing to do.
func TestActsPutInLinksAndNothingElse(t *testing.T) {
	shop := mixer(t)
	made := 0
	rapid.Check(t, func(rt *rapid.T) {
		dir, err := os.MkdirTemp("", "acts")
		if err != nil {
			rt.Fatal(err)
		}
		defer os.RemoveAll(dir)
		for _, f := range shop {
			writeTo(rt, dir, f.Name, f.Data)
		}
		before := drawnJob(rt)
		writeTo(rt, dir, job, []byte(before))
		had := errorsOf(rt, dir)
		if _, err := Run(Options{Manual: dir, Today: today, Acts: true}); err != nil {
			rt.Fatal(err)
		}
		after := readFrom(rt, dir, job)
		if bare(after) != bare(before) {
			rt.Fatalf("%s\nbecame\n%s", before, after)
		}
		for _, link := range typed.FindAllString(before, -1) {
			if !strings.HasPrefix(link, "[](") && strings.Count(after, link) < strings.Count(before, link) {
				rt.Fatalf("%s is gone\n%s", link, after)
			}
		}
		for code, n := range errorsOf(rt, dir) {
			if n > had[code] {
				rt.Fatalf("%d errors %s, before %d\n%s\nbecame\n%s", n, code, had[code], before, after)
			}
		}
		made += len(typed.FindAllString(after, -1)) - len(typed.FindAllString(before, -1))
		changes, err := Run(Options{Manual: dir, Today: today, Acts: true})
		if again := readFrom(rt, dir, job); err != nil || again != after {
			rt.Fatalf("a second time (%v, %s)\n%s\nbecame\n%s", err, told(changes), after, again)
		}
	})
	if made == 0 {
		t.Error("no link was ever made")
	}
}

// A strip whose words are certain becomes links, and the lists follow; what has
// an error with its link stays words, and is told.
func TestActs(t *testing.T) {
	dir := t.TempDir()
	for _, f := range mixer(t) {
		writeTo(t, dir, f.Name, f.Data)
	}
	writeTo(t, dir, job, []byte(`---
title: Job
for: dough-mixer
---
## Work

1. Take the bowl guard off with the 8 mm socket.
2. Put the guard back, then refit the bowl guard and tighten the guard screws.
3. Take the motor out.
`))
	changes, err := Run(Options{Manual: dir, Today: today, Acts: true})
	if err != nil {
		t.Fatal(err)
	}
	want := `---
title: Job
for: dough-mixer
tools: [socket-8]
---
## Work

1. [Take the bowl guard off](remove:bowl-guard) with the [8 mm socket](tool:socket-8).
2. Put the guard back, then [refit the bowl guard](refit:bowl-guard) and tighten the guard screws.
3. Take the motor out.
`
	if got := readFrom(t, dir, job); got != want {
		t.Errorf("it is\n%s\nsaid %s", got, told(changes))
	}
}
