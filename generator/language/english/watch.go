package english

import "baybinder/generator/language/words"

var watch = words.Watch{Lang: "en", Last: "This is the last good page", Found: "Found by the last build", Close: "Close", Handbook: "How to write a manual"}
