package procedure

import (
	"strings"
	"testing"
)

const textTools = `cover-key: { name: cover key, kind: other, kept: shelf }
`

// What a step shows of its links: tools are bold, procedures are links, and
// what only marks the step is not printed behind the end of a sentence,
// whatever its words; within a sentence its words stay.
func TestLinksInAStep(t *testing.T) {
	steps := []struct{ written, shown string }{
		{"Wait for the drum. [](hold:rest)", "Wait for the drum."},
		{"Wait for the drum. [drum wait](hold:rest)", "Wait for the drum."},
		{"Wait for the drum. [Ten minutes](hold:rest) [](time:10min)", "Wait for the drum."},
		{"[Wait 10 min](hold:rest).", "Wait 10 min."},
		{"Stop the drum. [Wait 10 min](hold:rest), then look.", "Stop the drum. Wait 10 min, then look."},
		{"Stop the drum. [Wait 10 min](hold:rest).", "Stop the drum. Wait 10 min."},
		{"Open it with the [key](tool:cover-key). [hot drum](hazard:hot)", `Open it with the <b class="tool">key</b>.`},
		{"Mind the [hot drum](hazard:hot) here.", "Mind the hot drum here."},
		{"Mind [the hot drum](hazard:hot). [Two people](people:2), [8 min](time:8min)", "Mind the hot drum."},
		{"Look. [With a cab](when:cab), lift the door.", "Look. With a cab, lift the door."},
		{"Look. [With a cab](when:cab)", "Look."},
		{"Look! [hot drum](hazard:hot) Then wipe it. [](time:1min)", "Look! Then wipe it."},
		{"Take the [](tool:cover-key).", `Take the <b class="tool">cover key</b>.`},
		{"See [the other job](see:other).", `See <a class="procedure" href="../procedures/other.html">the other job</a>.`},
		{"Set **5 min.** [drum wait](hold:rest)", "Set <strong>5 min.</strong>"},
		{"The limit is approx. [the wait](hold:rest)", "The limit is approx. the wait"},
	}
	var text strings.Builder
	text.WriteString("---\ntitle: Job\nfor: drum\npeople: 2\ntools: [cover-key]\nhazards: [hot]\nholds: [rest]\n---\n## Work\n\n")
	for _, s := range steps {
		text.WriteString("1. " + s.written + "\n")
	}
	site := siteOf(t, map[string]string{
		"register/tools.yaml":   textTools,
		"register/hazards.yaml": "hot: { name: hot drum, nature: It is hot., harm: minor-injury, consequence: It burns., avoid: [Wait.] }\n",
		"register/holds.yaml":   "rest: { name: drum wait, kind: wait, for: 10 min }\n",
		"machines/drum.yaml":    "name: Drum\noptions: { cab: Cab }\n",
		"procedures/job.md":     text.String(),
		"procedures/other.md":   "---\ntitle: The other job\n---\n## Work\n\n1. Look.\n",
	})
	v := site.Procedure(procedureOf(t, site, "job"))
	for i, s := range steps {
		got := strings.Join(strings.Fields(string(v.Phases[0].Parts[i].Step.Text[0])), " ")
		if got != "<p>"+s.shown+"</p>" {
			t.Errorf("%s\n got %s\nwant <p>%s</p>", s.written, got, s.shown)
		}
	}
	if shelf := v.Before.Shelves; len(shelf) != 1 || shelf[0].Items[0].Address != "../tools/cover-key.html" {
		t.Errorf("the kit has no link to the tool: %+v", shelf)
	}
}
