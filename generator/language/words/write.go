package words

// Write are the words with which a procedure is written in its page. {0} and
// {1} stand for what the script puts there.
type Write struct {
	Lang string `json:"Lang"`
}
