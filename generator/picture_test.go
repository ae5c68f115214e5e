package generator_test

import (
	"bytes"
	"context"
	"encoding/base64"
	"fmt"
	"net/http"
	"net/http/httptest"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"

	"baybinder/generator/base/picture"
)

// Known: SEEN.

// What Chromium makes of a picture, and what the program reads in its head. Of a
// drawing that says no size of its own they agree in the proportion. The WebP are
// Chromium's own.
func TestAPictureIsAsLargeAsABrowserShowsIt(t *testing.T) {
	t.Parallel()
	ctx := window(t)
	must(t, chromedp.Do(ctx, chromedp.Navigate("about:blank")))
	drawn := func(kind string, quality float64) string {
		return js[string](t, ctx, fmt.Sprintf(`(() => {
			const c = document.createElement('canvas');
			c.width = 30; c.height = 20;
			c.getContext('2d').fillRect(2, 3, 4, 5);
			return c.toDataURL('image/%s', %g);
		})()`, kind, quality))
	}
	svg := func(attributes string) string {
		return "data:image/svg+xml;base64," + base64.StdEncoding.EncodeToString([]byte(`<svg xmlns="http://www.w3.org/2000/svg" `+attributes+`><rect width="9" height="9"/></svg>`))
	}
	for _, c := range []struct {
		name, data string
		own        bool // it says its size
	}{
		{"a.webp", drawn("webp", .5), true},
		{"lossless.webp", drawn("webp", 1), true},
		{"a.png", drawn("png", 1), true},
		{"a.jpg", drawn("jpeg", 1), true},
		{"upright.jpg", upright(drawn("jpeg", 1)), true},
		{"a.svg", svg(`viewBox="0 0 640 460" width="640" height="460"`), true},
		{"inches.svg", svg(`width="2in" height="25.4mm" viewBox="0 0 4 2"`), true},
		{"points.svg", svg(`width="72pt" height="8pc"`), true},
		{"wide.svg", svg(`width="320" viewBox="0 0 640 480"`), true},
		{"high.svg", svg(`height="230" viewBox="0,0 640 460"`), true},
		{"box.svg", svg(`viewBox="0 0 640 480"`), false},
		{"all.svg", svg(`width="100%" height="100%" viewBox="0 0 640 480"`), false},
	} {
		_, text, _ := strings.Cut(c.data, ",")
		data, err := base64.StdEncoding.DecodeString(text)
		must(t, err)
		got := picture.SizeOf(c.name, bytes.NewReader(data))
		shown := js[[]int](t, ctx, fmt.Sprintf(`(async () => {
			const i = new Image();
			i.src = %q;
			await i.decode();
			return [i.naturalWidth, i.naturalHeight];
		})()`, c.data))
		want := picture.Size{Width: shown[0], Height: shown[1]}
		if alike := got.Width*want.Height - got.Height*want.Width; c.own && got != want || got.Width == 0 || abs(alike) > got.Width {
			t.Errorf("%s: %v, and the browser shows %v", c.name, got, want)
		}
	}
}

func abs(n int) int { return max(n, -n) }

// upright puts the Exif of a camera that was held upright into a JPEG.
func upright(data string) string {
	head, text, _ := strings.Cut(data, ",")
	jpeg, err := base64.StdEncoding.DecodeString(text)
	if err != nil {
		return ""
	}
	const exif = "\xFF\xE1\x00\x22Exif\x00\x00MM\x00\x2A\x00\x00\x00\x08\x00\x01\x01\x12\x00\x03\x00\x00\x00\x01\x00\x06\x00\x00\x00\x00\x00\x00"
	return head + "," + base64.StdEncoding.EncodeToString([]byte(string(jpeg[:2])+exif+string(jpeg[2:])))
}

