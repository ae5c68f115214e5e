// Package signal computes the signal word of a safety message.
package signal

import (
	"fmt"

	"baybinder/generator/language/words"
	"baybinder/generator/trade/working"
)

// Word is a signal word of ANSI Z535, the most serious first.
type Word uint8

// The four words. None is no message.
const (
	None Word = iota
	Notice
	Caution
	Warning
	Danger
)

// Of is the signal word for what follows if a hazard is not avoided: harm is
// death, serious-injury, minor-injury or damage, happens is will or could.
//
// ANSI Z535.4-2007, 4.14, as quoted: DANGER "will result in death or serious
// injury", WARNING "could result in death or serious injury", CAUTION "could
// result in minor or moderate injury", NOTICE "practices not related to
// personal injury". The definitions have no cell for a minor injury that will
// follow; the standard's selection tree gives CAUTION (from memory: annex E).
func Of(harm, happens string) Word {
	switch harm {
	case "death", "serious-injury":
		if happens == "will" {
			return Danger
		}
		return Warning
	case "minor-injury":
		return Caution
	case "damage":
		return Notice
	}
	return None
}

// Explain is the signal word of a hazard with its working. The result is the
// word as the page writes it.
func Explain(say *words.Safety, harm, happens, result string) working.Working {
	if happens == "" {
		happens = "could" // as Of has it
	}
	put := say.Harms[harm]
	switch harm {
	case "death", "serious-injury":
		put = fmt.Sprintf(say.Put, put, say.Happens[happens])
	}
	return working.Working{
		Formula: say.Formula,
		Put:     put,
		Result:  result,
		Assumes: []string{say.Words, say.Most},
		Source:  say.Source,
	}
}

// Injures says whether the word is for harm to people. The safety alert symbol
// stands beside such a word, and never beside NOTICE (ANSI Z535.4-2007, 4.14.4,
// as quoted).
func (w Word) Injures() bool { return w >= Caution }

// String is the word's style and id: "danger".
func (w Word) String() string {
	return [...]string{"", "notice", "caution", "warning", "danger"}[w]
}
