package main

import (
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"github.com/pkg/browser"

	"baybinder/generator"
	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/check"
	"baybinder/generator/command/handbook"
	"baybinder/generator/model"
)

type explainCommand struct {
	Code string `arg:"" optional:"" help:"The code of a finding, such as not-listed; or links, for the kinds of links."`
	Open bool   `help:"Build the handbook on writing a manual and open it in the browser."`
	To   string `placeholder:"FOLDER" help:"Where the handbook's pages go (default: the user's folder for such things)."`
}

// Help is the longer text of explain --help.
func (*explainCommand) Help() string {
	return "Without a code it lists all of them. With --open it shows the handbook: how a manual is written, chapter by chapter, " +
		"with every field, every kind of link and every finding. It needs no network."
}

// Run explains one code, or lists what there is.
func (c *explainCommand) Run(g *globals, d *output) error {
	if c.Open {
		return c.open(g, d)
	}
	switch c.Code {
	case "":
		d.listRules(generator.TongueOf(g.Manual))
		return nil
	case "links":
		d.language = generator.LanguageOf(g.Manual)
		d.listKinds()
		return nil
	}
	code := strings.Trim(strings.ToLower(c.Code), "[]")
	if rule := check.Named(code); rule != nil {
		d.explain(rule, generator.TongueOf(g.Manual))
		return nil
	}
	var codes []string
	for _, rule := range check.Catalogue() {
		codes = append(codes, rule.Code)
	}
	if near := nearest.Of(code, append(codes, "links")); near != "" {
		return finding.Refuse("there is no finding %s: did you mean %s?", c.Code, near)
	}
	return finding.Refuse("there is no finding %s: baybinder explain lists them all", c.Code)
}

// open builds the handbook and shows it. Where no browser can be started, its
// address is told all the same.
func (c *explainCommand) open(g *globals, d *output) error {
	folder, err := c.folder()
	if err != nil {
		return err
	}
	if err := buildHandbook(folder, g.options().Today); err != nil {
		return err
	}
	front := filepath.Join(folder, "index.html")
	d.inform("the handbook: %s", front)
	browser.Stdout, browser.Stderr = io.Discard, io.Discard
	if err := browser.OpenFile(front); err != nil {
		d.remark("No browser could be started here: open that file in one.")
	}
	return nil
}

// folder is where the pages go.
func (c *explainCommand) folder() (string, error) {
	if c.To != "" {
		return c.To, nil
	}
	cache, err := os.UserCacheDir()
	if err != nil {
		return "", finding.Refuse("there is no folder for the handbook's pages: name one with --to (%s)", err)
	}
	return filepath.Join(cache, "baybinder", "handbook"), nil
}

// buildHandbook builds the handbook's site into a folder.
func buildHandbook(folder string, today model.Date) error {
	source, err := os.MkdirTemp("", "baybinder-handbook")
	if err != nil {
		return err
	}
	defer os.RemoveAll(source)
	if err := handbook.Write(source); err != nil {
		return err
	}
	_, err = generator.Build(generator.Options{Manual: source, To: folder, Today: today})
	return err
}

// explain says all that is known of a rule, in the shop's language.
func (d *output) explain(found *finding.Rule, t *finding.Tongue) {
	rule := t.Rule(found)
	d.text(fmt.Sprintf("%s (%s)\n%s\n", rule.Code, told(t, finding.Say(rule.Level.String())), wrap(rule.Title+".", "")))
	d.text(fmt.Sprintf("%s\n%s\n", told(t, finding.Say("Why it matters")), wrap(rule.Why, "    ")))
	d.text(fmt.Sprintf("%s\n%s", told(t, finding.Say("What to do")), wrap(rule.Mend, "    ")))
	if bad, good, ok := check.Example(rule.Code); ok {
		d.text("\n" + told(t, finding.Say("For example, this is found in %s\nand this is its mend, in %s", lines(bad), strings.TrimSuffix(lines(good), "\n"))))
	}
}

// told is words of the program in a language.
func told(t *finding.Tongue, words finding.Words) string {
	text, _ := t.Say(words)
	return text
}

func (d *output) listRules(t *finding.Tongue) {
	for _, f := range check.Families() {
		d.say("%s", told(t, finding.Say(f.Title)))
		for _, rule := range f.Rules {
			d.say("  %-24s %-7s %s", rule.Code, told(t, finding.Say(rule.Level.String())), t.Rule(rule).Title)
		}
		d.say("")
	}
	d.say("%s", told(t, finding.Say("baybinder explain CODE says why one matters, with an example and its mend.")))
	d.say("%s", told(t, finding.Say("baybinder explain links lists the kinds of links.")))
}

func (d *output) listKinds() {
	d.inform("A link is written [words](kind:id).\n")
	for _, k := range model.Kinds {
		d.say("  %-12s %s", k.Name+":", told(d.tongue(), finding.Say(k.Says)))
	}
}

// wrap breaks a text into lines of at most 80 signs, each after an indent.
func wrap(text, indent string) string {
	var b strings.Builder
	width := 0
	for _, word := range strings.Fields(text) {
		length := len([]rune(word))
		switch {
		case width == 0:
			b.WriteString(indent)
			width = len(indent)
		case width+1+length > 80:
			b.WriteString("\n" + indent)
			width = len(indent)
		default:
			b.WriteString(" ")
			width++
		}
		b.WriteString(word)
		width += length
	}
	return b.String()
}
