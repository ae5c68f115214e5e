package page

import (
	"reflect"
	"slices"

	"baybinder/generator/model"
)

// Change is what an edit makes another in the rows of procedures.
type Change struct {
	All   bool            // nobody knows what
	Far   bool            // one stands in other lists
	Lists map[string]bool // the machines in whose lists one reads otherwise, by id
	Uses  map[string]bool // the entries that one uses otherwise, by the path of their page
	Codes bool            // one names other fault codes
	Shelf bool            // an entry of a register reads otherwise
}

// InLists says that a list of procedures is another.
func (c *Change) InLists() bool { return c.All || len(c.Lists) > 0 }

// InList says that the list of a machine's procedures is another, nil for any.
func (c *Change) InList(m *model.Machine) bool {
	if m == nil {
		return c.All || c.Lists[""]
	}
	return c.All || c.Lists[m.ID]
}

// InIndexes says that an index is another.
func (c *Change) InIndexes() bool { return c.All || c.Codes || len(c.Uses) > 0 }

// Used says that an entry is used otherwise, by the path of its page.
func (c *Change) Used(at string) bool { return c.All || c.Uses[at] }

// Entry notes that an entry of a register reads otherwise, by its id.
func (c *Change) Entry(id string) {
	c.Shelf = true
	for _, n := range []model.Named{&model.Tool{}, &model.Supply{}, &model.Hazard{}, &model.Hold{}} {
		n.Base().ID = id
		mark(&c.Uses, PageOf(n))
	}
}

// Note notes a procedure's row as it was and as it is.
func (c *Change) Note(was, now *Row) {
	c.Far = c.Far || was.For != now.For || was.Retired != now.Retired || was.Name != now.Name
	if was.Use != now.Use || !reflect.DeepEqual(was.Sheet, now.Sheet) || !slices.Equal(was.Aids, now.Aids) {
		mark(&c.Lists, now.For)
	}
	c.Codes = c.Codes || !slices.Equal(was.Codes, now.Codes)
	c.uses(was.Uses, now.Uses)
	c.uses(now.Uses, was.Uses)
}

// uses notes the entries that are used here, and not so there.
func (c *Change) uses(here, there []RowUse) {
	for i := range here {
		if !slices.ContainsFunc(there, func(u RowUse) bool { return reflect.DeepEqual(u, here[i]) }) {
			mark(&c.Uses, here[i].Of)
		}
	}
}

func mark(set *map[string]bool, key string) {
	if *set == nil {
		*set = map[string]bool{}
	}
	(*set)[key] = true
}
