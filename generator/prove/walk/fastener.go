package walk

import "baybinder/generator/model"

// scope is where a fastener act works: the fastening named, those of the parts
// that the step takes off or puts back, else all.
func (w *walk) scope(l *model.Link, f *model.Fastener) (parts []*model.Part, all bool) {
	if l.Part() != nil {
		return []*model.Part{l.Part()}, false
	}
	for _, other := range w.here.step.Links {
		p, is := other.To.(*model.Part)
		if is && !other.Bad && other.Kind.MovesPart() && w.fastens(f, p) && !contains(parts, p) {
			parts = append(parts, p)
		}
	}
	if len(parts) > 0 {
		return parts, false
	}
	return f.Holds, true
}

func contains(parts []*model.Part, p *model.Part) bool {
	for _, q := range parts {
		if q == p {
			return true
		}
	}
	return false
}

func (w *walk) fastens(f *model.Fastener, p *model.Part) bool {
	_, there := w.lay.at[fastening{f, p}]
	return there
}
