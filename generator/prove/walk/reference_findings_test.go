package walk_test

import (
	"strings"

	"baybinder/generator/model"
)

func (x *run) frame() *frame { return x.frames[len(x.frames)-1] }

// fault reports something wrong at the link under way.
func (x *run) fault(code, what string) {
	x.faultAt(x.frame().link, x.frame().path, code, what, nil)
}

// faultAt reports at the link of a frame, or at the do: of the top where the
// frame is inlined.
func (x *run) faultAt(l *model.Link, path, code, what string, topLink *model.Link) {
	f := raw{path, l, code, what + x.by}
	x.raws[f] = true
	if x.inside && (code == "restored-while-open" || code == "refit-over-open" && x.get(what) != normalOf(what)) {
		x.below[what] = true // it is told there, and not at the end of who performs it
	}
	if path != x.frames[0].path {
		for i, ex := range x.exclude {
			rest, below := strings.CutPrefix(path, x.from[i])
			if inner := f; below {
				inner.path = rest
				if ex[inner] {
					return
				}
			}
		}
		l = x.frames[0].link
	}
	if topLink != nil {
		l = topLink
	}
	x.out[at(l.At, code)] = true
}
