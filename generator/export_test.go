package generator

import "baybinder/generator/read/source"

// Reached says that a run would look at nothing but what an edit reaches.
func Reached(o Options) bool {
	tree, err := source.ReadOver(o.Manual, nil)
	return err == nil && memoryOf(tree, o).reached(memoryOf(tree, o).past()) != nil
}
