package english

import (
	"bytes"
	"strings"
)

// syllables counts those of an English word in small letters by its
// spelling: groups of vowels, without an e that is not heard, and with two for
// vowels that are spoken apart. The rules are ours; a spelling can be read in
// more than one way, so a word may be one off.
func syllables(word []byte) int {
	word, more := contraction(word)
	if n, known := odd[string(word)]; known {
		return n + more
	}
	n := 0
	for i := 0; i < len(word); {
		end := i
		for end < len(word) && vowelIn(word, end) {
			end++
		}
		if end > i {
			n += 1 + apart(word, i, end)
		}
		i = end + 1
	}
	if n == 0 { // spoken letter by letter: dc
		return max(1, len(word)) + more
	}
	n += muteEnd(word, n) + muteInside(word) + buzz(word)
	return max(1, n) + more
}

// contraction parts what stands behind an apostrophe; n't is a syllable behind
// a consonant.
func contraction(word []byte) (stem []byte, more int) {
	stem, rest, found := bytes.Cut(word, []byte("'"))
	switch {
	case !found:
		return word, 0
	case len(stem) == 1 && stem[0] == 'o':
		return rest, 1 // o'clock
	case string(rest) == "t" && len(stem) > 2 && stem[len(stem)-1] == 'n' && !isVowel(stem[len(stem)-2]):
		return stem[:len(stem)-1], 1
	}
	return stem, 0
}

// odd are words of workshops and of every day whose spelling misleads the
// rules.
var odd = map[string]int{
	"area": 3, "areas": 3, "being": 2, "business": 2, "create": 2, "created": 3, "every": 2, "friend": 1, "idea": 3, "ideal": 3,
	"linear": 3, "lion": 2, "giant": 2, "nuclear": 3, "people": 2, "react": 2, "reaction": 3, "recipe": 3, "reopen": 3, "theater": 3, "theatre": 3, "usually": 4,
	"element": 3, "elements": 3, "one": 1, "once": 1, "ones": 1, "someone": 2, "anyone": 3, "eye": 1, "eyes": 1, "eyebolt": 2, "pliers": 2, "quiet": 2,
	"colonel": 2, "does": 1, "goes": 1, "shoe": 1, "shoes": 1, "poem": 2, "coefficient": 4, "suite": 1, "society": 4, "via": 2, "diesel": 2, "soldier": 2, "evening": 2,
	"aged": 1, "naked": 2, "wicked": 2, "cereal": 3, "real": 2, "really": 2, "acme": 2, "simile": 3, "forehead": 2, "whereas": 2, "vehicle": 3, "vehicles": 3,
}

// vowelIn says that the letter at i is heard as a vowel: y is none at the start
// and between two vowels, u none behind q.
func vowelIn(word []byte, i int) bool {
	switch c := word[i]; {
	case c == 'y':
		return i > 0 && !(isVowel(word[i-1]) && i+1 < len(word) && isVowel(word[i+1]))
	case c == 'u' && i > 0 && word[i-1] == 'q':
		return false
	default:
		return isVowel(c)
	}
}

func isVowel(c byte) bool {
	switch c {
	case 'a', 'e', 'i', 'o', 'u':
		return true
	}
	return c >= 0x80 && c != 0xc3 // the second byte of é and its like
}

// apart is how many more syllables the vowels from start to end make than one.
func apart(word []byte, start, end int) (n int) {
	before, after := byteAt(word, start-1), word[end:]
	for i := start; i+1 < end; i++ {
		if twoHeard(word[i], word[i+1], before, word[i+2:], after) {
			n++
			i++ // of three vowels two are one: v-iou-s, contin-uou-s
		}
	}
	return n
}

// twoHeard says that two vowels beside each other are spoken apart. rest is
// what follows them, after what follows the whole group.
func twoHeard(a, b, before byte, rest, after []byte) bool {
	hushed := strings.IndexByte("cgstx", before) >= 0 // -tion, -cial, -gious
	switch string([]byte{a, b}) {
	case "ia":
		return !(hushed && starts(rest, "l", "n")) && !(before == 'l' && starts(rest, "n")) && !starts(rest, "ge")
	case "io":
		return !(hushed || strings.IndexByte("hln", before) >= 0) || !starts(rest, "n", "u")
	case "iu", "ii", "uo":
		return before != 'q' && before != 'g'
	case "ie":
		return !hushed && starts(rest, "t", "nc", "nt", "st") || before != 0 && starts(rest, "r") && len(rest) <= 2 && !hushed && before != 'p' && before != 't'
	case "eo":
		return before != 'g'
	case "ea":
		return starts(rest, "t") && before == 'r' && len(rest) > 3 && starts(rest, "tiv", "tion", "tor", "ting")
	case "ua":
		return before != 'g' && before != 's'
	case "ue":
		return before != 'g' && starts(rest, "l", "nt", "nc", "t") && len(rest) <= 4
	case "ui":
		return before != 'g' && (starts(rest, "d", "ng", "n", "ty") && before != 'b' && before != 'q')
	case "oi", "ai", "ei", "yi":
		return starts(rest, "ng") && len(rest) == 2 || a == 'y'
	case "oo":
		return starts(rest, "rd", "pera") && before == 'c'
	case "ao", "ya", "yo":
		return len(after) > 0
	case "ye":
		return string(rest) == "r"
	}
	return false
}

