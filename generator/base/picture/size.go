package picture

import (
	"bytes"
	"encoding/binary"
	"encoding/xml"
	"image"
	_ "image/gif"  // what image.DecodeConfig reads
	_ "image/jpeg" // likewise
	_ "image/png"  // likewise
	"io"
	"path"
	"strconv"
	"strings"
)

// Size is how large a picture shows itself, in the pixels of a page. The zero
// Size is not known.
type Size struct{ Width, Height int }

// Within is the size at which a picture is no higher than that, in proportion.
func (s Size) Within(height int) Size {
	if s.Height <= height {
		return s
	}
	return Size{max(1, (s.Width*height+s.Height/2)/s.Height), height}
}

// large is how wide a drawing is that says nothing but its proportion: a browser
// gives it all the room there is.
const large = 2000

// most is the side above which a file is not believed.
const most = 1 << 20

// SizeOf is the size of a picture as a browser shows it: of a drawing by its width
// and height or by its viewBox, of a photograph upright, as its camera was held. It
// is zero for what has none (a film, a text), and where it cannot be read.
func SizeOf(name string, r io.Reader) Size {
	var s Size
	switch strings.ToLower(path.Ext(name)) {
	case ".svg":
		s = sizeOfSVG(r)
	case ".webp":
		s = sizeOfWebP(r)
	case ".png", ".gif":
		s, _ = sizeOfPixels(r)
	case ".jpg", ".jpeg":
		s = sizeOfPhotograph(r)
	}
	if s.Width <= 0 || s.Height <= 0 || s.Width > most || s.Height > most {
		return Size{}
	}
	return s
}

func sizeOfPixels(r io.Reader) (Size, error) {
	c, _, err := image.DecodeConfig(r)
	return Size{c.Width, c.Height}, err
}

// sizeOfPhotograph turns the sides of a JPEG round whose Exif says that the camera
// was held upright: a browser shows it so.
func sizeOfPhotograph(r io.Reader) Size {
	var head bytes.Buffer
	s, err := sizeOfPixels(io.TeeReader(r, &head))
	if err == nil && orientation(head.Bytes()) >= 5 {
		s.Width, s.Height = s.Height, s.Width
	}
	return s
}

// orientation is tag 0112 of the first directory of a JPEG's Exif (TIFF 6.0, page
// 36): 5 to 8 are those that lie on their side. It is 0 where there is none.
func orientation(jpeg []byte) int {
	exif := segment(jpeg, 0xE1, "Exif\x00\x00")
	if len(exif) < 8 {
		return 0
	}
	var order binary.ByteOrder = binary.BigEndian
	if exif[0] == 'I' {
		order = binary.LittleEndian
	}
	at := int64(order.Uint32(exif[4:]))
	if at+2 > int64(len(exif)) {
		return 0
	}
	entries := exif[at+2:]
	for n := order.Uint16(exif[at:]); n > 0 && len(entries) >= 12; n-- {
		if order.Uint16(entries) == 0x0112 {
			return int(order.Uint16(entries[8:]))
		}
		entries = entries[12:]
	}
	return 0
}

// segment is what a segment of a JPEG holds that has a marker and begins with a
// name; nil where there is none before the picture itself.
func segment(jpeg []byte, marker byte, name string) []byte {
	for rest := jpeg[min(2, len(jpeg)):]; len(rest) >= 4 && rest[0] == 0xFF; {
		length := int(binary.BigEndian.Uint16(rest[2:]))
		if length < 2 || len(rest) < 2+length {
			return nil
		}
		if body := rest[4 : 2+length]; rest[1] == marker && bytes.HasPrefix(body, []byte(name)) {
			return body[len(name):]
		}
		rest = rest[2+length:]
	}
	return nil
}

// sizeOfWebP reads the first chunk of a WebP (RFC 9649): VP8 with loss, VP8L
// without, or VP8X, which is either and more.
func sizeOfWebP(r io.Reader) Size {
	b := make([]byte, 30)
	if _, err := io.ReadFull(r, b); err != nil || string(b[:4]) != "RIFF" || string(b[8:12]) != "WEBP" {
		return Size{}
	}
	switch string(b[12:16]) {
	case "VP8X":
		return Size{1 + three(b[24:]), 1 + three(b[27:])}
	case "VP8 ":
		return Size{int(binary.LittleEndian.Uint16(b[26:]) & 0x3FFF), int(binary.LittleEndian.Uint16(b[28:]) & 0x3FFF)}
	case "VP8L":
		bits := binary.LittleEndian.Uint32(b[21:])
		return Size{1 + int(bits&0x3FFF), 1 + int(bits>>14&0x3FFF)}
	}
	return Size{}
}

func three(b []byte) int { return int(b[0]) | int(b[1])<<8 | int(b[2])<<16 }

// sizeOfSVG reads the first element of a drawing.
func sizeOfSVG(r io.Reader) Size {
	d := xml.NewDecoder(r)
	d.CharsetReader = sameText
	for {
		token, err := d.Token()
		if err != nil {
			return Size{}
		}
		if e, is := token.(xml.StartElement); is {
			return drawn(e)
		}
	}
}

// drawn is the size of a drawing by the attributes of its svg element. Where it
// says but one side, or none, the viewBox has the proportion.
func drawn(e xml.StartElement) Size {
	var width, height float64
	var box []string
	for _, a := range e.Attr {
		switch {
		case a.Name.Space != "":
		case a.Name.Local == "width":
			width = pixels(a.Value)
		case a.Name.Local == "height":
			height = pixels(a.Value)
		case a.Name.Local == "viewBox":
			box = strings.FieldsFunc(a.Value, func(r rune) bool { return r == ',' || r == ' ' || r == '\t' || r == '\n' || r == '\r' })
		}
	}
	if (width <= 0 || height <= 0) && len(box) == 4 {
		across, _ := strconv.ParseFloat(box[2], 64)
		down, _ := strconv.ParseFloat(box[3], 64)
		if across <= 0 || down <= 0 {
			return Size{}
		}
		switch {
		case width > 0:
		case height > 0:
			width = height * across / down
		default:
			width = large
		}
		height = width * down / across
	}
	if !(width < most && height < most) {
		return Size{}
	}
	return Size{int(width + .5), int(height + .5)}
}

// lengths are the units of a drawing's sides in pixels (CSS Values 6.2); those that
// hang on a font or on the room there is say no size.
var lengths = map[string]float64{"": 1, "px": 1, "pt": 96. / 72, "pc": 16, "in": 96, "cm": 96 / 2.54, "mm": 96 / 25.4, "q": 96 / 101.6}

// pixels is a length in pixels, 0 for what is none.
func pixels(text string) float64 {
	text = strings.ToLower(strings.TrimSpace(text))
	number := strings.TrimRight(text, "abcdefghijklmnopqrstuvwxyz%")
	n, err := strconv.ParseFloat(number, 64)
	unit, known := lengths[text[len(number):]]
	if err != nil || !known {
		return 0
	}
	return n * unit
}
