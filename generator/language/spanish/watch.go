package spanish

import "baybinder/generator/language/words"

var watch = words.Watch{Lang: "es", Last: "Esta es la última página buena", Found: "Lo que encontró la última comprobación", Close: "Cerrar", Handbook: "Cómo se escribe un manual (en inglés)"}
