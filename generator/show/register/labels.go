package register

import (
	"net/url"
	"slices"

	"baybinder/generator/model"
	"baybinder/generator/show/page"
)

// Labels is a sheet of labels for machines and for the places of tools.
type Labels struct {
	page.Frame
	Labels []Label
	Parts  []page.Part
}

// labelsAt is the first sheet, onSheet how many labels a sheet has: a code
// takes about 5 kB.
const (
	labelsAt = "labels.html"
	onSheet  = 16
)

// Sheet is one sheet of labels, and where it stands.
type Sheet struct {
	At     string
	labels []model.Named
	n, of  int
}

// Label is one label: a name, where the thing is kept, and the way to its page.
type Label struct {
	page.Link
	QR    page.HTML
	Short string
}

// Sheets are the sheets of labels: of the machines, then of the tools by their
// places. There is one at least.
func (s *Pages) Sheets() []Sheet {
	var all []model.Named
	for _, m := range s.Manual.Machines {
		all = append(all, m)
	}
	for _, t := range sortedBy(s.Manual.Tools, func(t *model.Tool) string { return t.Kept }) {
		all = append(all, t)
	}
	out := []Sheet{}
	for part := range slices.Chunk(all, onSheet) {
		out = append(out, Sheet{At: page.PartAt(labelsAt, len(out)), labels: part, n: len(out)})
	}
	if len(out) == 0 {
		out = append(out, Sheet{At: labelsAt})
	}
	for i := range out {
		out[i].of = len(out)
	}
	return out
}

// Labels makes a sheet of labels.
func (s *Pages) Labels(sheet Sheet) *Labels {
	v := &Labels{Frame: s.Frame(sheet.At, s.Words.Labels), Parts: page.PartsOf(labelsAt, sheet.n, sheet.of)}
	for _, n := range sheet.labels {
		v.Labels = append(v.Labels, s.label(n))
	}
	return v
}

func (s *Pages) label(n model.Named) Label {
	v := Label{Link: s.Link("", n), Short: page.ShortCode(page.PageOf(n))}
	if t, is := n.(*model.Tool); is {
		v.Note = t.Kept
	}
	if address, err := url.JoinPath(s.Manual.Shop.Address, page.PageOf(n)); err == nil && s.Manual.Shop.Address != "" {
		v.QR = page.QRPicture(address, s.Words.CodeOfPage)
	}
	return v
}
