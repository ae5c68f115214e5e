package main

import (
	"testing"

	"github.com/chromedp/chromedp"
)

// Two windows write the same step, and then each a new one: whoever saves second
// is refused and shown both versions, and can go on with what was written.
func TestTwoWindowsWriteTheSame(t *testing.T) {
	t.Parallel()
	const file = "procedures/job.md"
	second := startWriting(t, rig, "procedures/job.html")
	first := &writer{tab: openBrowser(t), w: second.w, axe: second.axe}
	first.open(first.w.url+"procedures/job.html", 1280)
	both := []*writer{first, second}
	for _, p := range both {
		p.press("Write")
		p.press("Write here: step 1.1")
	}
	first.write("Step 1.1 as it is written", "Sweep the bench with the broom.")
	second.write("Step 1.1 as it is written", "Wipe the bench.")
	refused := func(theirs, mine, text string) {
		t.Helper()
		first.press("Save this step")
		first.has(file, text)
		second.press("Save this step")
		second.is(`document.querySelectorAll(".write-clash pre").length === 2 && document.activeElement === document.querySelector(".write-clash")`)
		if got := second.get(`[...document.querySelectorAll(".write-clash pre")].map(e => e.textContent).join(" | ")`); got != theirs+" | "+mine {
			t.Errorf("it shows %q", got)
		}
		second.has(file, text)
	}
	refused("Sweep the bench with the broom.", "Wipe the bench.", "1. Sweep the bench with the broom.\n")
	second.press("Go on with mine")
	second.is(`document.activeElement.tagName === "TEXTAREA" && document.activeElement.value === "Wipe the bench."`)
	second.press("Save this step")
	second.has(file, "1. Wipe the bench.\n")
	second.press("Take back") // what the first wrote was not lost either
	second.has(file, "1. Sweep the bench with the broom.\n")
	second.is(`document.getElementById("write-1.1").textContent.includes("broom") && document.querySelector(".write-beside").ariaBusy === "false"`)

	do(t, chromedp.Do(first.ctx, chromedp.Reload()))
	for _, p := range both {
		p.is(`document.getElementById("write-1.1").textContent.includes("broom") && document.querySelector(".write-beside").ariaBusy === "false"`)
		p.press("Write it yourself")
	}
	first.write("A new step", "Look at the lid.")
	second.write("A new step", "Look at the seat.")
	first.press("Save this step")
	first.has(file, "2. Look at the lid.\n")
	second.press("Save this step")
	second.is(`document.querySelector(".write-clash")?.textContent.includes("Look at the lid.") && document.querySelector(".write-clash").textContent.includes("Look at the seat.")`)
	second.press("Go on with mine")
	second.press("Save this step")
	second.has(file, "2. Look at the lid.\n3. Look at the seat.\n")
}

// Where the program answers no more, that is said, and what was written stays; in
// no dialog has axe-core anything to say.
func TestTheProgramAnswersNoMore(t *testing.T) {
	t.Parallel()
	p := startWriting(t, rig, "procedures/job.html")
	p.press("Write")
	p.press("Write here: step 1.1")
	for _, dialog := range []string{"A time…", "A picture…", "Move…"} {
		p.press(dialog)
		p.is(`document.querySelector(".write-pen .write-small")`)
		p.clean(dialog)
	}
	for _, dialog := range []string{"A hazard…", "A stop or a check…", "A supply…", "A role…"} {
		p.press(dialog)
		p.is(`document.querySelector(".write-form")`)
		p.clean(dialog)
		p.is(`(document.querySelector(".write-form .write-keys button:last-child").click(), !document.querySelector(".write-form"))`)
	}
	p.write("Step 1.1 as it is written", "Sweep the yard.")
	p.w.interrupt()
	p.press("Save this step")
	p.is(`document.querySelector(".write-said.alarm")?.textContent.includes("does not answer") && document.querySelector(".write-pen textarea").value === "Sweep the yard."`)
	p.clean("without an answer")
}
