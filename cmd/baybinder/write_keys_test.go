package main

import (
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// keysOf names what the keys are on, as a person reads it: by its label, or by
// its own first line.
const keysOf = `window.keysOf = e => e.getAttribute("aria-label") ?? (e.labels?.length ? (e.labels[0].querySelector("span")?.firstChild ?? e.labels[0]).textContent : e.innerText).trim().split("\n")[0];`

// seen says what is wrong with how the place of the keys is shown: "" where it is
// outlined by two pixels at least (WCAG 2.2, 2.4.13) and none of its middle is
// covered (2.4.11).
const seen = `(() => { const e = document.activeElement;
	if (!e || e === document.body) return "it is nowhere";
	const style = getComputedStyle(e), r = e.getBoundingClientRect();
	const top = document.elementFromPoint(Math.max(1, r.x + Math.min(r.width / 2, 40)), r.y + r.height / 2);
	if (!e.matches(":focus-visible") || style.outlineStyle === "none" || parseFloat(style.outlineWidth) < 1 && style.outlineStyle !== "auto") return keysOf(e) + " is not outlined";
	if (style.outlineStyle !== "auto" && parseFloat(style.outlineWidth) < 2) return keysOf(e) + " is outlined thinly";
	return r.bottom < 0 || r.top > innerHeight || !top || !(e.contains(top) || e.labels?.[0]?.contains(top)) ? keysOf(e) + " is covered by " + top?.outerHTML.slice(0, 80) : "" })()`

// key presses one key.
func (p *writer) key(key string, mods ...chromedp.KeyOption) {
	p.t.Helper()
	do(p.t, chromedp.Do(p.ctx, chromedp.KeyEvent(key, mods...)))
	p.presses++
}

// reach goes by Tab alone to what has a name, once that is there; wherever the
// keys stop on the way, a person sees where.
func (p *writer) reach(name string) {
	p.t.Helper()
	p.run(keysOf)
	quoted := strconv.Quote(name)
	p.is(`[...document.querySelectorAll("a, button, summary, input, select, textarea")].some(e => !e.disabled && !e.closest("[inert]") && e.checkVisibility() && keysOf(e) === ` + quoted + `) && document.querySelector(".write-beside")?.ariaBusy !== "true"`)
	for range 250 {
		if p.get(`String(document.activeElement !== document.body && keysOf(document.activeElement) === `+quoted+`)`) == "true" {
			return
		}
		p.key("\t")
		if p.get(`String(document.activeElement === document.body)`) == "true" {
			continue // behind the last thing of the page is its beginning
		}
		if wrong := p.get(seen); wrong != "" {
			p.t.Errorf("on the way to %s: %s", name, wrong)
		}
	}
	p.t.Fatalf("no Tab leads to %s", name)
}

// hit reaches a button and presses Enter.
func (p *writer) hit(name string) {
	p.t.Helper()
	p.reach(name)
	p.key("\r")
}

// fill types into the field of a question.
func (p *writer) fill(question, text string) {
	p.t.Helper()
	p.reach(question)
	for _, r := range text {
		p.key(string(r))
	}
}

// pick takes an answer out of a list by the arrow.
func (p *writer) pick(question, answer string) {
	p.t.Helper()
	p.reach(question)
	for range 60 {
		if p.get(`document.activeElement.selectedOptions[0].text`) == answer {
			return
		}
		p.key(kb.ArrowDown)
	}
	p.t.Fatalf("no arrow leads to %s: %s", answer, p.get(`[...document.activeElement.options].map(o => o.text).join("; ")`))
}

// stays waits until something is said, and sees that the keys are somewhere in
// what is written.
func (p *writer) stays(says string) {
	p.t.Helper()
	p.is(`document.querySelector(".write-said").textContent.includes(` + strconv.Quote(says) + `) && !document.querySelector(".write-form, .write-pen") && document.querySelector(".write-beside")?.ariaBusy !== "true"`)
	p.run(keysOf)
	if wrong := p.get(seen); wrong != "" || p.get(`String(!!document.activeElement.closest(".write"))`) != "true" {
		p.t.Errorf("after %q: %s", says, wrong)
	}
}

// From an empty folder, by the keyboard alone: a Spanish shop is named, a small
// machine described and a job of six steps written; the keys are seen wherever
// they stop, no save loses them, and check finds nothing.
// All values are invented.
func TestASpanishShopIsWrittenByKeyboard(t *testing.T) {
	t.Parallel()
	p := startWriting(t, fstest.MapFS{}, "")
	p.steady()
	p.hit("Write something new")
	p.fill("What is the shop called?", "Taller")
	p.pick("Which language is the manual written in?", "Español")
	p.hit("Do it")
	p.has("shop.yaml", "title: Taller\nlanguage: es\n")
	p.is(`document.documentElement.lang === "es" || (location.reload(), false)`)
	p.hit("Escribir algo nuevo")
	p.fill("¿Cómo se llama la máquina?", "Banco")
	p.key("\r")
	p.is(`location.pathname === "/machines/banco.html" && document.querySelector(".write-section")`)
	const name = "¿Cómo se llama?"
	entry := func(button, called string, more func()) {
		t.Helper()
		p.hit(button)
		p.is(`document.activeElement.closest(".write-form")`)
		p.fill(name, called)
		more()
		p.hit("Anotarlo en la lista")
		p.stays(called)
	}
	entry("Una fijación", "tornillo", func() { p.fill("Su medida entre caras", "13 mm") })
	entry("Una pieza", "tapa", func() {
		p.fill("Cuántos: tornillo", "4")
	})
	entry("Una pieza", "filtro", func() { p.reach("tapa"); p.key(" ") })
	p.has("machines/banco.yaml", "  filtro: { name: filtro, under: [tapa] }\n")
	p.hit("Cambiar: filtro")
	p.hit("Cerrar")
	p.is(`document.activeElement.dataset.id === "filtro"`)

	const job = "procedures/cambiar-el-filtro.md"
	do(t, chromedp.Do(p.ctx, chromedp.Navigate(p.w.url)))
	p.hit("Escribir algo nuevo")
	p.fill("¿Cómo se llama el trabajo?", "Cambiar el filtro")
	p.pick("¿Para qué máquina?", "Banco")
	p.hit("Empezar")
	p.is(`document.querySelector(".write h1")?.textContent === "Cambiar el filtro"`)
	entry("Una herramienta…", "vaso de 13 mm", func() {
		p.pick("¿De qué tipo es?", "Vasos")
		p.fill("Medidas que ajusta", "13 mm")
	})
	p.hit("Una herramienta…")
	p.hit("Cerrar")
	p.is(`keysOf(document.activeElement) === "Una herramienta…"`)
	phase := func(called string) {
		t.Helper()
		p.fill("¿Cómo se llama?", called)
		p.key("\r")
		p.has(job, "## "+called+"\n")
		p.stays("")
		p.is(`document.activeElement.textContent.includes("Primero en ` + called + `")`)
	}
	say := func(number, words string) {
		t.Helper()
		p.hit("Escribirlo")
		p.is(`document.activeElement.tagName === "TEXTAREA"`)
		p.fill("Un paso nuevo", words)
		p.hit("Guardar este paso")
		p.stays("El paso " + number + " está escrito.")
	}
	choose := func(number, label string) {
		t.Helper()
		p.hit(label)
		p.stays("El paso " + number + " está escrito.")
	}
	phase("Desmontaje")
	choose("1.1", "Desmonte: tapa")
	choose("1.2", "Desmonte: filtro")
	phase("Trabajo")
	say("2.1", "Limpie el asiento.")
	say("2.2", "Marque la fecha en el filtro nuevo.")
	phase("Montaje")
	choose("3.1", "Monte todo en orden inverso: Desmontaje")
	say("3.2", "Barra el banco.")
	p.hit("Deshacer")
	p.stays("Deshecho")
	p.hit("Rehacer")
	p.stays("Guardado")
	p.has(job, "2. Barra el banco.\n")
	p.hit("Cambiar el nombre: Trabajo")
	p.is(`document.activeElement.value === "Trabajo"`)
	p.hit("Cerrar")
	p.is(`keysOf(document.activeElement) === "Cambiar el nombre: Trabajo"`)
	p.hit("Escribir aquí: paso 2.1")
	p.hit("Cerrar")
	p.stays("")
	if out, err := program(t, p.w.dir, "check", "--today", "2026-05-04").CombinedOutput(); err != nil || !strings.Contains(string(out), "sin hallazgos") {
		t.Errorf("check: %v\n%s", err, out)
	}
	t.Logf("%d keys", p.presses)
}
