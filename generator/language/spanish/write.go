package spanish

import "baybinder/generator/language/words"

var write = words.Write{Lang: "es"}
