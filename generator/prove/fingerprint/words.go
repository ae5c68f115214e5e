package fingerprint

import (
	"crypto/sha256"
	"encoding/hex"
	"html"
	"strings"

	"baybinder/generator/model"
)

// Words is a hash of what the shop wrote for readers in a procedure's own file,
// the title, the summary, prose, captions and the words of pictures, and of the
// pictures themselves, whose sums are given by path. White space is made one,
// Markdown's own marks are left out, and an empty link counts as the name that
// it prints, so that settle moves nothing.
func Words(p *model.Procedure, sums map[string]string) string {
	w := &wordsOf{sums: sums}
	w.say("title", p.Title)
	w.say("summary", p.Summary)
	w.blocks(p.Intro)
	for _, phase := range p.Phases {
		w.blocks([]model.Block{phase.Title})
		if phase.Lead != nil {
			w.blocks([]model.Block{*phase.Lead})
		}
		for _, part := range phase.Body {
			if part.Prose != nil {
				w.blocks([]model.Block{*part.Prose})
			}
			if part.Step != nil {
				w.step(part.Step)
			}
		}
	}
	sum := sha256.Sum256([]byte(strings.Join(w.lines, "\n")))
	return hex.EncodeToString(sum[:8])
}

type wordsOf struct {
	sums  map[string]string
	lines []string
}

func (w *wordsOf) say(what, text string) {
	if text = oneSpace(text); text != "" {
		w.lines = append(w.lines, what+" "+text)
	}
}

func (w *wordsOf) step(s *model.Step) {
	w.blocks(s.Blocks)
	for _, sub := range s.Subs {
		w.step(sub)
	}
}

func (w *wordsOf) blocks(blocks []model.Block) {
	for i := range blocks {
		b := &blocks[i]
		w.say("text", spaced(b))
		for _, link := range b.Links {
			w.say("caption", html.UnescapeString(link.Title()))
			if link.Kind == model.PictureLink {
				w.say("picture", w.sums[link.ID])
			}
		}
	}
}

// spaced is the text of a block, without emphasis and with a space for every
// other mark: two cells of a table are two words.
func spaced(b *model.Block) string {
	var text strings.Builder
	for r := range b.Runs() {
		switch {
		case r.Link != nil:
			text.WriteString(linkWords(r.Link))
		case r.Mark && !r.Emphasis():
			text.WriteByte(' ')
		default:
			text.WriteString(r.Words())
		}
	}
	return text.String()
}
