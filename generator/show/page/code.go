package page

import (
	"crypto/sha256"
	"fmt"
	"net/url"
	"strings"

	"rsc.io/qr"

	"baybinder/generator/model"
)

// Code is what leads from a printed card back to its page.
type Code struct {
	Address string // the page in the shop's network; "" where the shop gave none
	QR      HTML   // Address as a picture
	Short   string // six characters of the procedure and its revision
}

// Code is what leads back to a procedure from its card.
func (s *Site) Code(p *model.Procedure) Code {
	revision := ""
	if r := s.LastRevision(p); r != nil {
		revision = r.Number
	}
	v := Code{Short: ShortCode(p.ID + "\n" + revision)}
	if s.Manual.Shop.Address == "" {
		return v
	}
	address, err := url.JoinPath(s.Manual.Shop.Address, s.PageOf(p))
	if err != nil {
		return v
	}
	v.Address, v.QR = address, QRPicture(address, s.Words.CodeOfPage)
	return v
}

// letters leave out what is mistaken for another on paper: 0 O, 1 I L, 2 Z, 5 S, 8 B.
const letters = "34679ACDEFGHJKMNPQRTUVWXY"

// ShortCode is six letters and figures that a text gives.
func ShortCode(text string) string {
	sum := sha256.Sum256([]byte(text))
	var out strings.Builder
	for _, b := range sum[:6] {
		out.WriteByte(letters[int(b)%len(letters)])
	}
	return out.String()
}

// qrMargin is the quiet zone that readers need, in modules (ISO/IEC 18004: 4).
const qrMargin = 4

// QRPicture draws a text as a QR code, dark modules in rows of one path. Each
// row of modules is a box that the fill closes, drawn from where the pen stands
// after the one before: from its left end, one below.
func QRPicture(text, name string) HTML {
	code, err := qr.Encode(text, qr.M)
	if err != nil {
		return "" // longer than a code can hold: the address stands beside it
	}
	var path strings.Builder
	penX, penY := 0, 0
	for y := range code.Size {
		for x := 0; x < code.Size; x++ {
			from := x
			for x < code.Size && code.Black(x, y) {
				x++
			}
			if x > from {
				fmt.Fprintf(&path, "m%d %dh%dv1h-%d", from+qrMargin-penX, y+qrMargin-penY, x-from, x-from)
				penX, penY = from+qrMargin, y+qrMargin+1
			}
		}
	}
	side := code.Size + 2*qrMargin
	return HTML(fmt.Sprintf(`<svg class="qr" viewBox="0 0 %d %d" role="img" aria-label="%s"><path fill="#ffffff" d="M0 0h%dv%dH0z"/><path fill="#000000" d="%s"/></svg>`,
		side, side, Escaped(name), side, side, strings.ReplaceAll(path.String(), " -", "-")))
}

// LastRevision is what was issued of a procedure last; nil where nothing was.
func (s *Site) LastRevision(p *model.Procedure) *model.Revision {
	for i := len(s.Manual.Revisions) - 1; i >= 0; i-- {
		if s.Manual.Revisions[i].Procedure.To == p {
			return &s.Manual.Revisions[i]
		}
	}
	return nil
}
