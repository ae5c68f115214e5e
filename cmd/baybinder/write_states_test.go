package main

import (
	"strconv"
	"testing"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
)

// What stands in a machine's file and in a register is changed in the forms that
// new entries have; the rest of the line stays as it was.
func TestAnEntryIsChangedInAPage(t *testing.T) {
	t.Parallel()
	p := startWriting(t, rig, "machines/rig.html")
	p.press("Write")
	p.press("Change: seat")
	p.is(`document.querySelector(".write-form input").value === "seat" && document.activeElement === document.querySelector(".write-form input")`)
	p.clean("a form of an entry")
	p.tick("What holds it?", "bolt", 6)
	p.enter("What is it called?")
	p.has("machines/rig.yaml", "  seat: { name: seat, held-by: { bolt: 6 } }\n  lid: { name: lid, under: [seat] }\n")
	p.is(`document.activeElement.dataset.id === "seat" && document.querySelector(".write-said").textContent.includes("seat")`)
	p.press("Take back")
	p.has("machines/rig.yaml", "held-by: { bolt: 4 }")

	p.open(p.w.url+"procedures/job.html", 1280)
	p.press("A tool…")
	p.is(`document.querySelector(".write-form")`)
	p.answer("Or change one that is there", "13 mm socket")
	p.is(`document.querySelector(".write-form h3").textContent === "Change: 13 mm socket"`)
	p.clean("a form of a tool")
	p.answer("Where is it kept?", "bay chest")
	p.enter("Where is it kept?")
	p.has("register/tools.yaml", "socket-13: { name: 13 mm socket, kind: socket, fits: [13 mm], kept: bay chest }\n")
}

// tap touches what a name is on, in the middle, with a finger.
func (p *writer) tap(name string) {
	p.t.Helper()
	find := `[...document.querySelectorAll(".write-switch, .write button, .write summary, .write textarea")].find(e => !e.disabled && !e.closest("[inert]") && e.checkVisibility() && (e.getAttribute("aria-label") ?? e.innerText).trim().split("\n")[0] === ` + strconv.Quote(name) + `)`
	p.is(`(() => { const e = ` + find + `; e.scrollIntoView({block: "center"}); const r = e.getBoundingClientRect();
		if (r.height < 43.9 || r.width < 43.9) throw e;
		window.at = [r.x + r.width / 2, r.y + r.height / 2];
		return e.contains(document.elementFromPoint(...at)) })()`)
	at, err := chromedp.Run(p.ctx, chromedp.Evaluate[[]float64](`window.at`))
	do(p.t, err)
	for _, touch := range []input.DispatchTouchEventParams{
		{Type: input.DispatchTouchEventTypeTouchStart, TouchPoints: []*input.TouchPoint{{X: at[0], Y: at[1]}}},
		{Type: input.DispatchTouchEventTypeTouchEnd, TouchPoints: []*input.TouchPoint{}},
	} {
		_, err := chromedp.Call(p.ctx, input.DispatchTouchEvent, touch)
		do(p.t, err)
	}
}

// On a tablet, by touch alone: a step is chosen, one is written with a caution,
// a stretch is refitted.
func TestAPageIsWrittenByTouch(t *testing.T) {
	t.Parallel()
	p := startWriting(t, rig, "procedures/job.html")
	do(t, chromedp.Do(p.ctx, chromedp.EmulateViewport(820, 1180, chromedp.EmulateTouch), chromedp.Navigate(p.w.url+"procedures/job.html")))
	const file = "procedures/job.md"
	p.tap("Write")
	p.tap("Take the seat off")
	p.has(file, "2. [Take the seat off](remove:seat).")
	p.is(`document.getElementById("write-1.2") && document.querySelector(".write-beside").ariaBusy === "false"`)
	p.tap("Write it yourself")
	p.tap("A new step")
	p.is(`document.activeElement.tagName === "TEXTAREA"`)
	do(t, chromedp.Do(p.ctx, chromedp.KeyEvent("Look.")))
	p.tap("pinch point")
	p.tap("Save this step")
	p.has(file, "3. Look. Mind: [pinch point](hazard:pinch).\n")
	p.is(`document.getElementById("write-1.3") && document.querySelector(".write-beside").ariaBusy === "false"`)
	p.tap("Refit")
	p.has(file, "## Refit\n")
	p.tap("Refit everything in reverse: Strip")
	p.has(file, "1. [Refit everything in reverse](reverse:strip).\n")
}
