package main

import (
	"fmt"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/nearest"
	"baybinder/generator/check"
	"baybinder/generator/model"
	"baybinder/generator/read/bind"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/syntax"
)

type explainCommand struct {
	Code string `arg:"" optional:"" help:"The code of a finding, such as not-listed; or links, for the kinds of links."`
}

// Help is the longer text of explain --help.
func (*explainCommand) Help() string {
	return "Without a code it lists all of them."
}

// Run explains one code, or lists what there is.
func (c *explainCommand) Run(d *output) error {
	switch c.Code {
	case "":
		d.listRules()
		return nil
	case "links":
		d.listKinds()
		return nil
	}
	code := strings.Trim(strings.ToLower(c.Code), "[]")
	var codes []string
	for _, rule := range check.Catalogue() {
		if rule.Code == code {
			d.explain(rule)
			return nil
		}
		codes = append(codes, rule.Code)
	}
	if near := nearest.Of(code, append(codes, "links")); near != "" {
		return fmt.Errorf("there is no finding %s: did you mean %s?", c.Code, near)
	}
	return fmt.Errorf("there is no finding %s: baybinder explain lists them all", c.Code)
}

// explain says all that is known of a rule.
func (d *output) explain(rule *finding.Rule) {
	d.text(fmt.Sprintf("%s (%s)\n%s\n", rule.Code, rule.Level, wrap(rule.Title+".", "")))
	d.text(fmt.Sprintf("Why it matters\n%s\n", wrap(rule.Why, "    ")))
	d.text(fmt.Sprintf("What to do\n%s", wrap(rule.Mend, "    ")))
	if bad, good, ok := check.Example(rule.Code); ok {
		d.text(fmt.Sprintf("\nFor example, this is found in %s\nand this is its mend, in %s", strings.TrimSuffix(bad, "\n")+"\n", strings.TrimSuffix(good, "\n")))
	}
}

// family is some rules that belong together.
type family struct {
	title string
	rules []*finding.Rule
}

// families sort the catalogue by the stage that finds a thing.
func families() []family {
	list := []family{
		{"How files are written", syntax.Rules()},
		{"What fields hold", decode.Rules()},
		{"What names and addresses lead to", bind.Rules()},
	}
	known := map[string]bool{}
	for _, f := range list {
		for _, rule := range f.rules {
			known[rule.Code] = true
		}
	}
	rest := family{title: "What a procedure says and does"}
	for _, rule := range check.Catalogue() {
		if !known[rule.Code] {
			rest.rules = append(rest.rules, rule)
		}
	}
	return append(list, rest)
}

func (d *output) listRules() {
	for _, f := range families() {
		d.say("%s", f.title)
		for _, rule := range f.rules {
			d.say("  %-24s %-7s %s", rule.Code, rule.Level, rule.Title)
		}
		d.say("")
	}
	d.say("baybinder explain CODE says why one matters, with an example and its mend.")
	d.say("baybinder explain links lists the kinds of links.")
}

func (d *output) listKinds() {
	d.say("A link is written [words](kind:id).\n")
	for _, k := range model.Kinds {
		d.say("  %-12s %s", k.Name+":", k.Says)
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