// A page keeps the place of a picture that has not come yet: what stands below does
// not move as it comes, at any width. The pictures of the second copy never come.
func TestAPageKeepsThePlaceOfAPicture(t *testing.T) {
	t.Parallel()
	ctx := window(t)
	come := make(chan struct{})
	files := http.FileServer(http.Dir(demoSite(t)))
	server := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if r.URL.RawQuery == "held" {
			<-come
		}
		files.ServeHTTP(w, r)
	}))
	defer server.Close()
	defer close(come)
	seen := 0
	for _, page := range []string{"isolate-compressor", "isolate-tug-traction", "change-drive-wheel", "grease-steer-hubs", "replace-separator", "replace-contactor-panel"} {
		must(t, chromedp.Do(ctx, chromedp.EmulateViewport(1280, 900), chromedp.Navigate(server.URL+"/procedures/"+page+".html")))
		for _, width := range []int64{1280, 390, 320} {
			resize(t, ctx, width, 900)
			for _, wrong := range keptPlaces(t, ctx) {
				t.Errorf("%s at %d px: %s", page, width, wrong)
			}
			seen += js[int](t, ctx, `document.querySelectorAll('.picture').length`)
		}
	}
	if seen < 3*6 {
		t.Errorf("%d pictures were looked at", seen)
	}
}

// keptPlaces are the pictures of a page that are not shown in proportion or within
// it, or take another place once they have come.
func keptPlaces(t *testing.T, ctx context.Context) []string {
	t.Helper()
	return js[[]string](t, ctx, `[...document.querySelectorAll('.picture')].flatMap((i) => {
		const r = i.getBoundingClientRect(), wrong = [], held = i.cloneNode();
		if (!i.complete || !r.height) return [i.src + ' has not come'];
		if (Math.abs(r.width / r.height - i.naturalWidth / i.naturalHeight) > .02 * r.width / r.height) wrong.push(i.src + ' is ' + r.width + ' by ' + r.height);
		if (r.right > innerWidth) wrong.push(i.src + ' ends at ' + r.right);
		held.src = i.src + '?held';
		i.replaceWith(held);
		const h = held.getBoundingClientRect();
		if (Math.abs(h.height - r.height) > 1 || Math.abs(h.width - r.width) > 1) wrong.push(i.src + ' comes into ' + h.width + ' by ' + h.height + ', and is ' + r.width + ' by ' + r.height);
		held.replaceWith(i);
		return wrong;
	})`)
}

// The demo's drawings have their labels whole, and none over another, as they are
// shown.
func TestLabelsOfDrawingsAreWhole(t *testing.T) {
	t.Parallel()
	ctx := window(t)
	names, err := filepath.Glob("../content/pictures/*.svg")
	must(t, err)
	labels := 0
	for _, name := range names {
		full, err := filepath.Abs(name)
		must(t, err)
		must(t, chromedp.Do(ctx, chromedp.EmulateViewport(390, 900), chromedp.Navigate("file://"+full)))
		labels += js[int](t, ctx, `document.querySelectorAll('text').length`)
		for _, wrong := range js[[]string](t, ctx, `(() => {
			const box = document.documentElement.viewBox.baseVal, texts = [...document.querySelectorAll('text')].map((e) => ({ says: e.textContent, r: e.getBBox() })), wrong = [];
			texts.forEach(({ says, r }, n) => {
				if (r.x < box.x || r.y < box.y || r.x + r.width > box.x + box.width || r.y + r.height > box.y + box.height) wrong.push(says + ' is cut off');
				for (const o of texts.slice(n + 1)) {
					if (r.x < o.r.x + o.r.width && o.r.x < r.x + r.width && r.y + .2 * r.height < o.r.y + .8 * o.r.height && o.r.y + .2 * o.r.height < r.y + .8 * r.height) wrong.push(says + ' and ' + o.says + ' stand over each other');
				}
			});
			return wrong;
		})()`) {
			t.Errorf("%s: %s", name, wrong)
		}
	}
	if labels < 100 {
		t.Errorf("%d labels were looked at in %d drawings", labels, len(names))
	}
}
