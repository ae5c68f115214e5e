package main

import (
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	inpage "github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
)

// answer answers a question of the form that is open.
func (p *writer) answer(question, text string) {
	p.t.Helper()
	p.is(`(() => { const question = ` + strconv.Quote(question) + `, text = ` + strconv.Quote(text) + `;
		const label = [...document.querySelectorAll(".write-asked")].find(e => e.checkVisibility() && e.querySelector("span").firstChild.textContent.trim() === question);
		const field = label?.querySelector("input, select, textarea");
		if (!field) return false;
		if (field.type === "checkbox") { field.click(); return true; }
		if (field.tagName === "SELECT") {
			const option = [...field.options].find(o => o.text === text);
			if (!option) return false;
			field.value = option.value;
			field.dispatchEvent(new Event("change", {bubbles: true}));
			return true;
		}
		field.focus();
		field.value = text;
		field.dispatchEvent(new Event("input", {bubbles: true}));
		return true })()`)
	switch {
	case text == "":
		p.presses++
	case p.get(`String(!![...document.querySelectorAll(".write-asked")].find(e => e.checkVisibility() && e.querySelector("span").firstChild.textContent.trim() === `+strconv.Quote(question)+`)?.querySelector("select"))`) == "true":
		p.presses += 2 // it is opened, and one is chosen
	default:
		p.keys += len([]rune(text))
	}
}

// tick ticks one of several answers, with how many where that is asked.
func (p *writer) tick(question, answer string, many int) {
	p.t.Helper()
	p.is(`(() => { const set = [...document.querySelectorAll("fieldset")].find(e => e.checkVisibility() && e.querySelector("legend").firstChild.textContent.trim() === ` + strconv.Quote(question) + `);
		const row = [...set?.querySelectorAll(".write-option, label") ?? []].find(e => e.innerText.trim() === ` + strconv.Quote(answer) + `);
		if (!row) return false;
		const many = ` + strconv.Itoa(many) + `, number = row.querySelector("input[type=number]");
		if (many && number) { number.value = many; number.dispatchEvent(new Event("input", {bubbles: true})); return true }
		row.querySelector("input[type=checkbox]").click();
		return true })()`)
	p.presses++
	if many > 0 {
		p.keys += len(strconv.Itoa(many))
	}
}

// enter sends the form that a question stands in.
func (p *writer) enter(question string) {
	p.t.Helper()
	p.is(`(() => { const label = [...document.querySelectorAll(".write-asked")].find(e => e.checkVisibility() && e.querySelector("span").firstChild.textContent.trim() === ` + strconv.Quote(question) + `);
		label?.closest("form").requestSubmit(); return !!label })()`)
	p.presses++
}

// given is one answer: a question, and what is said to it. Of several answers
// each is ticked, with its number behind a ×.
type given struct{ question, text string }

// entry writes a new entry: answers of one word for lists to choose from too.
func (p *writer) entry(button, name string, rest ...given) {
	p.t.Helper()
	p.press(button)
	p.answer("What is it called?", name)
	for _, g := range rest {
		if ticked, is := strings.CutPrefix(g.text, "✓"); is {
			answer, many, _ := strings.Cut(ticked, " × ")
			n, _ := strconv.Atoi(many)
			p.tick(g.question, answer, n)
			continue
		}
		p.answer(g.question, g.text)
	}
	p.enter("What is it called?")
	p.is(`!document.querySelector(".write-form") && document.querySelector(".write-said").textContent.includes(` + strconv.Quote(name) + `)`)
}

// step waits until a step of a number holds a text.
func (p *writer) step(number, text string) {
	p.t.Helper()
	p.is(`document.getElementById("write-` + number + `")?.textContent.includes(` + strconv.Quote(text) + `) && !document.querySelector(".write-pen")`)
}

// choose writes the step of a choice, which gets a number.
func (p *writer) choose(number, label string) {
	p.t.Helper()
	p.press(label)
	p.is(`document.querySelector(".write-said").textContent.includes("Step ` + number + ` is written")`)
	p.is(`document.getElementById("write-` + number + `")`)
	p.is(`document.querySelector(".write-beside").ariaBusy === "false"`)
}

// phase opens a new phase.
func (p *writer) phase(name string) {
	p.t.Helper()
	p.press(name)
	p.is(`document.querySelector('.write-next[aria-current="true"]')?.textContent.includes("First in ` + name + `")`)
	p.is(`document.querySelector(".write-beside").ariaBusy === "false"`)
}

// say types a step's words, which get a number, with what is pressed beside.
func (p *writer) say(number, text string, beside ...string) {
	p.t.Helper()
	p.press("Write it yourself")
	p.write("A new step", text)
	for _, name := range beside {
		p.press(name)
	}
	p.press("Save this step")
	p.is(`document.querySelector(".write-said").textContent.includes("Step ` + number + ` is written") && !document.querySelector(".write-pen")`)
	p.is(`document.querySelector('.write-next[aria-current="true"]') && document.querySelector(".write-beside").ariaBusy === "false"`)
}

