package main

import (
	"bytes"
	"image/jpeg"
	"os"
	"strconv"
	"testing"
	"testing/fstest"

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

// The strip at the foot covers nothing of what can be chosen, once one scrolls
// to it.
func TestTheStripCoversNoOffer(t *testing.T) {
	t.Parallel()
	p := startWriting(t, rig, "procedures/job.html")
	p.press("Write")
	p.is(`document.querySelector(".write-groups section button") && document.querySelector(".write-beside").ariaBusy === "false"`)
	for _, size := range [][2]int64{{1366, 900}, {1366, 600}, {820, 1180}, {390, 800}} {
		do(t, chromedp.Do(p.ctx, chromedp.EmulateViewport(size[0], size[1])))
		p.get(twoFrames) // the page has answered to its size
		if size[0] > 1200 {
			p.run(`scrollTo(0, 0)`)
			p.is(`document.querySelector(".write-beside").getBoundingClientRect().bottom <= document.querySelector(".emergency").getBoundingClientRect().top`)
		}
		covered := p.get(`(() => { const strip = document.querySelector(".emergency");
			return [...document.querySelectorAll(".write-beside button, .write-beside summary, .write-new button")].filter(e => {
				e.scrollIntoView({block: "nearest"});
				e.focus();
				const r = e.getBoundingClientRect();
				return e.checkVisibility() && (r.bottom > strip.getBoundingClientRect().top || !e.contains(document.elementFromPoint(r.x + r.width / 2, r.bottom - 3)));
			}).map(e => e.innerText).join("; ") })()`)
		if covered != "" {
			t.Errorf("at %d × %d the strip covers %s", size[0], size[1], covered)
		}
	}
}

// A picture that is dropped on a step comes into its folder, small enough for
// the bay, and stands in the step.
func TestAPictureIsDropped(t *testing.T) {
	t.Parallel()
	p := startWriting(t, rig, "procedures/job.html")
	p.press("Write")
	p.press("Write here: step 1.1")
	p.is(`!!document.querySelector(".write-pen textarea")`)
	p.is(`(async () => { const picture = new OffscreenCanvas(3200, 2000);
		const on = picture.getContext("2d"); on.fillStyle = "#36c"; on.fillRect(0, 0, 3200, 1000);
		const data = new DataTransfer(); data.items.add(new File([await picture.convertToBlob({type: "image/png"})], "bench.png", {type: "image/png"}));
		for (const kind of ["dragover", "drop"]) document.querySelector(".write-pen textarea").dispatchEvent(new DragEvent(kind, {dataTransfer: data, bubbles: true, cancelable: true}));
		window.dropped = true })() && true`)
	p.is(`document.querySelector(".write-small")?.textContent.includes("bench.png")`)
	p.clean("a dropped picture")
	p.write("What does it show?", "The swept bench")
	p.press("Do it")
	p.is(`document.querySelector(".write-pen textarea").value.includes("![The swept bench](../pictures/the-swept-bench.jpg)")`)
	p.is(`document.querySelector(".write-stands img[alt='The swept bench']")`)
	p.clean("a step with its picture")
	p.press("Save this step")
	p.has("procedures/job.md", "1. Sweep the bench.\n\n   ![The swept bench](../pictures/the-swept-bench.jpg)\n")
	data, err := os.ReadFile(p.w.path("pictures/the-swept-bench.jpg"))
	do(t, err)
	size, err := jpeg.DecodeConfig(bytes.NewReader(data))
	if err != nil || size.Width != 1600 || size.Height != 1000 {
		t.Errorf("it is %d × %d: %v", size.Width, size.Height, err)
	}
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

// taller is a Spanish shop; every word of it is Spanish. All values are
// invented.
var taller = fstest.MapFS{
	"shop.yaml":             {Data: []byte("title: Taller\nlanguage: es\n")},
	"register/tools.yaml":   {Data: []byte("vaso-13: { name: vaso de 13 mm, kind: socket, fits: [13 mm], kept: carro }\n")},
	"register/hazards.yaml": {Data: []byte("golpe: { name: golpe, harm: minor-injury, nature: La tapa cae., consequence: Golpea la mano., avoid: [Sujete la tapa.] }\n")},
	"register/holds.yaml":   {Data: []byte("espera: { name: espera, kind: wait, for: 5 min }\n")},
	"machines/banco.yaml":   {Data: []byte("name: Banco\npoints:\n  llave: { name: llave general, lock: yes }\nenergies:\n  red: { name: red, kind: electric, points: [llave] }\nparts:\n  asiento: { name: asiento, held-by: { tornillo: 4 } }\n  tapa: { name: tapa, under: [asiento] }\nfasteners:\n  tornillo: { name: tornillo, across-flats: 13 mm }\n")},
	"procedures/trabajo.md": {Data: []byte("---\ntitle: Trabajo\nfor: banco\nstatus: draft\n---\n\n## Desmontar\n\n1. Barra el banco.\n2. [Quite el asiento](remove:asiento).\n")},
}

// english are words that the English of the program's forms, choices and kinds
// is made of and that no Spanish text has; no source.
const english = `/\b(the|and|off|what|which|with|without|is|are|of|at|it|its|this|that|step|here|new|tool|part|kind|fits|kept|held|under|where|lock|takes|cut|size|torque|range|minutes|left|open|nothing|write|change|choose|socket|electric|wait|removed|isolated|since|put|take|switch|for|how|long)\b/i`

// All that a Spanish shop's writing pages say is Spanish, what is found and how it
// is mended too, but for the words in which the format writes a limit.
func TestASpanishShopIsWrittenInSpanish(t *testing.T) {
	t.Parallel()
	p := startWriting(t, taller, "procedures/trabajo.html")
	spanish := func(state string) {
		t.Helper()
		said := p.get(`(() => { const out = [];
			const all = document.querySelectorAll(".write, .write *, .write-switch");
			for (const e of all) {
				if (e.lang === "en") out.push("the English of " + e.textContent);
				for (const name of ["aria-label", "placeholder", "title"]) if (e.getAttribute(name)) out.push(e.getAttribute(name));
				if (e.tagName === "TEXTAREA") continue; // the text of a step is in the words of the format
				for (const n of e.childNodes) if (n.nodeType === 3) out.push(n.data);
			}
			// what is to be written in the words of the format is not Spanish
			return out.filter(t => ` + english + `.test(t) && !/\.(md|yaml)$/.test(t.trim()) && !/ at most 5 V dc\)$/.test(t) && !/: off en leaves$/.test(t)).join(" | ") })()`)
		if said != "" {
			t.Errorf("%s says %s", state, said)
		}
		if marked := p.get(`String(document.querySelector(".write")?.lang)`); marked != "es" {
			t.Errorf("%s is marked as %s", state, marked)
		}
		p.clean(state)
	}
	p.press("Escribir")
	p.is(`document.querySelector(".write-groups section button") && document.querySelector(".write-beside").ariaBusy === "false"`)
	spanish("what comes next")
	p.press("Banco · entera, cerrada, llena y con energía")
	p.press("Cambiar: Cómo se encuentra la máquina")
	p.is(`document.querySelector(".write-found-as")`)
	spanish("how the machine is found")
	p.press("Escribir aquí: paso 1.2")
	p.is(`document.querySelector(".write-stands")?.textContent.includes("asiento") && document.querySelector(".write-beside").ariaBusy === "false"`)
	spanish("the pen")
	p.write("El paso 1.2 como está escrito", "[Quite el asiento](remove:asientoo). Use el [vaso de 13 mm](tool:vaso-13).")
	p.is(`document.querySelector(".write-pen .write-found button")?.textContent.includes("asiento")`)
	spanish("a finding with its mend")
	p.write("El paso 1.2 como está escrito", "[Quite la tapa](remove:tapa).")
	p.is(`document.querySelector(".write-pen .write-found")?.textContent.includes("tapa")`)
	spanish("what is in the way")
	p.press("Cerrar")
	for _, list := range []string{"Una herramienta…", "Un peligro…", "Una parada o comprobación…"} {
		p.press(list)
		p.is(`document.querySelector(".write-form")`)
		spanish(list)
		p.press("Cerrar")
		p.is(`!document.querySelector(".write-form")`)
	}
	p.open(p.w.url+"machines/banco.html", 1280)
	p.is(`document.querySelector(".write-section")`)
	spanish("a machine")
	p.press("Cambiar: asiento")
	p.is(`document.querySelector(".write-form")`)
	spanish("a part")
}
