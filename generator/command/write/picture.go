package write

import (
	"bytes"
	"image"
	_ "image/jpeg" // what a page's picture may be
	_ "image/png"
	"net/http"
	"net/url"
	"path"
	"path/filepath"
	"strings"

	"baybinder/generator/base/position"
	"baybinder/generator/read/edit"
	"baybinder/generator/read/syntax"
)

// mostPicture is what a picture may have, in bytes, and mostSide how wide and
// high it may be: the page makes it that small before it sends it.
const (
	mostPicture = 4 << 20
	mostSide    = 2400
)

// endings are what pictures may be, and how their files end.
var endings = map[string]string{"jpeg": ".jpg", "png": ".png"}

// picture writes a picture into pictures/, under a free name, and tells how a
// step shows it.
func (d *Desk) picture(asked url.Values, data []byte) (*Told, error) {
	p, _, err := d.of(asked.Get("page"))
	if err != nil {
		return nil, err
	}
	words := one([]string{asked.Get("words")})
	config, kind, err := image.DecodeConfig(bytes.NewReader(data))
	switch {
	case err != nil || endings[kind] == "" || config.Width > mostSide || config.Height > mostSide:
		return nil, noPicture
	case words == "":
		return nil, noWords
	case len(words) > mostField:
		return nil, tooLong
	}
	has := map[string]bool{}
	for name := range d.manual.Tree().Paths {
		if at, in := strings.CutPrefix(name, "pictures/"); in {
			has[strings.TrimSuffix(at, path.Ext(at))] = true
		}
	}
	name := "pictures/" + free(syntax.PlainID(words), "picture", has) + endings[kind]
	if err := d.putBytes(name, data); err != nil {
		return nil, err
	}
	up, err := filepath.Rel(filepath.Dir(filepath.FromSlash(p.File.Path)), filepath.FromSlash(name))
	if err != nil {
		return nil, err
	}
	text := "![" + edit.LinkText(words) + "](" + filepath.ToSlash(up) + ")"
	return &Told{Found: []Choice{{Kind: "picture", Label: words, Text: text}}}, nil
}

// putBytes writes a new file that is no text.
func (d *Desk) putBytes(name string, data []byte) error {
	return d.put(&draft{file: position.NewFile(name, ""), fresh: true, text: string(data)}, "picture", "")
}

// Pages answers with what the desk has where the site has nothing yet: the page
// of a procedure that no build has published, a picture that no page shows.
func (d *Desk) Pages(site http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		name := strings.TrimPrefix(r.URL.Path, "/")
		if !strings.HasPrefix(name, "procedures/") && !strings.HasPrefix(name, "pictures/") {
			site.ServeHTTP(w, r)
			return
		}
		quiet := &unlessMissing{ResponseWriter: w}
		site.ServeHTTP(quiet, r)
		if quiet.missing {
			d.instead(w, r, name)
		}
	})
}

// unlessMissing is an answer that says nothing where there is no such file.
type unlessMissing struct {
	http.ResponseWriter
	missing bool
}

// WriteHeader begins the answer.
func (u *unlessMissing) WriteHeader(status int) {
	u.missing = status == http.StatusNotFound
	if !u.missing {
		u.ResponseWriter.WriteHeader(status)
	}
}

func (u *unlessMissing) Write(data []byte) (int, error) {
	if u.missing {
		return len(data), nil
	}
	return u.ResponseWriter.Write(data)
}

// instead answers for a site that has no such file.
func (d *Desk) instead(w http.ResponseWriter, r *http.Request, name string) {
	d.mu.Lock()
	defer d.mu.Unlock()
	if kind := kinds[path.Ext(name)]; kind != "" {
		if data, err := d.bytes(name); err == nil && data != nil {
			w.Header().Set("Content-Type", kind)
			_, _ = w.Write(data)
			return
		}
	} else if p, _, err := d.of(name); err == nil {
		_, text := d.manual.Page(p.File.Path)
		w.Header().Set("Content-Type", "text/html; charset=utf-8")
		_, _ = w.Write(text)
		return
	}
	http.NotFound(w, r)
}

// kinds are the content types of the pictures that are written here.
var kinds = map[string]string{".jpg": "image/jpeg", ".png": "image/png"}