// steady keeps every page from being loaded anew by itself once a build is done:
// what is answered in the first moment of a page would be lost, as a person who
// waits for the page never sees. A page that is not there yet still waits.
func (p *writer) steady() {
	p.t.Helper()
	_, err := chromedp.Call(p.ctx, inpage.AddScriptToEvaluateOnNewDocument, inpage.AddScriptToEvaluateOnNewDocumentParams{
		Source: `document.addEventListener("watch-anew", e => { if (document.getElementById("main")) e.preventDefault() })`,
	})
	do(p.t, err)
	p.open(p.w.url, 1280)
}

// begin begins a procedure for the press.
func (p *writer) begin(title, file string) {
	p.t.Helper()
	p.open(p.w.url, 1280)
	p.press("Write something new")
	p.answer("What is the job called?", title)
	p.answer("For which machine?", "Press")
	p.enter("What is the job called?")
	p.has(file, "title: "+title)
	p.is(`document.querySelector(".write h1")?.textContent === ` + strconv.Quote(title))
	p.clean("an empty procedure")
}

// A press, how it is made safe and brought back, and a job of 30 steps on it that
// performs both are written from an empty folder by choosing, without typing one
// link, and check finds nothing.
// All values are invented. What it took is said beside what typing the same
// files takes.
func TestAJobIsWrittenByChoosing(t *testing.T) {
	t.Parallel()
	p := startWriting(t, fstest.MapFS{}, "")
	p.steady()
	p.press("Write something new")
	p.clean("something new")
	p.answer("What is the machine called?", "Press")
	p.enter("What is the machine called?")
	p.is(`location.pathname === "/machines/press.html" && document.querySelector(".write-section")`)
	p.clean("an empty machine")
	p.entry("A point where energy is cut", "main switch", given{"Where is it?", "left side"}, given{"Does it take a lock?", ""})
	p.entry("An energy", "mains supply", given{"What kind is it?", "electric"}, given{"Where is it cut?", "✓main switch"}, given{"Its voltage", "400 V ac"}, given{"Does some stay behind after it is cut?", ""})
	p.entry("A fastener", "guard bolt", given{"Its size across flats", "13 mm"}, given{"Its torque", "22 N·m"})
	p.entry("A fastener", "cover screw", given{"Its size across flats", "10 mm"}, given{"Its torque", "9 N·m"})
	p.entry("A part", "guard", given{"What holds it?", "✓guard bolt × 4"})
	p.entry("A part", "belt", given{"What is it under?", "✓guard"})
	p.entry("A part", "cover", given{"What is it under?", "✓guard"}, given{"What holds it?", "✓cover screw × 6"}, given{"From which energy does it keep hands?", "✓mains supply"})
	p.entry("A part", "filter", given{"What is it under?", "✓cover"})
	p.entry("A part", "motor plug", given{"What kind is it?", "connector"}, given{"What is it under?", "✓cover"}, given{"What is proved dead before hands go in?", "✓mains supply"})
	p.entry("A part", "fan", given{"What is it under?", "✓motor plug"}, given{"What holds it?", "✓cover screw × 2"}, given{"What is proved dead before hands go in?", "✓mains supply"})
	p.press("A part")
	p.is(`document.querySelector(".write-form")`)
	p.clean("a form")
	p.press("Close")

	p.begin("Make the press safe", "procedures/make-the-press-safe.md")
	p.entry("A tool…", "10 mm socket", given{"What kind is it?", "Sockets"}, given{"Sizes that it fits", "10 mm"})
	p.entry("A tool…", "13 mm socket", given{"What kind is it?", "Sockets"}, given{"Sizes that it fits", "13 mm"})
	p.entry("A tool…", "torque wrench", given{"What kind is it?", "Torque wrenches"}, given{"Its range", "5 to 25 N·m"})
	p.entry("A tool…", "two-pole tester", given{"What kind is it?", "Testers and gauges"})
	p.entry("A tool…", "proving unit", given{"What kind is it?", "Testers and gauges"})
	p.entry("A tool…", "feeler gauge", given{"What kind is it?", "Testers and gauges"})
	p.entry("A hazard…", "live terminals", given{"What is dangerous?", "The terminals hold 400 V."}, given{"The worst that can follow", "death"}, given{"Will it follow, or could it?", "it could"}, given{"What does it do?", "A shock can kill."}, given{"What is done against it?", "Prove dead before you touch one."}, given{"Which energy or fluid is it about?", "mains supply"})
	p.entry("A stop or a check…", "capacitor wait", given{"What kind is it?", "Waits"}, given{"Which energy or fluid is it about?", "mains supply"}, given{"How long?", "5 min"})
	p.entry("A stop or a check…", "supply voltage", given{"What kind is it?", "Measurements"}, given{"Which energy or fluid is it about?", "mains supply"}, given{"What is measured, looked at or noted?", "voltage between all terminals"}, given{"What must it be?", "at most 20 V ac"}, given{"With which tool?", "two-pole tester"}, given{"What is the tester proved on?", "proving unit"})
	p.phase("Make safe")
	p.choose("1.1", "Switch off at the main switch")
	p.choose("1.2", "Wait out the capacitor wait")
	p.choose("1.3", "Prove the mains supply dead")
	p.press("It is left so on purpose")
	p.has("procedures/make-the-press-safe.md", "leaves: { mains-supply: dead }")

	const back = "procedures/bring-the-press-back.md"
	p.begin("Bring the press back", back)
	p.phase("Return")
	p.press("As it is after: Make the press safe")
	p.has(back, "expects: { main-switch: locked }\n")
	p.is(`document.querySelector(".write-beside").ariaBusy === "false"`)
	p.clean("a return")
	p.choose("1.1", "Take your lock off the main switch")
	p.choose("1.2", "Switch the mains supply on again")
	p.say("1.3", "Run the press once, empty.")

	const job = "procedures/change-the-filter.md"
	p.begin("Change the filter", job)
	p.entry("A stop or a check…", "glue wait", given{"What kind is it?", "Waits"}, given{"How long?", "10 min"})
	p.entry("A stop or a check…", "fan gap", given{"What kind is it?", "Measurements"}, given{"What is measured, looked at or noted?", "gap at the fan"}, given{"What must it be?", "1 to 2 mm"}, given{"With which tool?", "feeler gauge"})
	p.phase("Make safe")
	p.choose("1.1", "Perform this: Make the press safe")
	p.phase("Strip")
	for i, off := range []string{"Take the guard off", "Take the belt off", "Take the cover off", "Unplug the motor plug", "Take the filter off", "Take the fan off"} {
		p.choose(fmt.Sprintf("2.%d", i+1), off)
	}
	p.phase("Work")
	for i, words := range []string{"Sweep the chips out of the frame.", "Wipe the seat of the fan.", "Look at both bearings.", "Glue the felt strip to the frame."} {
		p.say(fmt.Sprintf("3.%d", i+1), words)
	}
	p.say("3.5", "Let it set.", "glue wait")
	p.say("3.6", "Turn the ram by hand, and watch it.", "Two people")
	for i, words := range []string{"Brush the fan.", "Blow the duct out from the fan side.", "Wipe the duct.", "Write the day on the new filter.", "Look at the cable of the motor.", "Clean the floor round the press."} {
		p.say(fmt.Sprintf("3.%d", i+7), words)
	}
	p.phase("Refit")
	p.press("Leave some out…")
	p.clean("what stays off")
	p.tick("What stays off?", "guard", 0)
	p.tick("What stays off?", "belt", 0)
	p.press("Do it")
	p.has(job, "(reverse:strip!guard,belt)")
	p.step("4.1", "From the strip")
	p.say("4.2", "Measure the gap at the fan.", "fan gap")
	p.say("4.3", "move the fan in its holes.", "Only if…", "If the fan gap is not so")
	p.say("4.4", "", "Only if…", "Take it anew: fan gap", "If the fan gap is not so")
	p.has(job, "[If the fan gap is not so](if-not:fan-gap), [Take it anew: fan gap](again:fan-gap).\n")
	p.choose("4.5", "Put the belt back")
	p.choose("4.6", "Put the guard back")
	p.choose("4.7", "Tighten the guard bolt")
	p.phase("Return")
	p.choose("5.1", "Perform this: Bring the press back")
	p.say("5.2", "Tell the foreman.")
	p.say("5.3", "Carry the tools back.")
	p.say("5.4", "Write the job into the book of the press.")
	p.clean("the whole job")

	out, err := program(t, p.w.dir, "check", "--today", "2026-05-04").CombinedOutput()
	if text := string(out); err != nil || !strings.Contains(text, "nothing found") {
		data, _ := os.ReadFile(p.w.path(job))
		t.Errorf("check: %v\n%s\n%s", err, text, data)
	}
	data, err := os.ReadFile(p.w.path(job))
	do(t, err)
	if n := len(regexp.MustCompile(`(?m)^ *\d+\. `).FindAll(data, -1)); n != 30 {
		t.Errorf("the job has %d steps:\n%s", n, data)
	}
	typed := 0
	do(t, filepath.WalkDir(filepath.Join(p.w.dir, "content"), func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		text, err := os.ReadFile(name)
		typed += len([]rune(string(text)))
		return err
	}))
	t.Logf("written by %d presses and %d keystrokes; the same files are %d keystrokes", p.presses, p.keys, typed)
	if p.presses+p.keys > typed/2 {
		t.Errorf("%d presses and %d keystrokes are more than half of %d", p.presses, p.keys, typed)
	}
}