func byteAt(word []byte, i int) byte {
	if i < 0 {
		return 0
	}
	return word[i]
}

func starts(text []byte, with ...string) bool {
	for _, w := range with {
		if len(text) >= len(w) && string(text[:len(w)]) == w {
			return true
		}
	}
	return false
}

// muteEnd takes off the e at the end that is not heard: -e, -es and -ed behind
// a consonant. n is how many syllables were counted.
func muteEnd(word []byte, n int) int {
	stem := word
	ending := byte('e')
	switch l := len(word); {
	case l > 2 && (word[l-1] == 's' || word[l-1] == 'd') && word[l-2] == 'e':
		stem, ending = word[:l-1], word[l-1]
	case word[l-1] != 'e':
		return 0
	}
	l := len(stem)
	if n > 1 && bytes.HasSuffix(stem, []byte("que")) {
		return -1
	}
	if n < 2 || l < 3 || isVowel(stem[l-2]) || stem[l-2] == 'y' && isVowel(stem[l-3]) {
		return 0
	}
	last, before := stem[l-2], stem[l-3]
	switch {
	case (last == 'l' || last == 'r') && !isVowel(before) && before != last && before != 'y' && before != 'w' && !(last == 'l' && before == 'r'):
		return 0 // ta-ble, cen-tre
	case ending == 's' && (strings.IndexByte("cgsxz", last) >= 0 || last == 'h' && (before == 'c' || before == 's')):
		return 0 // hos-es, switch-es
	case ending == 'd' && (last == 't' || last == 'd'):
		return 0 // test-ed
	}
	return -1
}

// muteInside takes off the e of a word's end that something was put behind:
// move-ment, safe-ly, base-plate.
func muteInside(word []byte) (n int) {
	if len(word) < 6 {
		return 0 // safely and hosepipe are the shortest of their kinds
	}
	behind := false
	for _, ending := range endings[word[len(word)-1]] {
		if stem, is := bytes.CutSuffix(word, []byte(ending)); is {
			behind = mute(stem)
			break
		}
	}
	if behind {
		n--
	}
	for _, begin := range compounds[word[0]] {
		rest, is := bytes.CutPrefix(word, []byte(begin))
		if is && len(rest) > 2 && !isVowel(rest[0]) && rest[0] != 'y' && !(behind && len(rest) < 6) {
			return n - 1
		}
	}
	return n
}

// endings are put behind a word whose e stays silent, by their last letter.
var endings = [256][]string{
	't': {"ment"}, 's': {"ments", "less", "ness"}, 'l': {"ful"}, 'y': {"fully", "ly", "ty"}, 'k': {"work"}, 'd': {"guard"},
}

// compounds are first halves of words, which keep their silent e, by their
// first letter.
var compounds = [256][]string{
	'b': {"base", "brake"}, 'e': {"every"}, 'f': {"face", "fire", "fore"}, 'g': {"gauge", "grease"}, 'h': {"here", "hose", "home"},
	'l': {"life", "line"}, 'n': {"name"}, 'p': {"pipe", "plate"}, 's': {"safe", "side", "some", "space"}, 't': {"tape", "there", "time", "tube"},
	'v': {"valve"}, 'w': {"where", "white", "wire"},
}

// mute says that a word's last letter is an e that is not heard.
func mute(stem []byte) bool {
	l := len(stem)
	if l < 3 || stem[l-1] != 'e' || isVowel(stem[l-2]) {
		return false
	}
	for _, c := range stem[:l-2] {
		if isVowel(c) || c == 'y' {
			return (stem[l-2] != 'l' && stem[l-2] != 'r') || isVowel(stem[l-3])
		}
	}
	return false
}

// buzz is the syllable of an m that no vowel stands beside: mechanis-m.
func buzz(word []byte) int {
	if bytes.HasSuffix(word, []byte("sm")) || bytes.HasSuffix(word, []byte("sms")) || bytes.HasSuffix(word, []byte("thm")) {
		return 1
	}
	return 0
}
