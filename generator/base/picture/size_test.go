package picture

import (
	"bytes"
	"encoding/binary"
	"image"
	"image/gif"
	"image/jpeg"
	"image/png"
	"strings"
	"testing"
)

// Known: FROM MEMORY.

// Drawings by their attributes: SVG 2, 8.2 and 8.6 (width, height, viewBox), the units of CSS Values
// 6.2 from memory. What hangs on a font or on the room there is says no size.
func TestSizeOfADrawing(t *testing.T) {
	for text, want := range map[string]Size{
		`<svg viewBox="0 0 640 460" width="640" height="460"/>`:                  {640, 460},
		`<svg width="320px" height="200px"/>`:                                    {320, 200},
		`<svg width="2in" height="25.4mm" viewBox="0 0 1 1"/>`:                   {192, 96},
		`<svg width="72pt" height="2.54cm"/>`:                                    {96, 96},
		`<svg width="320" viewBox="0 0 640 460"/>`:                               {320, 230},
		`<svg height="230" viewBox="0 0 640 460"/>`:                              {320, 230},
		`<svg viewBox="0,0,640,320"/>`:                                           {2000, 1000},
		`<svg width="100%" height="100%" viewBox="0 0 640 320"/>`:                {2000, 1000},
		`<svg width="20em" viewBox="0 0 640 320"/>`:                              {2000, 1000},
		`<?xml version="1.0"?><!-- a --><svg width="4" height="3"><rect/></svg>`: {4, 3},
		`<svg/>`:                          {},
		`<svg viewBox="0 0 0 10"/>`:       {},
		`<svg viewBox="0 0 10"/>`:         {},
		`<svg width="-4" height="3"/>`:    {},
		`<svg width="NaN" height="3"/>`:   {},
		`<svg width="Inf" height="3"/>`:   {},
		`<svg width="1e9" height="1e9"/>`: {},
		`not a drawing`:                   {},
	} {
		if got := SizeOf("a.SVG", strings.NewReader(text)); got != want {
			t.Errorf("%s: %v, want %v", text, got, want)
		}
	}
}

// Pictures of pixels, written by the standard library; of a photograph also with the
// Exif that a camera writes which was held upright (TIFF 6.0, from memory), in both
// orders of bytes.
func TestSizeOfPixels(t *testing.T) {
	pixels := image.NewGray(image.Rect(0, 0, 30, 20))
	written := func(write func(*bytes.Buffer) error) []byte {
		var b bytes.Buffer
		if err := write(&b); err != nil {
			t.Fatal(err)
		}
		return b.Bytes()
	}
	photograph := written(func(b *bytes.Buffer) error { return jpeg.Encode(b, pixels, nil) })
	for _, c := range []struct {
		name string
		data []byte
		want Size
	}{
		{"a.png", written(func(b *bytes.Buffer) error { return png.Encode(b, pixels) }), Size{30, 20}},
		{"a.gif", written(func(b *bytes.Buffer) error { return gif.Encode(b, pixels, nil) }), Size{30, 20}},
		{"a.jpg", photograph, Size{30, 20}},
		{"lying.jpeg", photographed(photograph, binary.BigEndian, 3), Size{30, 20}},
		{"upright.JPG", photographed(photograph, binary.BigEndian, 6), Size{20, 30}},
		{"upright too.jpg", photographed(photograph, binary.LittleEndian, 8), Size{20, 30}},
		{"cut off.jpg", photograph[:20], Size{}},
		{"another.png", []byte("a text"), Size{}},
		{"film.mp4", photograph, Size{}},
		{"lossy.webp", webP("VP8 ", []byte{0x10, 0, 0, 0x9d, 0x01, 0x2a, 30, 0, 20, 0}), Size{30, 20}},
		{"lossless.webp", webP("VP8L", []byte{0x2f, 0x1d, 0xc0, 0x04, 0, 0, 0, 0, 0, 0}), Size{30, 20}},
		{"more.webp", webP("VP8X", []byte{0, 0, 0, 0, 29, 0, 0, 19, 0, 0}), Size{30, 20}},
		{"cut off.webp", []byte("RIFF....WEBPVP8X"), Size{}},
	} {
		if got := SizeOf(c.name, bytes.NewReader(c.data)); got != c.want {
			t.Errorf("%s: %v, want %v", c.name, got, c.want)
		}
	}
}

// webP is the head of a WebP, as RFC 9649 (from memory) draws it: 14 bits a side, without loss each
// less one; 24 bits less one in the extended form.
func webP(chunk string, data []byte) []byte {
	return append([]byte("RIFF\x1e\x00\x00\x00WEBP"+chunk+"\x0a\x00\x00\x00"), data...)
}

// photographed is a photograph of a camera that was held so.
func photographed(jpeg []byte, order binary.AppendByteOrder, how uint16) []byte {
	exif := []byte("Exif\x00\x00MM")
	if order == binary.LittleEndian {
		exif = []byte("Exif\x00\x00II")
	}
	exif = order.AppendUint16(exif, 42)
	exif = order.AppendUint32(exif, 8) // the first directory
	exif = order.AppendUint16(exif, 2) // its entries
	for _, e := range [][2]uint16{{0x0100, 1}, {0x0112, how}} {
		exif = order.AppendUint16(exif, e[0])
		exif = order.AppendUint16(exif, 3) // a short
		exif = order.AppendUint32(exif, 1)
		exif = order.AppendUint16(exif, e[1])
		exif = append(exif, 0, 0)
	}
	exif = append(exif, 0, 0, 0, 0)
	head := binary.BigEndian.AppendUint16([]byte{0xFF, 0xD8, 0xFF, 0xE1}, uint16(len(exif)+2))
	return append(append(head, exif...), jpeg[2:]...)
}

// FuzzSizeOf reads what is not nicely made.
func FuzzSizeOf(f *testing.F) {
	f.Add("a.jpg", []byte{0xFF, 0xD8, 0xFF, 0xE1, 0, 20})
	f.Add("a.webp", webP("VP8X", []byte{0, 0, 0, 0, 29, 0, 0, 19, 0, 0}))
	f.Add("a.svg", []byte(`<svg viewBox="0 0 1 1"/>`))
	f.Fuzz(func(t *testing.T, name string, data []byte) {
		if s := SizeOf(name, bytes.NewReader(data)); (s.Width > 0) != (s.Height > 0) || s.Width < 0 || s.Width > most || s.Height > most {
			t.Errorf("%v", s)
		}
	})
}

func TestAPictureIsNoHigherThanTheRoom(t *testing.T) {
	for _, c := range []struct{ is, want Size }{
		{Size{640, 400}, Size{640, 400}},
		{Size{4000, 3000}, Size{555, 416}},
		{Size{3, 9000}, Size{1, 416}},
		{Size{}, Size{}},
	} {
		if got := c.is.Within(416); got != c.want {
			t.Errorf("%v within 416: %v, want %v", c.is, got, c.want)
		}
	}
}
