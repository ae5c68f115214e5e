package decode

import (
	"regexp"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/language"
	"baybinder/generator/read/syntax"
)

// otherNames are names that people give to fields of the format.
var otherNames = map[string][]string{
	"weight": {"mass"}, "time": {"for"}, "duration": {"for"}, "wait": {"for"},
	"location": {"kept", "where"}, "place": {"kept", "where"}, "shelf": {"kept"},
	"size": {"fits", "across-flats"}, "af": {"across-flats"}, "wrench": {"across-flats"},
	"part-number": {"number"}, "stock-number": {"number"}, "article": {"number"},
	"description": {"summary", "nature"}, "risk": {"nature"}, "ppe": {"wear"}, "gloves": {"wear"},
	"measure": {"what"}, "value": {"limit"}, "range": {"limit"}, "machine": {"for"},
	"parts": {"supplies"}, "materials": {"supplies"}, "roles": {"needs"}, "qualification": {"needs"},
}

// otherName is the field that is meant by another name, and the mend; "" where
// there is none.
func otherName(key string, fields []field) (name string, mend finding.Words) {
	if _, hazard := find(fields, "harm"); hazard && (key == "signal-word" || key == "signal" || key == "level") {
		return "", finding.Say("take it out: the signal word is worked out from harm and happens")
	}
	for _, name := range otherNames[key] {
		if _, has := find(fields, name); has {
			return name, finding.Say("did you mean %s?", name)
		}
	}
	return "", finding.Words{}
}

// What stands before and behind a comma that parts a number.
var beforeComma, behindComma = regexp.MustCompile(`\d$`), regexp.MustCompile(`^\d+`)

// restOfNumber says that a pair is what another comma parted off: 6,5 to 8,5 pH is
// read as 6, as "5 to 8" and as "5 pH".
func restOfNumber(before, p syntax.Pair) bool {
	if before.KeyAt.File != p.KeyAt.File || before.KeyAt.End > p.KeyAt.Start || p.Value != nil && p.Value.Kind != syntax.Empty {
		return false
	}
	return p.KeyAt.File.Text[before.KeyAt.End:p.KeyAt.Start] == "," && beforeComma.MatchString(before.Key) && behindComma.MatchString(p.Key)
}

// decimalComma is the finding for a value whose decimal comma ended it, inside
// { }: mass: 3,5 kg is read as mass: 3 and a field "5 kg" with nothing in it.
func decimalComma(before *syntax.Node, p syntax.Pair) (finding.Finding, bool) {
	if before.Kind != syntax.Scalar || before.Quoted || p.Value != nil && p.Value.Kind != syntax.Empty {
		return finding.Finding{}, false
	}
	at := before.At
	if at.File == nil || at.File != p.KeyAt.File || at.End > p.KeyAt.Start || at.File.Text[at.End:p.KeyAt.Start] != "," {
		return finding.Finding{}, false
	}
	digits := behindComma.FindString(p.Key)
	if digits == "" || !beforeComma.MatchString(before.Text) {
		return finding.Finding{}, false
	}
	at.End = p.KeyAt.End
	mend := finding.Say("write %s, with a decimal point", before.Text+"."+p.Key)
	if len(digits) == 3 && before.Text != "0" {
		mend = finding.Say("write %s, with a decimal point, or %s without the comma", before.Text+"."+p.Key, before.Text+p.Key)
	}
	return Quantity.At(at, "%q has a comma in it, and inside { } and [ ] a comma ends a value", strings.TrimSpace(at.Text())).WithMend("%s", mend), true
}

// uncut tells of a sentence whose condition its own comma cut off, inside [ ]: avoid:
// [Reach in, once the lock hangs.] is read as "Reach in" and "once the lock hangs."
// Other pieces may be a list that somebody meant.
func (d *Decoder) uncut(before, item *syntax.Node) bool {
	at := before.At
	if before == item || at.File == nil || at.File != item.At.File || at.End > item.At.Start || strings.Trim(at.File.Text[at.End:item.At.Start], " ") != "," {
		return true
	}
	first, _, _ := strings.Cut(item.Text, " ")
	if before.Quoted || item.Quoted || !language.Supposes(first) || !opensSentence.MatchString(before.Text) {
		return true
	}
	at.End = item.At.End
	return d.add(WrongType.At(at, "%q is one sentence, and inside [ ] a comma ends an entry", at.Text()).WithMend(`put the sentence into quotes: "%s"`, at.Text()))
}

// opensSentence is the beginning of a sentence, with no end.
var opensSentence = regexp.MustCompile(`^\p{Lu}.*[^.!?:;]$`)
