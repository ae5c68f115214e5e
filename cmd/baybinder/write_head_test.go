package main

import (
	"maps"
	"testing"
	"testing/fstest"

	"github.com/chromedp/chromedp"
)

// What a procedure finds is chosen under its title, thing by thing, and changed
// there; the rest of its front matter too.
func TestAHeadIsWrittenInAPage(t *testing.T) {
	t.Parallel()
	p := startWriting(t, rig, "procedures/job.html")
	const file = "procedures/job.md"
	p.press("Write")
	p.press("Rig · whole, closed, full and on")
	p.press("Change: How the machine is found")
	p.is(`document.querySelector(".write-found-as select")`)
	p.clean("how it is found")
	add := func(label string) {
		t.Helper()
		p.is(`(() => { const add = document.querySelector('[aria-label="What else is not as usual"]'), o = [...add.options].find(o => o.text === "` + label + `"); add.value = o.value; return true })()`)
		p.press("Add")
	}
	add("lid")
	add("bolt")
	p.is(`document.querySelectorAll(".write-found-as .write-option").length === 2`)
	p.clean("two things that are found otherwise")
	p.press("Take out: bolt")
	p.press("Do it")
	p.has(file, "expects: { lid: off }\n")
	p.is(`document.querySelector(".write-about > summary").textContent === "Rig · lid: off" && document.querySelector(".write-about").open`)
	p.press("Change: What it is for")
	p.is(`document.querySelector(".write-about textarea, .write-about input")`)
	p.clean("a field of the head")
	p.write("What it is for", "Sweep it")
	p.press("Do it")
	p.has(file, "summary: Sweep it\n")
	p.press("Take back")
	p.press("Take back")
	p.is(`document.querySelector(".write-about > summary").textContent.includes("whole")`)
	p.has(file, "title: Job\nfor: rig\nstatus: draft\n---\n")
}

// A name in the files is changed in the form of an entry, and at the head of a
// procedure: the page follows.
func TestANameInTheFilesIsChangedInAPage(t *testing.T) {
	t.Parallel()
	manual := fstest.MapFS{}
	maps.Copy(manual, rig)
	manual["procedures/job.md"] = &fstest.MapFile{Data: []byte("---\ntitle: Job\nfor: rig\nstatus: draft\n---\n\n## Strip\n\n1. [Take the seat off](remove:seat).\n")}
	p := startWriting(t, manual, "machines/rig.html")
	p.press("Write")
	p.press("Change: seat")
	p.is(`document.querySelector("form.write-form, .write-form, form")`)
	p.clean("the form of a part")
	p.press("Rename: Name in the files: seat")
	p.is(`document.activeElement.value === "seat"`)
	p.clean("another name in the files")
	p.write("Rename: Name in the files: seat", "Big seat")
	p.press("Do it")
	p.has("procedures/job.md", "(remove:big-seat)")
	p.has("machines/rig.yaml", "under: [big-seat]")
	p.is(`document.querySelector(".write-said").textContent === "It is called big-seat in the files now, at 3 places in 2 files."`)

	p.open(p.w.url+"procedures/job.html", 1280)
	p.is(`document.querySelector(".write-about")`)
	p.press("Rig · whole, closed, full and on")
	p.press("Rename: Name in the files: job")
	p.write("Rename: Name in the files: job", "lid")
	do(t, chromedp.Do(p.ctx, chromedp.KeyEvent("\r")))
	p.has("procedures/lid.md", "was: [job]")
	p.is(`location.pathname === "/procedures/lid.html" && document.querySelector(".write h1")?.textContent === "Job"`)
	p.press("Take back")
	p.is(`location.pathname === "/procedures/job.html" && document.querySelector(".write h1")?.textContent === "Job"`)
	p.press("Take back")
	p.has("procedures/job.md", "(remove:seat)")
}
