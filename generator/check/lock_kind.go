package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/read/decode"
)

// runLockKind tells of a shop whose locks are a tool that is plainly something else: no
// point is held by it, and the kit counts it. The format names no kind there, so that an
// aid, or what has no kind of its own, is taken as it stands.
func runLockKind(c *Context) []finding.Finding {
	locks := c.Manual.Shop.Locks
	if locks == nil || locks.Tool.To == nil {
		return nil
	}
	t := locks.Tool.To
	switch {
	case t.Lost("kind"), t.Kind == "lock", t.Kind == "aid", t.Kind == "other":
		return nil
	}
	return []finding.Finding{decode.WrongType.At(locks.Tool.At, "locks: tool: names %s, which is a tool of kind %s; it takes kind lock", t.ID, t.Kind).
		WithMend("name a tool of kind lock, or mend the kind of %s", t.ID).See(t.At, "the tool is here")}
}
