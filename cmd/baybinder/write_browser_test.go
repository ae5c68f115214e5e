package main

import (
	"encoding/json"
	"net/http"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/chromedp/chromedp"
	"github.com/fsnotify/fsnotify"

	"baybinder/generator/command/write"
)

// writer is somebody who writes in a page, and how often he pressed and typed.
type writer struct {
	tab
	w             *watching
	axe           string
	presses, keys int
}

// startWriting is a manual that is written, with a page of it open.
func startWriting(t *testing.T, manual fstest.MapFS, page string) *writer {
	t.Helper()
	axe, err := os.ReadFile(filepath.Join("..", "..", ".ci", "node_modules", "axe-core", "axe.min.js"))
	needs(t, err == nil, "axe-core")
	p := &writer{tab: openBrowser(t), w: startWatch(t, manual, "--write"), axe: string(axe)}
	p.open(p.w.url+page, 1280)
	return p
}

// press presses the button whose first line is its name, once it can be seen.
func (p *writer) press(name string) {
	p.t.Helper()
	p.is(`(() => { const name = ` + strconv.Quote(name) + `;
		const e = [...document.querySelectorAll("button, summary, label")].find(e => !e.disabled && !e.closest("[inert]") && e.checkVisibility() && (e.getAttribute("aria-label") ?? e.innerText).trim().split("\n")[0] === name);
		e?.click(); return !!e })()`)
	p.presses++
}

// write types into the field of a name.
func (p *writer) write(name, text string) {
	p.t.Helper()
	p.is(`(() => { const name = ` + strconv.Quote(name) + `;
		const e = [...document.querySelectorAll("textarea, input")].find(e => e.checkVisibility() && e.getAttribute("aria-label") === name);
		if (!e) return false;
		e.focus(); e.value = ` + strconv.Quote(text) + `; e.dispatchEvent(new Event("input", {bubbles: true})); return true })()`)
	p.keys += len([]rune(text))
}

// has waits until a file of the manual holds a text: it is read anew when
// something has happened in its folder.
func (p *writer) has(name, text string) {
	p.t.Helper()
	happens, err := fsnotify.NewWatcher()
	do(p.t, err)
	defer func() { do(p.t, happens.Close()) }()
	for {
		do(p.t, happens.Add(p.w.path(".")))
		_ = happens.Add(filepath.Dir(p.w.path(name))) // once it is there, which the folder above tells
		data, err := os.ReadFile(p.w.path(name))
		if err == nil && strings.Contains(string(data), text) {
			return
		}
		select {
		case <-happens.Events:
		case err := <-happens.Errors:
			do(p.t, err)
		case <-p.ctx.Done():
			do(p.t, p.ctx.Err())
		}
	}
}

// clean judges the page as it stands by axe-core, on a desk and at phone width;
// the contrast is that of WCAG 2.2 level AAA, and every target has its size.
func (p *writer) clean(state string) {
	p.t.Helper()
	if p.get(`String(!window.axe)`) == "true" {
		p.run(p.axe)
	}
	for _, width := range []int64{390, 820, 1280} {
		p.tall(width)
		var found []struct {
			ID, Help string
			Nodes    []struct{ HTML string }
		}
		text := p.get(`axe.run(document, {preload: false, resultTypes: ["violations"], selectors: false, runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
			rules: {"color-contrast-enhanced": {enabled: true}, "target-size": {enabled: true}}}).then(r => JSON.stringify(r.violations))`)
		do(p.t, json.Unmarshal([]byte(text), &found))
		for _, f := range found {
			p.t.Errorf("%s at %d px: %s: %s\n%s", state, width, f.ID, f.Help, f.Nodes[0].HTML)
		}
		if wide := p.get(`String(document.documentElement.scrollWidth > innerWidth + 1)`); wide == "true" {
			p.t.Errorf("%s at %d px is wider than its window", state, width)
		}
	}
}

// tall makes the window as high as the page, once the page has answered to its
// width, and again to its height: what the strips at its head and foot cover until
// one scrolls is not a fault of its targets.
func (p *writer) tall(width int64) {
	p.t.Helper()
	height := int64(900)
	for range 2 {
		do(p.t, chromedp.Do(p.ctx, chromedp.EmulateViewport(width, height)))
		text := p.get(`new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => done(String(document.documentElement.scrollHeight)))))`)
		now, err := strconv.ParseInt(text, 10, 64)
		do(p.t, err)
		height = max(height, now)
		do(p.t, chromedp.Do(p.ctx, chromedp.EmulateViewport(width, height)))
	}
	p.get(twoFrames)
}

// twoFrames ends once the page has been laid out as it is now.
const twoFrames = `new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => done(""))))`

