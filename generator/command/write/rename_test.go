package write_test

import (
	"net/http"
	"strings"
	"testing"

	"baybinder/generator/command/write"
)

// named asks for another id, with the state that the form was told.
func (d *desk) named(page, in, id, to, state string) (int, write.Told) {
	return d.questioned("rename", write.Asked{Page: page, In: in, ID: id, State: state, Fields: answers{"id": {to}}})
}

// An entry gets another id wherever the manual names it, as the command does it;
// it is one step back. What the writer types is made an id.
func TestAnIDIsRenamedEverywhere(t *testing.T) {
	t.Parallel()
	d := newDesk(t, shop)
	_, told := d.questioned("form", write.Asked{Page: "procedures/job.html", In: "tools", ID: "lamp"})
	status, told := d.named("procedures/job.html", "tools", "lamp", "Hand lamp", told.Form.State)
	if status != http.StatusOK || told.Renamed.ID != "hand-lamp" || told.Renamed.Places != 3 || told.Renamed.Files != 2 {
		t.Fatalf("%d %s %s %+v", status, told.Why, told.More, told.Renamed)
	}
	for name, text := range shop {
		want := strings.NewReplacer("\nlamp:", "\nhand-lamp:", "[lamp]\n", "[hand-lamp]\n", "tool:lamp", "tool:hand-lamp").Replace(text)
		if got := d.file(name); got != want {
			t.Errorf("%s is\n%s\nwant\n%s", name, got, want)
		}
	}
	put(t, d.folder, "register/tools.yaml", d.file("register/tools.yaml")+"# by hand\n")
	if status, told := d.questioned("undo", write.Asked{Page: "procedures/job.html"}); status != http.StatusConflict || told.Why != "FileChanged" {
		t.Errorf("undone over what somebody else wrote: %d %s", status, told.Why)
	}
	if !strings.Contains(d.file("procedures/job.md"), "tool:hand-lamp") {
		t.Error("one file of two went back")
	}
	put(t, d.folder, "register/tools.yaml", strings.TrimSuffix(d.file("register/tools.yaml"), "# by hand\n"))
	if status, told := d.questioned("undo", write.Asked{Page: "procedures/job.html"}); status != http.StatusOK {
		t.Fatalf("undone: %d %s %s", status, told.Why, told.More)
	}
	for name, text := range shop {
		if d.file(name) != text {
			t.Errorf("undone, %s is\n%s", name, d.file(name))
		}
	}
	if status, _ := d.questioned("redo", write.Asked{Page: "procedures/job.html"}); status != http.StatusOK || !strings.Contains(d.file("procedures/job.md"), "tool:hand-lamp") {
		t.Errorf("done again: %d", status)
	}
}

// A procedure and a machine move with their names: the writer looks on at the
// new page, and at the old one once it is undone.
func TestAPageMovesWithItsName(t *testing.T) {
	t.Parallel()
	for _, c := range []struct{ page, in, id, file, moved, at string }{
		{"procedures/job.html", "procedures", "job", "procedures/job.md", "procedures/first-job.md", "procedures/first-job.html"},
		{"machines/rig.html", "machines", "rig", "machines/rig.yaml", "machines/first-job.yaml", "machines/first-job.html"},
	} {
		d := newDesk(t, shop)
		was := d.file(c.file)
		_, told := d.questioned("open", write.Asked{Page: c.page})
		state := ""
		if told.Sheet != nil {
			state = told.Sheet.State
		} else {
			state = told.Machine.State
		}
		status, told := d.named(c.page, c.in, c.id, "First job", state)
		if status != http.StatusOK || told.Page != c.at {
			t.Fatalf("%s: %d %s %s, the page is %q", c.id, status, told.Why, told.More, told.Page)
		}
		if c.in == "machines" && (d.file(c.moved) != was || !strings.Contains(d.file("procedures/job.md"), "for: first-job\n")) {
			t.Errorf("%s is\n%s", c.moved, d.file(c.moved))
		}
		if status, told := d.questioned("undo", write.Asked{Page: c.at}); status != http.StatusOK || told.Page != c.page || d.file(c.file) != was {
			t.Errorf("%s undone: %d %s, the page is %q", c.id, status, told.Why, told.Page)
		}
	}
}

// A name that is taken or none, a form that is old, and what is not there are
// refused, and nothing is written.
func TestARenameThatCannotBeIsRefused(t *testing.T) {
	t.Parallel()
	d := newDesk(t, shop)
	const page, rig = "procedures/job.html", "machines/rig.html"
	_, told := d.questioned("form", write.Asked{Page: page, In: "tools", ID: "lamp"})
	tools := told.Form.State
	_, told = d.questioned("form", write.Asked{Page: rig, In: "parts", ID: "seat"})
	machine := told.Form.State
	for name, c := range map[string]struct{ page, in, id, to, state, why string }{
		"taken":             {page, "tools", "lamp", "sling", tools, "IDTaken"},
		"taken by a bolt":   {rig, "parts", "seat", "Bolt", machine, "IDTaken"},
		"no name":           {page, "tools", "lamp", "…", tools, "BadID"},
		"a system's":        {page, "tools", "lamp", "con", tools, "BadID"},
		"too long":          {page, "tools", "lamp", strings.Repeat("a", 70), tools, "BadID"},
		"the same":          {page, "tools", "lamp", "lamp", tools, "CannotNow"},
		"an old form":       {page, "tools", "lamp", "light", "", "FileChanged"},
		"not there":         {page, "tools", "gone", "light", tools, "NotSaved"},
		"no list":           {page, "toys", "lamp", "light", tools, "CannotNow"},
		"another procedure": {page, "procedures", "other", "light", tools, "FileChanged"},
	} {
		if status, told := d.named(c.page, c.in, c.id, c.to, c.state); status == http.StatusOK || told.Why != c.why {
			t.Errorf("%s: %d %s %s, want %s", name, status, told.Why, told.More, c.why)
		}
	}
	for name, text := range shop {
		if d.file(name) != text {
			t.Errorf("%s changed", name)
		}
	}
}
