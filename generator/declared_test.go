package generator_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"baybinder/generator"
)

var declared = map[string]string{
	"shop.yaml":           "title: Shop\n",
	"register/tools.yaml": "gauge: { name: gauge, kind: tester }\n",
	"register/holds.yaml": `pad: { name: pad, kind: measure, what: thickness, limit: at least 2 mm, near: 2 to 3 mm, again-in: 3 months, with: gauge }
cure: { name: cure, kind: wait, for: 10 to 20 min }
joints: { name: joints, kind: look, what: every joint, good: dry, at: [pump, valve] }
`,
	"procedures/seal.md": "---\ntitle: Seal the lid\nholds: [pad, cure, joints]\n---\n## Seal\n\n1. Measure the pad. [](hold:pad)\n2. Lay the seal.\n" +
		"3. Press the seal. [](within:5min)\n4. Let it cure. [](hold:cure)\n5. Look at the joints. [](hold:joints)\n",
}

// TestDeclaredFieldsAtTheBay works through what a register declares: a reading
// near the limit passes and is named, a step and a wait are counted down to
// their latest time and the record says which was late, and a look is met when
// every place is ticked.
func TestDeclaredFieldsAtTheBay(t *testing.T) {
	t.Parallel()
	manual, to := t.TempDir(), filepath.Join(t.TempDir(), "site")
	for name, text := range declared {
		path := filepath.Join(manual, filepath.FromSlash(name))
		must(t, os.MkdirAll(filepath.Dir(path), 0o755))
		must(t, os.WriteFile(path, []byte(text), 0o644))
	}
	if _, err := generator.Build(generator.Options{Manual: manual, To: to, Today: demoDay}); err != nil {
		t.Fatal(err)
	}
	ctx, complaints := browser(t)
	work(t, ctx, "file://"+filepath.Join(to, "procedures", "seal.html"))
	js[any](t, ctx, `var minutes = (n) => { const now = Date.now; Date.now = () => now() + n * 60000; window.baybinder.page.beat(); }; type(step('1.1').querySelector('input'), '2.5'); 0`)
	says(t, ctx, `step('1.1').querySelector('.verdict').textContent`, "Near the limit: measure again in 3 months.")
	js[any](t, ctx, `tick('1.1'); tick('1.2'); 0`)
	says(t, ctx, `state('1.3')`, "No later than")
	js[any](t, ctx, `minutes(6); 0`)
	says(t, ctx, `state('1.3')`, "Too late")
	js[any](t, ctx, `tick('1.3'); minutes(11); 0`)
	says(t, ctx, `state('1.3')`, "Done later than")
	says(t, ctx, `step('1.4').querySelector('.clock').textContent`, "No later than")
	js[any](t, ctx, `tick('1.4'); minutes(30); press(step('1.5'), 'It is good'); press(step('1.5'), 'pump'); 0`)
	if js[bool](t, ctx, `window.baybinder.page.steps[4].holds[0].met`) {
		t.Error("a look with a place that nobody ticked is met")
	}
	js[any](t, ctx, `press(step('1.5'), 'valve'); 0`)
	if !js[bool](t, ctx, `window.baybinder.page.steps[4].holds[0].met`) {
		t.Error("a look with all its places ticked is not met")
	}
	text := strings.Join(strings.Fields(savedRecord(t, ctx)), " ")
	for _, want := range []string{`"near": { "low": 2, "high": 3, "again": "3 months" }`, `"late": true`, `"late": false`, `"ticked": [ "pump", "valve" ]`} {
		if strings.Count(text, want) != 1 {
			t.Errorf("the record has %q %d times: %s", want, strings.Count(text, want), text)
		}
	}
	for _, c := range complaints() {
		t.Errorf("the browser says: %s", c)
	}
}