// rig is a small machine with a job that is begun. All values are invented.
var rig = fstest.MapFS{
	"shop.yaml":             {Data: []byte("title: Shop\n")},
	"register/tools.yaml":   {Data: []byte("socket-13: { name: 13 mm socket, kind: socket, fits: [13 mm] }\n")},
	"register/hazards.yaml": {Data: []byte("pinch: { name: pinch point, harm: minor-injury, nature: The lid drops., consequence: It pinches., avoid: [Hold the lid.] }\n")},
	"machines/rig.yaml":     {Data: []byte("name: Rig\nparts:\n  seat: { name: seat, held-by: { bolt: 4 } }\n  lid: { name: lid, under: [seat] }\nfasteners:\n  bolt: { name: bolt, across-flats: 13 mm }\n")},
	"procedures/job.md":     {Data: []byte("---\ntitle: Job\nfor: rig\nstatus: draft\n---\n\n## Strip\n\n1. Sweep the bench.\n")},
}

// A step is written by a choice, reworded in place, taken back; in no state has
// axe-core anything to say.
func TestAPageIsWrittenByChoosing(t *testing.T) {
	t.Parallel()
	p := startWriting(t, rig, "procedures/job.html")
	const file = "procedures/job.md"
	p.press("Write")
	p.is(`document.querySelector(".write-groups section")`)
	p.clean("what comes next")
	p.press("Take the seat off")
	p.has(file, "tools: [socket-13]")
	p.has(file, "2. [Take the seat off](remove:seat). Use the [13 mm socket](tool:socket-13).\n")
	p.is(`document.getElementById("write-1.2")?.textContent.includes("Take the seat off")`)
	p.press("Take the lid off")
	p.has(file, "3. [Take the lid off](remove:lid).\n")

	p.press("Write here: step 1.3")
	p.is(`document.querySelector(".write-stands")?.textContent.includes("Take the lid off")`)
	p.press("pinch point")
	p.is(`document.querySelector(".write-stands .safety, .write-stands")?.textContent.includes("CAUTION")`)
	p.clean("the pen")
	p.write("Step 1.3 as it is written", "[Take the lid off](remove:lidd). Mind: [pinch point](hazard:pinch).")
	p.press("Write lid")
	p.is(`document.querySelector(".write-pen textarea").value.includes("(remove:lid)")`)
	p.press("Save this step")
	p.has(file, "hazards: [pinch]")
	p.has(file, "3. [Take the lid off](remove:lid). Mind: [pinch point](hazard:pinch).\n")

	p.press("Refit")
	p.has(file, "## Refit\n")
	p.press("Refit everything in reverse: Strip")
	p.has(file, "1. [Refit everything in reverse](reverse:strip).")
	p.clean("a whole job")
	p.press("Take back")
	p.is(`!document.body.textContent.includes("From the strip") && !document.querySelector(".write button:disabled[data-never]")`)
	p.has(file, "## Refit\n")

	// Somebody else changes the file meanwhile: both versions are shown.
	p.press("Write here: step 1.1")
	p.write("Step 1.1 as it is written", "Sweep the yard.")
	p.w.replace(file, "Sweep the bench.", "Sweep the stairs.")
	p.press("Save this step")
	p.is(`document.querySelector(".write-clash")?.textContent.includes("Sweep the stairs.") && document.querySelector(".write-clash").textContent.includes("Sweep the yard.")`)
	p.clean("two versions")
	p.press("Go on with mine")
	p.press("Save this step")
	p.has(file, "1. Sweep the yard.\n")
	for _, text := range []string{strings.Repeat("long ", 300) + strings.Repeat("W", 1000), "\u200fמברג [seat](part:seat) \u202eabc"} {
		p.press("Write here: step 1.1")
		p.write("Step 1.1 as it is written", text)
		p.is(`document.querySelector(".write-stands").textContent.trim().length > 10`)
		p.clean("a strange text")
		p.press("Save this step")
		p.has(file, "1. "+text+"\n")
		p.is(`document.querySelector(".write-next[aria-current=true]")`)
		p.clean("a strange step")
	}
}

