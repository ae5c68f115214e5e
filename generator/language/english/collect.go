package english

import "baybinder/generator/language/words"

var collect = words.Collect{
	Kept:      "The record is kept with the manual.",
	NotKept:   "The record could not be kept with the manual; it is saved with the downloads instead.",
	FirstTime: "This device sends for the first time. Type the code that the shop's computer shows.",
	Wrong:     "The code is wrong. Type the six figures that the shop's computer shows.",
	Code:      "Code",
	Send:      "Send the record",
}
