package english

import "baybinder/generator/language/words"

var write = words.Write{Lang: "en"}
