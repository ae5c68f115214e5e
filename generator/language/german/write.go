package german

import "baybinder/generator/language/words"

var write = words.Write{Lang: "de"}
