package spanish

import "unicode/utf8"

// syllables counts those of a Spanish word in small letters, by the
// orthography of the Real Academia Española (2010, from memory): each vowel is
// the core of one, but an i or u without an accent joins the vowel beside it,
// also across an h; the u of qu, gue and gui is not heard.
func syllables(word []byte) int {
	n := 0
	var last rune   // the core that the place touches, or the i or u beside it; 0 behind a consonant
	silent := false // the letter before was q or g
	for i := 0; i < len(word); {
		c, size := utf8.DecodeRune(word[i:])
		i += size
		switch {
		case c == 'h':
		case !vowelAt(c, word[i:]) || c == 'u' && silent && front(word[i:]):
			last = 0
		case last == 0 || last == c || !joins(last) && !joins(c):
			n++
			last = c
		case joins(last):
			last = c
		}
		silent = c == 'q' || c == 'g'
	}
	return n
}

// vowelAt says that a letter is a vowel; y is one at the end: ley, and the
// word y.
func vowelAt(c rune, rest []byte) bool {
	switch c {
	case 'a', 'e', 'o', 'á', 'é', 'ó', 'í', 'ú':
		return true
	}
	if c == 'y' {
		return len(rest) == 0
	}
	return joins(c)
}

// joins says that a vowel shares the syllable of the one beside it.
func joins(c rune) bool { return c == 'i' || c == 'u' || c == 'ü' || c == 'y' }

// front says that the next letter is e or i.
func front(rest []byte) bool {
	c, _ := utf8.DecodeRune(rest)
	return c == 'e' || c == 'i' || c == 'é' || c == 'í'
}