// What is pasted does what a person expects: cells become a table, the lines of a
// page become steps, and what a sign means to Markdown it does not mean here.
func TestWhatIsPasted(t *testing.T) {
	t.Parallel()
	p := startWriting(t, rig, "procedures/job.html")
	paste := func(text string) {
		t.Helper()
		p.is(`!!document.querySelector(".write-pen textarea")`)
		p.run(`{ const data = new DataTransfer(); data.setData("text/plain", ` + strconv.Quote(text) + `);
			document.querySelector(".write-pen textarea").dispatchEvent(new ClipboardEvent("paste", {clipboardData: data, bubbles: true, cancelable: true})) }`)
	}
	p.press("Write")
	p.press("Write here: step 1.1")
	paste("Bolt\tTorque\r\nM8|x\t22 N·m\r\nM10\t\r\n")
	p.is(`document.querySelectorAll(".write-stands table tr").length === 3`)
	p.clean("a table")
	p.press("Save this step")
	p.has("procedures/job.md", "   | Bolt | Torque |\n   | --- | --- |\n   | M8\\|x | 22 N·m |\n   | M10 |  |\n")
	p.is(`!document.querySelector(".write-pen") && document.querySelector(".write-beside").ariaBusy === "false"`)
	p.press("Write it yourself")
	paste("1. Open the <valve>.\n\n2) Wait *five* minutes.\n• # Look at [it]\n")
	p.press("As 3 steps")
	p.has("procedures/job.md", "2. Open the \\<valve>.\n3. Wait \\*five\\* minutes.\n4. \\# Look at \\[it\\]\n")
	p.is(`document.getElementById("write-1.4")?.textContent.includes("# Look at [it]") && !document.querySelector(".write-pen")`)
	p.press("Write it yourself")
	paste("One\nand the other")
	p.press("As one step")
	p.press("Save this step")
	p.has("procedures/job.md", "5. One\n\n   and the other\n")
	p.is(`!document.querySelector(".write-pen") && document.querySelector(".write-beside").ariaBusy === "false"`)
	p.press("Write it yourself")
	p.is(`!!document.querySelector(".write-pen textarea")`)
	p.run(`{ const data = new DataTransfer(), page = "<p>Wear <b>clean</b> gloves.</p><h2>Take the <i>lid</i> off</h2><ol><li>1. <strong>WARNING</strong>: it is hot.</li><li><b>Lift it.</b></li></ol><h3>Strip</h3><p>Look at <span style='font-weight:700'>both</span> ends.<br>Go.</p>";
		data.setData("text/plain", page.replace(/<[^>]+>/g, "\n")); data.setData("text/html", page);
		document.querySelector(".write-pen textarea").dispatchEvent(new ClipboardEvent("paste", {clipboardData: data, bubbles: true, cancelable: true})) }`)
	p.is(`[...document.querySelectorAll("button")].some((b) => b.textContent === "As 5 steps, with 2 new phases")`)
	p.clean("a pasted page")
	p.press("As 5 steps, with 2 new phases")
	p.has("procedures/job.md", "6. Wear **clean** gloves.\n\n## Take the lid off\n\n1. WARNING: it is hot.\n2. Lift it.\n\n## Strip 2\n\n1. Look at **both** ends.\n2. Go.\n")
}

// By the keyboard alone a step is chosen and another written.
func TestAPageIsWrittenByKeyboard(t *testing.T) {
	t.Parallel()
	p := startWriting(t, rig, "procedures/job.html")
	p.is(`document.querySelector(".write-switch")`)
	at := func(is string) {
		t.Helper()
		for range 80 {
			do(t, chromedp.Do(p.ctx, chromedp.KeyEvent("\t")))
			if p.get(`String(`+is+`)`) == "true" {
				return
			}
		}
		t.Fatalf("no Tab leads to %s", is)
	}
	at(`document.activeElement.className === "write-switch"`)
	do(t, chromedp.Do(p.ctx, chromedp.KeyEvent("\r")))
	p.is(`document.querySelector(".write-groups button")`)
	at(`document.activeElement.innerText.startsWith("Take the seat off")`)
	do(t, chromedp.Do(p.ctx, chromedp.KeyEvent("\r")))
	p.has("procedures/job.md", "(remove:seat)")
	p.is(`document.activeElement.closest(".write-next[aria-current=true]") && document.querySelector(".write-said").textContent.includes("1.2")`)
	at(`document.activeElement.innerText === "Write it yourself"`)
	do(t, chromedp.Do(p.ctx, chromedp.KeyEvent("\r")))
	p.is(`document.activeElement.tagName === "TEXTAREA"`)
	do(t, chromedp.Do(p.ctx, chromedp.KeyEvent("Look.")))
	do(t, chromedp.Do(p.ctx, chromedp.KeyEvent("\r", chromedp.KeyModifiers(2)))) // Ctrl
	p.has("procedures/job.md", "3. Look.\n")
}

// What is published has none of it, and neither has a watch that only shows.
func TestThePublishedSiteIsNotWritten(t *testing.T) {
	t.Parallel()
	w := startWatch(t, rig)
	for name, text := range filesOf(t, filepath.Join(w.dir, "public")) {
		if strings.Contains(text, "/.write") || strings.Contains(text, "Baybinder-Token") {
			t.Errorf("%s speaks of writing", name)
		}
	}
	for _, address := range []string{".write.js", ".write.css"} {
		answer, err := http.Get(w.url + address)
		do(t, err)
		answer.Body.Close()
		if answer.StatusCode != http.StatusNotFound {
			t.Errorf("%s is answered with %d", address, answer.StatusCode)
		}
	}
	answer, err := http.Post(strings.TrimSuffix(w.url, "/")+write.Root+"open", "application/json", strings.NewReader("{}"))
	do(t, err)
	answer.Body.Close()
	if answer.StatusCode != http.StatusMethodNotAllowed {
		t.Errorf("a question is answered with %d", answer.StatusCode)
	}
	page, err := http.Get(w.url + "procedures/job.html")
	do(t, err)
	defer page.Body.Close()
	if page.Header.Get("X-Frame-Options") != "" {
		t.Error("it is said to be written")
	}
}
