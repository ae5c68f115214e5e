package german

import "baybinder/generator/language/words"

var watch = words.Watch{Lang: "de", Last: "Das ist die letzte gute Seite", Found: "Was die letzte Prüfung fand", Close: "Schließen", Handbook: "Wie man ein Handbuch schreibt (englisch)"}
