package words

// Watch are the words of the box of findings that `watch` puts over a page, as
// its script gets them.
type Watch struct {
	Lang  string `json:"lang"`
	Last  string `json:"last"`  // over findings that stopped the build
	Found string `json:"found"` // over the others
	Close string `json:"close"`

	Handbook string `json:"handbook"` // the link on the front page to the handbook, which is in English
}
