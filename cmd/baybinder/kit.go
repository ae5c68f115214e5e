package main

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/quantity"
	"baybinder/generator/derive/kit"
	"baybinder/generator/language"
	"baybinder/generator/model"
)

type kitCommand struct{ asked }

// Help is the longer text of kit --help.
func (*kitCommand) Help() string {
	return "With what the procedures need that it performs: of a tool the most at once, of a supply the sum."
}

// Run tells what to fetch for a job, and who may do it.
func (c *kitCommand) Run(g *globals, d *output) error {
	r, p, err := c.read(g)
	if err != nil {
		return err
	}
	d.speaks(&r.Verdict)
	if err := d.whole(r, p); err != nil {
		return err
	}
	d.rests(r, p)
	k := kit.NewCache(r.Manual.Shop, r.Walks).Of(p)
	items := itemsOf(k)
	if c.CSV {
		return d.table(kitRows(k, items))
	}
	d.kit(k, items)
	return nil
}

// item is a thing to fetch.
type item struct {
	kind         string // tool, gear or supply
	thing        model.Named
	amount, unit string // "" where none is written; a unit only where it is not pieces
	kept         string
}

// itemsOf are the things of a kit by shelf, and there by name. What has no
// shelf stands last.
func itemsOf(k *kit.Kit) []item {
	var items []item
	for _, t := range k.Tools {
		kind := "tool"
		if t.Tool.Kind == "ppe" {
			kind = "gear"
		}
		items = append(items, item{kind, t.Tool, strconv.Itoa(t.Count), "", t.Tool.Kept})
	}
	for _, u := range k.Supplies {
		one := item{kind: "supply", thing: u.Supply, kept: u.Supply.Kept}
		if u.Said {
			one.amount = u.Amount.Number()
		}
		if u.Said && u.Amount.Unit.Dimension() != quantity.Count {
			one.unit = u.Amount.Unit.String()
		}
		items = append(items, one)
	}
	slices.SortStableFunc(items, func(a, b item) int {
		if (a.kept == "") != (b.kept == "") {
			return cmp.Compare(b.kept, a.kept)
		}
		return cmp.Or(cmp.Compare(a.kept, b.kept), cmp.Compare(a.thing.Label(), b.thing.Label()))
	})
	return items
}

// line is "4 × wheel chock", "4 L of hydraulic oil", "torque wrench".
func (d *output) line(i item) string {
	amount, label := language.Marker(d.language).Write(i.amount), finding.Printable(i.thing.Label())
	switch {
	case i.unit != "":
		return d.inShop("%s of %s", amount+" "+i.unit, label)
	case i.amount == "" || i.amount == "1":
		return label
	}
	return amount + " × " + label
}

func (d *output) kit(k *kit.Kit, items []item) {
	shelf := "none yet"
	for _, i := range items {
		if i.kept != shelf {
			shelf = i.kept
			d.say("%s", cmp.Or(shelf, d.inShop("no place given")))
		}
		d.say("  %s", d.line(i))
	}
	d.listed(d.inShop("wear"), gearOf(items))
	d.listed(d.inShop("roles"), labels(k.Roles))
	d.listed(d.inShop("energies that are cut"), labels(k.Energies))
	d.inform("people: %d", k.People)
	d.listed(d.inShop("besides them, to see a check done"), d.seconds(k.Seconds))
}

func (d *output) listed(what string, names []string) {
	if len(names) > 0 {
		d.say("%s: %s", what, strings.Join(names, "; "))
	}
}

func (d *output) seconds(list []model.Second) []string {
	var out []string
	for _, second := range list {
		out = append(out, d.inShop("%s at step %s", second.By.Label(), second.Step.Number))
	}
	return out
}

func gearOf(items []item) []string {
	var out []string
	for _, i := range items {
		if i.kind == "gear" {
			out = append(out, i.thing.Label())
		}
	}
	return out
}

func labels[T model.Named](list []T) []string {
	var out []string
	for _, n := range list {
		out = append(out, n.Label())
	}
	return out
}

func kitRows(k *kit.Kit, items []item) [][]string {
	rows := [][]string{{"kind", "id", "name", "amount", "unit", "kept"}}
	for _, i := range items {
		rows = append(rows, []string{i.kind, i.thing.Base().ID, i.thing.Label(), i.amount, i.unit, i.kept})
	}
	for _, r := range k.Roles {
		rows = append(rows, []string{"role", r.ID, r.Label(), "", "", ""})
	}
	for _, e := range k.Energies {
		rows = append(rows, []string{"energy", e.ID, e.Label(), "", "", ""})
	}
	rows = append(rows, []string{"people", "", "", strconv.Itoa(k.People), "", ""})
	for _, second := range k.Seconds {
		rows = append(rows, []string{"second", second.By.ID, second.By.Label(), "1", "", "step " + second.Step.Number})
	}
	return rows
}
