package main

import "testing"

// In no form of a machine's file has axe-core anything to say, a refused one too.
func TestTheFormsOfAMachineAreAccessible(t *testing.T) {
	t.Parallel()
	p := startWriting(t, rig, "machines/rig.html")
	p.press("Write")
	p.is(`document.querySelector(".write-section")`)
	p.clean("a machine")
	for _, form := range []string{"A point where energy is cut", "An energy", "A fastener", "A part", "A fluid", "A setting", "Change: bolt"} {
		p.press(form)
		p.is(`document.querySelector(".write-form")`)
		p.clean(form)
		p.press("Close")
		p.is(`!document.querySelector(".write-form")`)
	}
	p.press("An energy")
	p.enter("What is it called?")
	p.is(`document.querySelector(".write-form .write-said")?.textContent.length > 0`)
	p.clean("an entry without a name")
	p.press("Close")
	p.is(`!document.querySelector(".write-form")`)
	p.press("Rename: Name in the files: rig")
	p.is(`document.activeElement.value === "rig"`)
	p.clean("another name of a machine in the files")
}

// At a procedure's head neither: its title, its machine, its name in the files,
// and a name that is taken.
func TestTheHeadsFormsAreAccessible(t *testing.T) {
	t.Parallel()
	p := startWriting(t, rig, "procedures/job.html")
	p.press("Write")
	p.press("Rename: The title")
	p.is(`document.activeElement.value === "Job"`)
	p.clean("another title")
	p.press("Close")
	p.press("Rig · whole, closed, full and on")
	p.press("Change: Machine")
	p.is(`document.querySelector(".write-about select")`)
	p.clean("another machine")
	p.press("Close")
	p.press("Rename: Name in the files: job")
	p.is(`document.activeElement.value === "job"`)
	p.clean("another name in the files")
	p.write("Rename: Name in the files: job", "???")
	p.press("Do it")
	p.is(`document.querySelector(".write-about .write-said")?.textContent.length > 0`)
	p.clean("a name that is refused")
}
