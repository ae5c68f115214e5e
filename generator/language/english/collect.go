package english

import "baybinder/generator/language/words"

var collect = words.Collect{
	Kept:      "The record is kept with the manual.",
	NotKept:   "The record could not be kept with the manual; it is saved with the downloads instead.",
	FirstTime: "Type the code that the shop's computer shows. Then this device is known for a while.",
	Wrong:     "The code is wrong. Type the six figures that the shop's computer shows.",
	Code:      "Code",
	Send:      "Send the record",
}
