package generator

import "baybinder/generator/read/source"

// Reached says that a run would look at nothing but what an edit reaches.
func Reached(o Options) bool {
	tree, err := source.ReadOver(o.Manual, nil)
	if err != nil {
		return false
	}
	o.Today = o.day(tree)
	m := memoryOf(tree, o)
	return m.reached(m.past()) != nil
}
