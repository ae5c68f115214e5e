// Package face says what of a procedure others look at: as long as that is the same, a change of its text reaches nothing but its own page and findings.
//
// # Decided where the format is silent
//
// Everything in a procedure's file is taken to be looked at by others, but for the words of its
// steps, its introduction and the prose between its steps, outside of their links. Who lets
// something else look at these words (the search, the reading ease) makes it anew at each change.
package face

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"hash"
	"io"
	"strconv"

	"baybinder/generator/model"
	"baybinder/generator/trade/faultcode"
)

// Face are two hashes of a procedure: what those look at that its links lead to
// or from, and what the manual as a whole looks at.
type Face struct {
	Near string // everything but words
	Wide string // the front matter, what it performs and points at, what it leaves in place, its pictures, whether it locks
}

// Of is the face of a bound procedure.
func Of(p *model.Procedure) Face {
	return Face{near(p), wide(p)}
}

func sum(h hash.Hash) string { return hex.EncodeToString(h.Sum(nil)[:16]) }

// parts stands between texts; it cannot stand in a file.
const parts = 0

// near goes by the text of the file, so that a field of the model that nobody
// thought of is in it.
func near(p *model.Procedure) string {
	h := sha256.New()
	text, at := p.File.Text, 0
	var own []byte // what of a block is looked at besides
	for _, b := range worded(p) {
		own = blockFace(own[:0], b)
		if b.At.File != p.File || b.At.Start < at || b.At.End > len(text) {
			_, _ = h.Write(own)
			continue // its words stay in
		}
		own = append(append(own, text[at:b.At.Start]...), parts)
		at = b.At.Start
		for _, l := range b.Links {
			if l.At.File == p.File && l.At.Start >= at && l.At.End <= b.At.End {
				own = append(append(own, text[l.At.Start:l.At.End]...), parts)
				at = l.At.End
			}
		}
		_, _ = h.Write(own)
		at = b.At.End
	}
	_, _ = io.WriteString(h, text[at:])
	for _, st := range p.Steps {
		own = fmt.Appendf(own[:0], "%s %q %d %d\n", st.Number, st.Name, len(st.Blocks), st.People)
		_, _ = h.Write(own)
	}
	return sum(h)
}

// blockFace adds what others look at of a block besides its links.
func blockFace(to []byte, b *model.Block) []byte {
	to = append(to, byte(b.Role), ' ')
	to = strconv.AppendBool(to, b.Para)
	for _, n := range []int{len(b.Parts), len(b.Links)} {
		to = strconv.AppendInt(append(to, ' '), int64(n), 10)
	}
	to = append(to, '\n')
	for _, f := range faultcode.Find(b.Plain) {
		to = fmt.Appendf(to, "%+v\n", f.Code)
	}
	return to
}

// worded are the blocks whose words nobody else looks at, in reading order.
func worded(p *model.Procedure) []*model.Block {
	var out []*model.Block
	add := func(list []model.Block) {
		for i := range list {
			out = append(out, &list[i])
		}
	}
	var step func(s *model.Step)
	step = func(s *model.Step) {
		add(s.Blocks)
		for _, sub := range s.Subs {
			step(sub)
		}
	}
	add(p.Intro)
	for _, phase := range p.Phases {
		for _, part := range phase.Body {
			if part.Prose != nil {
				out = append(out, part.Prose)
			}
			if part.Step != nil {
				step(part.Step)
			}
		}
	}
	return out
}

// Leads are the procedures that a procedure names, each as often as it does.
func Leads(p *model.Procedure) []*model.Procedure {
	var out []*model.Procedure
	if p.Instead.To != nil {
		out = append(out, p.Instead.To)
	}
	for _, b := range blocks(p) {
		for _, l := range b.Links {
			if to, is := l.To.(*model.Procedure); is {
				out = append(out, to)
			}
		}
	}
	return out
}

func wide(p *model.Procedure) string {
	h := sha256.New()
	_, _ = io.WriteString(h, p.File.Text[:body(p)])
	for _, l := range p.Calls {
		fmt.Fprintf(h, "call %q\n", l.Address)
	}
	locks := false
	for _, b := range blocks(p) {
		for _, l := range b.Links {
			locks = locks || l.Is(model.LinkLock)
			if _, is := l.To.(*model.Procedure); is || l.Bad || l.Kind == model.PictureLink || l.Kind.Act == model.Place || l.Kind.Act == model.Clear {
				fmt.Fprintf(h, "%v %d %s %q %q %q\n", b.Para, b.Role, l.Kind.Name, l.Address, l.ID, l.Frag())
			}
		}
	}
	fmt.Fprintf(h, "locks %v\n", locks) // then it is inspected
	return sum(h)
}

// body is where the text begins behind the front matter.
func body(p *model.Procedure) int {
	at := len(p.File.Text)
	for i := range p.Intro {
		at = min(at, p.Intro[i].At.Start)
	}
	for _, phase := range p.Phases {
		at = min(at, phase.At.Start)
	}
	return at
}

// blocks are all texts of a procedure.
func blocks(p *model.Procedure) []*model.Block {
	out := worded(p)
	for _, phase := range p.Phases {
		out = append(out, &phase.Title)
		if phase.Lead != nil {
			out = append(out, phase.Lead)
		}
	}
	return out
}
