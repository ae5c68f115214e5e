package collect

import (
	"bytes"
	"encoding/json"
	"fmt"
	"html"
	"net/http"
	"regexp"

	"baybinder/generator/language"
)

// held is an answer that is not sent yet.
type held struct {
	header http.Header
	status int
	body   []byte
}

func (h *held) Header() http.Header    { return h.header }
func (h *held) WriteHeader(status int) { h.status = status }
func (h *held) Write(p []byte) (int, error) {
	h.body = append(h.body, p...)
	return len(p), nil
}

// sending is a page that may send to its own server, and has what it sends
// with. Its policy is the published one (Content Security Policy Level 3) with
// this one leave more.
func sending(page []byte, token string) []byte {
	page = bytes.Replace(page, []byte(`content="default-src 'none';`), []byte(`content="default-src 'none'; connect-src 'self';`), 1)
	words, err := json.Marshal(language.Of(tagOf(page)).Collect)
	if err != nil {
		return page // it is plain texts: they always can be written
	}
	tag := fmt.Appendf(nil, `<script src="%s" data-token="%s" data-records="%s" data-device="%s" data-words="%s" defer></script>`, scriptAt, token, RecordsAt, DeviceAt, html.EscapeString(string(words)))
	i := bytes.LastIndex(page, []byte("</body>"))
	if i < 0 {
		return append(page, tag...)
	}
	return bytes.Join([][]byte{page[:i], page[i:]}, tag)
}

var langOf = regexp.MustCompile(`<html lang="([A-Za-z0-9-]+)"`)

// tagOf is the language that a page is in; "" where it does not say.
func tagOf(page []byte) string {
	if m := langOf.FindSubmatch(page); m != nil {
		return string(m[1])
	}
	return ""
}
