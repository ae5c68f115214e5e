package register

import (
	"net/url"

	"baybinder/generator/model"
	"baybinder/generator/show/page"
)

// Labels is a sheet of labels for machines and for the places of tools.
type Labels struct {
	page.Frame
	Labels []Label
}

// Label is one label: a name, where the thing is kept, and the way to its page.
type Label struct {
	page.Link
	QR    page.HTML
	Short string
}

// Labels makes the sheet of labels.
func (s *Pages) Labels() *Labels {
	v := &Labels{Frame: s.Frame("labels.html", s.Words.Labels)}
	for _, m := range s.Manual.Machines {
		v.Labels = append(v.Labels, s.label(m, ""))
	}
	for _, t := range sortedBy(s.Manual.Tools, func(t *model.Tool) string { return t.Kept }) {
		v.Labels = append(v.Labels, s.label(t, t.Kept))
	}
	return v
}

func (s *Pages) label(n model.Named, kept string) Label {
	v := Label{Link: s.Link("", n), Short: page.ShortCode(page.PageOf(n))}
	v.Note = kept
	if address, err := url.JoinPath(s.Manual.Shop.Address, page.PageOf(n)); err == nil && s.Manual.Shop.Address != "" {
		v.QR = page.QRPicture(address, s.Words.CodeOfPage)
	}
	return v
}
