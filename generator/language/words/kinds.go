package words

// Kind is the word for a kind of tool, hold or energy that the format has a
// word for; other words are returned as they are.
func (w *Words) Kind(kind string) string {
	if said, known := w.Kinds[kind]; known {
		return said
	}
	return kind
}

// State is the word for how a thing stands.
func (w *Words) State(word string) string {
	if said, known := w.States[word]; known {
		return said
	}
	return word
}
