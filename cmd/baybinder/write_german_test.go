package main

import (
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/chromedp/chromedp"
)

// On a tablet, by touch, from an empty folder: a German shop is named, a steam box
// is described and a job on it written in German by choosing; check finds nothing.
// All values are invented.
func TestAGermanShopIsWrittenByTouch(t *testing.T) {
	t.Parallel()
	p := startWriting(t, fstest.MapFS{}, "")
	p.steady()
	do(t, chromedp.Do(p.ctx, chromedp.EmulateViewport(820, 1180, chromedp.EmulateTouch), chromedp.Navigate(p.w.url)))
	p.tap("Write something new")
	p.answer("What is the shop called?", "Bootswerft")
	p.answer("Which language is the manual written in?", "Deutsch")
	p.enter("What is the shop called?")
	p.has("shop.yaml", "title: Bootswerft\nlanguage: de\n")
	p.is(`document.documentElement.lang === "de" || (location.reload(), false)`)
	p.tap("Etwas Neues schreiben")
	p.clean("a German beginning")
	p.answer("Wie heißt die Maschine?", "Dampfkasten")
	p.enter("Wie heißt die Maschine?")
	p.is(`location.pathname === "/machines/dampfkasten.html" && document.querySelector(".write-section")`)
	const name = "Wie heißt es?"
	entry := func(button, called string, rest ...given) {
		t.Helper()
		p.tap(button)
		p.answer(name, called)
		for _, g := range rest {
			if ticked, is := strings.CutPrefix(g.text, "✓"); is {
				answer, many, _ := strings.Cut(ticked, " × ")
				n, _ := strconv.Atoi(many)
				p.tick(g.question, answer, n)
				continue
			}
			p.answer(g.question, g.text)
		}
		p.enter(name)
		p.is(`!document.querySelector(".write-form") && document.querySelector(".write-said").textContent.includes(` + strconv.Quote(called) + `)`)
	}
	entry("Eine Trennstelle", "Hauptschalter", given{"Nimmt es ein Schloss?", ""})
	entry("Eine Energie", "Heizung", given{"Welcher Art ist es?", "elektrisch"}, given{"Wo wird sie getrennt?", "✓Hauptschalter"}, given{"Ihre Spannung", "400 V ac"})
	entry("Ein Verbindungselement", "Deckelmutter", given{"Seine Schlüsselweite", "13 mm"}, given{"Sein Drehmoment", "20 N·m"})
	entry("Ein Teil", "Deckel", given{"Was hält es?", "✓Deckelmutter × 6"}, given{"Vor welcher Energie schützt es?", "✓Heizung"})
	entry("Ein Teil", "Heizstab", given{"Worunter liegt es?", "✓Deckel"}, given{"Wovon wird vor dem Anfassen die Energiefreiheit festgestellt?", "✓Heizung"})
	p.clean("a German machine")

	const job = "procedures/heizstab-reinigen.md"
	do(t, chromedp.Do(p.ctx, chromedp.Navigate(p.w.url)))
	p.tap("Etwas Neues schreiben")
	p.answer("Wie heißt die Arbeit?", "Heizstab reinigen")
	p.answer("Für welche Maschine?", "Dampfkasten")
	p.enter("Wie heißt die Arbeit?")
	p.is(`document.querySelector(".write h1")?.textContent === "Heizstab reinigen"`)
	entry("Ein Werkzeug…", "13er Nuss", given{"Welcher Art ist es?", "Steckschlüsseleinsätze"}, given{"Größen, die es fasst", "13 mm"})
	entry("Ein Werkzeug…", "Drehmomentschlüssel", given{"Welcher Art ist es?", "Drehmomentschlüssel"}, given{"Sein Bereich", "5 to 25 N·m"})
	entry("Ein Werkzeug…", "Spannungsprüfer", given{"Welcher Art ist es?", "Prüf- und Messgeräte"})
	entry("Ein Werkzeug…", "Prüfquelle", given{"Welcher Art ist es?", "Prüf- und Messgeräte"})
	entry("Eine Gefahr…", "Klemmen unter Spannung", given{"Was ist gefährlich?", "An den Klemmen liegen 400 V."}, given{"Das Schlimmste, was folgen kann", "Tod"}, given{"Was bewirkt es?", "Ein Schlag kann töten."}, given{"Was tut man dagegen?", "Prüfen Sie, bevor Sie sie berühren."}, given{"Um welche Energie oder Flüssigkeit geht es?", "Heizung"})
	entry("Ein Halt oder eine Prüfung…", "Spannung am Heizstab", given{"Welcher Art ist es?", "Messungen"}, given{"Um welche Energie oder Flüssigkeit geht es?", "Heizung"}, given{"Was wird gemessen, angesehen oder notiert?", "Spannung zwischen allen Klemmen"}, given{"Was muss es sein?", "at most 20 V ac"}, given{"Mit welchem Werkzeug?", "Spannungsprüfer"}, given{"Woran wird das Prüfgerät geprüft?", "Prüfquelle"})
	idle := func(says string) {
		t.Helper()
		p.is(`document.querySelector(".write-said").textContent.includes(` + strconv.Quote(says) + `)`)
		p.is(`document.querySelector('.write-next[aria-current="true"]') && document.querySelector(".write-beside").ariaBusy === "false"`)
	}
	phase := func(called string) {
		t.Helper()
		p.tap(called)
		p.has(job, "## "+called+"\n")
		p.is(`document.querySelector('.write-next[aria-current="true"]')?.textContent.includes(` + strconv.Quote("Zuerst in "+called) + `) && document.querySelector(".write-beside").ariaBusy === "false"`)
	}
	choose := func(number, label string) {
		t.Helper()
		p.tap(label)
		idle("Schritt " + number + " ist geschrieben")
	}
	phase("Sichern")
	choose("1.1", "Abschalten an: Hauptschalter")
	choose("1.2", "Energiefreiheit feststellen: Heizung")
	phase("Zerlegen")
	choose("2.1", "Deckel ausbauen")
	choose("2.2", "Heizstab ausbauen")
	phase("Arbeit")
	p.tap("Selbst schreiben")
	p.tap("Ein neuer Schritt")
	do(t, chromedp.Do(p.ctx, chromedp.KeyEvent("Bürsten Sie den Kalk ab.")))
	p.is(`document.querySelector(".write-stands")?.textContent.includes("Kalk")`)
	p.clean("a German step")
	p.tap("Diesen Schritt speichern")
	idle("Schritt 3.1 ist geschrieben")
	phase("Zusammenbauen")
	choose("4.1", "Alles in umgekehrter Reihenfolge einbauen: Zerlegen")
	phase("Wieder in Betrieb nehmen")
	choose("5.1", "Das eigene Schloss abnehmen: Hauptschalter")
	choose("5.2", "Wieder einschalten: Heizung")
	p.clean("a German job")
	if out, err := program(t, p.w.dir, "check", "--today", "2026-05-04").CombinedOutput(); err != nil || !strings.Contains(string(out), "ichts gefunden") {
		t.Errorf("check: %v\n%s", err, out)
	}
}
