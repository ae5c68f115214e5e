package collect

import (
	"encoding/json"
	"fmt"
	"html"

	"baybinder/generator/command/served"
	"baybinder/generator/language"
)

// sending is a page that may send to its own server, and has what it sends
// with.
func sending(page []byte, token string) []byte {
	words, err := json.Marshal(language.Of(served.Language(page)).Collect)
	if err != nil {
		return page // it is plain texts: they always can be written
	}
	return served.Asking(page, fmt.Appendf(nil, `<script src="%s" data-token="%s" data-records="%s" data-device="%s" data-words="%s" defer></script>`, scriptAt, token, RecordsAt, DeviceAt, html.EscapeString(string(words))))
}
