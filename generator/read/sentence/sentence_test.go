package sentence_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/sentence"
	"baybinder/generator/read/source"
)

// blockOf is the first block of a manual's only step.
func blockOf(t *testing.T, step string) *model.Block {
	t.Helper()
	m, _ := bind.Manual(source.FromText(map[string]string{
		"shop.yaml":         "title: Shop\n",
		"procedures/job.md": "---\ntitle: Job\n---\n## Work\n\n1. " + step + "\n",
	}))
	return &m.Procedures[0].Steps[0].Blocks[0]
}

// Each link is written as its id; a sentence is its first word and its links.
// The rules are the format's: a sentence ends at a full stop, an exclamation or
// a question mark before a space or the paragraph's end, not at a colon or a
// semicolon; links behind it with no word between belong to it.
func TestSentences(t *testing.T) {
	for text, want := range map[string]string{
		"Look [a](tool:a) up: then [b](tool:b); go.":                  "Look a b",
		"Look [a](tool:a). Go [b](tool:b).":                           "Look a|Go b",
		"Look [a](tool:a)! Go [b](tool:b)? Yes.":                      "Look a|Go b|Yes",
		"Look. [](hold:a) [](time:5min)":                              "Look a 5min",
		"Look. [](hold:a) Go [b](tool:b).":                            "Look a|Go b",
		"Look. [five](hold:a) Go [b](tool:b).":                        "Look a|Go b",
		"Look. [Go](tool:a) on, [b](tool:b).":                         "Look|on a b",
		"Look. [](hold:h) [Go](tool:a) on.":                           "Look h|on a",
		"Look. [With a cab](when:cab), [go](tool:a) on.":              "Look|on cab a",
		"Look. [Wait](hold:a).":                                       "Look a| a",
		"Look. [Take it](tool:a).":                                    "Look| a",
		"Look.[](hold:a)":                                             "Look a",
		"(Look [a](tool:a).) Go.":                                     "Look a|Go",
		"**Look.** [](hold:a)":                                        "Look a",
		"Turn to 2.5 mm [a](tool:a). Go.":                             "Turn a|Go",
		"Take approx. 5 L of [a](tool:a). Go.":                        "Take a|Go",
		"Wait 5 min. Take [a](tool:a).":                               "Wait|Take a",
		"Take `a. b` of [a](tool:a).":                                 "Take a",
		"Take:\n\n   - [a](tool:a) one\n   - [b](tool:b) two\n":       "Take",
		"Take [a](tool:a)\n   and [b](tool:b).\n   Go [c](tool:c) on": "Take a b|Go c",
		"[](time:5min) Look [a](tool:a).":                             "Look 5min a",
	} {
		var got []string
		for _, s := range sentence.Of(blockOf(t, text)) {
			first := strings.FieldsFunc(s.Text, func(r rune) bool {
				return !strings.ContainsRune("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ", r)
			})
			one := strings.Join(slices.Concat(first, []string{""})[:1], "")
			for _, l := range s.Links {
				one += " " + l.ID
			}
			got = append(got, one)
		}
		if g := strings.Join(got, "|"); g != want {
			t.Errorf("%q\n got %s\nwant %s", text, g, want)
		}
	}
}

// Every link has its place in its text, and what is blanked out keeps its
// length.
func TestPlaces(t *testing.T) {
	b := blockOf(t, "Turn **it** `x` to 5&nbsp;mm [a](tool:a) by 30 mm. [](hold:b)")
	s := sentence.Of(b)[0]
	if len(s.Text) != len(s.At.Text()) {
		t.Errorf("the text has %d bytes, the source %d", len(s.Text), len(s.At.Text()))
	}
	if got := fmt.Sprint(s.At.Text()[s.Links[0].Start:s.Links[0].End]); got != "[a](tool:a)" {
		t.Errorf("the link stands at %q", got)
	}
}
