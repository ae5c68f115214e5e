package search

// Words splits a text as the browser splits a query: small letters and
// figures, without accents.
func Words(text string) []string {
	var out []string
	new(splitter).each(text, func(word []byte) { out = append(out, string(word)) })
	return out
}
