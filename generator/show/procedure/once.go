package procedure

import (
	"strconv"
	"strings"

	"baybinder/generator/show/page"
)

// signsOnce are the drawings that stand on a page. Each is drawn once, where it is
// met first; where it is met again, the page points there: a job meets the same
// few signs at many steps.
type signsOnce map[string]string // what is drawn, to its id

const canvas = `viewBox="0 0 64 64">`

// once gives a drawing its id, or points to where it stands.
func (d signsOnce) once(sign *page.HTML) {
	head, inner, is := strings.Cut(string(*sign), canvas)
	inner, whole := strings.CutSuffix(inner, "</svg>")
	if !is || !whole {
		return
	}
	if id, met := d[inner]; met {
		*sign = page.HTML(head + canvas + `<use href="#` + id + `"/></svg>`)
		return
	}
	id := "sign-" + strconv.Itoa(len(d)+1)
	d[inner] = id
	*sign = page.HTML(head + canvas + `<g id="` + id + `">` + inner + `</g></svg>`)
}

func (d signsOnce) boxes(list []page.Box) {
	for i := range list {
		b := &list[i]
		d.once(&b.Alert)
		for j := range b.Messages {
			d.once(&b.Messages[j].Sign)
		}
		d.gear(b.Wear)
	}
}

func (d signsOnce) gear(list []page.Gear) {
	for i := range list {
		d.once(&list[i].Sign)
	}
}

func (d signsOnce) step(st *Step) {
	d.boxes(st.Boxes)
	for i := range st.Derived {
		d.boxes(st.Derived[i].Boxes)
	}
	for i := range st.Subs {
		d.step(&st.Subs[i])
	}
}

// drawOnce goes through a page in the order in which it is read.
func (p *Procedure) drawOnce() {
	d := signsOnce{}
	d.gear(p.Before.Wear)
	for i := range p.Phases {
		d.boxes(p.Phases[i].Boxes)
		for _, part := range p.Phases[i].Parts {
			if part.Step != nil {
				d.step(part.Step)
			}
		}
	}
}
