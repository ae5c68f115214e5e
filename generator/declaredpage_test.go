package generator_test

import (
	"html"
	"regexp"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"
)

var (
	notRead = regexp.MustCompile(`(?s)<(script|style|svg)\b.*?</(script|style|svg)>`)
	blocks  = regexp.MustCompile(`</?(p|li|h\d|div|section|tr|td|th|dt|dd|ol|ul|label)\b[^>]*>`)
	anyTag  = regexp.MustCompile(`<[^>]*>`)
)

// wordsOf are the words of a page, block by block, a bar between them.
func wordsOf(page []byte) string {
	text := anyTag.ReplaceAllString(blocks.ReplaceAllString(notRead.ReplaceAllString(string(page), ""), " | "), "")
	text = strings.Join(strings.Fields(html.UnescapeString(text)), " ")
	return regexp.MustCompile(`( \|)+`).ReplaceAllString(text, " |")
}

// What a shop declares stands where it is needed: each entry of a register and
// of a machine's file at the step that uses it. What is wanted was written from
// the sentences of the source format; "| " begins a block.
func TestWhatIsDeclaredIsOnThePage(t *testing.T) {
	t.Parallel()
	archive, err := txtar.ParseFile("testdata/declared.txtar")
	must(t, err)
	files := map[string]string{}
	for _, f := range archive.Files {
		files[f.Name] = string(f.Data)
	}
	site := pages(t, smallSite(t, files))
	for page, wanted := range saidOnPages {
		got := wordsOf(site[page])
		for _, want := range wanted {
			if !strings.Contains(got, want) {
				t.Errorf("%s does not say %q:\n%s", page, want, got)
			}
		}
	}
}

var saidOnPages = map[string][]string{
	"procedures/job.html": {
		"In-house procedures.", "Emergency Call 112.",
		"Once a year.", "What the job is for.", "Also called", "yearly opening",
		"bus, 360 V dc", "| Wear | rubber gloves |", "| Rigger |",
		// lists: a callee's supplies are added, of its tools the most at once counts
		"| oil store | 5 L press oil |", "| 3 chock |", "| 5 new bolt |", "| key board | 2 padlock |",
		// what is worn and what a hold is done with come by themselves
		"| shelf 2 | proving unit | rubber gloves | volt tester |",
		// the signal word is computed from harm and what follows
		"| DANGER | shock | The bus is at 360 V. | A shock kills. | Prove it dead. | Wear: | rubber gloves | 2.1 | Mind it.",
		"| WARNING | jet |", "| CAUTION | rash |", "| NOTICE | scratch |", "Cut the power first.",
		// holds
		"Wait 60 min: soak |", "The capacitors discharge.",
		"Measure: bus voltage | Voltage across the bus. | Limit: at most 5 V dc | plus to minus V dc | plus to frame V dc |",
		"With the volt tester. | Prove the tester on the proving unit before and after. | At most 3 tries. | Then call: Lead hand. | If not: Wait 15 min.",
		"| Only if it was not met: bus voltage. |",
		"good: clean seat | worn: scored seat |", "| Only if seat: scored seat. |",
		"Write down: number of shims", "Look: joints | Every joint. | Good is: dry. |",
		"Second person: count, checked by Lead hand | Someone else checks it later, alone. |",
		"Tell the witness: visit, Lead hand | Work may go on if they do not come. |",
		"Stop: release, signed by Lead hand | Work stops here until it is signed. | It goes out. |",
		// what links say
		"Perform: Wash it 10 min then come back to step 1.5", "| may be left out |", "Fit shims found.", "| Only with: Closed cab. |",
		"| high: at the lever | low: at the pipe |", "Agree who calls.",
		"| Why: | Because it hides. |", "| At the refit: | At the refit, press the clip home. |",
		"| in this order: rear left, front left |", "| rear left | Grease it. |", "| rear left | Walk on. |", "| front left | Grease it. | ",
		"Good place to stop.", "Hand-over at this stopping place", "Make safe 20 min",
		// the refit, by the kind of part
		"| on units with Closed cab | Refit the door. |", "Fit a new pump. | new: pump seal; write down its serial number |",
		"Refit the head. | 2 × | 1: 30 N·m (22 lbf·ft) | 2: 50 N·m (37 lbf·ft) | 3: 90° | head stud |",
		"Plug in the jack.", "Connect and secure the cord.",
		"Connect the pipe. | Take the cap out first | 1 × | pipe nut: begin: by hand, two turns; begin them by hand; they are tightened later |",
		"Refit the body. | 4 × 22 N·m (16.2 lbf·ft) | body bolt: new: new bolt; on the thread: copper paste; sequence: one, three, two, four; mark: red paint; tighten again: after 50 km |",
		// T·L/(L + A) = 22 · 380/425 = 19.7 N·m
		"body bolt, 22 N·m (16.2 lbf·ft): behind the crow-foot, set the torque wrench to 19.7 N·m (14.5 lbf·ft).",
		"| reverses 2.5 |", "It does not say that the job is safe",
	},
	"machines/press.html":        {"Roof"},
	"machines/press.torque.html": {"copper paste", "tighten again: after 50 km"},
	"machines/press.fluids.html": {"4 L"},
	"supplies/oil.html":          {"used-oil tank", "DANGER"},
	"supplies/bolts.html":        {"4711-M8"},
	"tools/meter.html":           {"2026-03-02"},
	"procedures/tight.html": {
		"Body on. | body bolt: new: new bolt |",
		"body bolt: 22 N·m (16.2 lbf·ft) | on the thread: copper paste | sequence: one, three, two, four | mark: red paint | tighten again: after 50 km |",
		"Look at the head stud.",
		"head stud, stage 1: 30 N·m (22 lbf·ft) | head stud, stage 2: 50 N·m (37 lbf·ft) | head stud, stage 3: 90° |",
		"Pump out. | the old one: return |",
		"Pump in. | new: pump seal | write down its serial number |",
	},
}
