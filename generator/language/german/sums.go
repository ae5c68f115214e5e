package german

import "baybinder/generator/language/words"

var sums = words.Sums{
	How:     "%s. Wie das gerechnet ist",
	Convert: "Betrag · eine seiner Einheit in der anderen", Rounded: "Gerundet um höchstens 1 %, und um höchstens ein Zehntel einer Toleranz.", Units: "Definitionen der Einheiten; NIST SP 811, Anhang B.8",
	Spread: "von der kürzesten bis zur längsten ihrer Bauarten, je die Abschnitte hintereinander",
	People: "die meisten, die die Arbeit oder eine ausgeführte Anweisung braucht", Tools: "die meisten, die die Arbeit oder eine ausgeführte Anweisung nennt", Each: "Schlösser an einer Stelle, eines je Person, wo die Werkstatt es so sagt",
	Checked: "Handlungen in Schritten + ausgeführte Anweisungen + Schritte, die aus dem Ausbau folgen", Words: "Schritte, die nur Worte sind", All: "Schritte der Anweisung",
	Missed: "ein Zehntel der Schritte, die etwas schließen, aufgerundet, und nicht mehr, als leicht vergessen werden", Untimed: "Schritte ohne Zeit, die keine Wartezeit sind und nichts ausführen", AtOnce: "die meisten eines Schritts des Abschnitts",
	Until: "letzter Tag = Tag + Zeit",
	Read:  "Wörter/238 je Minute + 12 s je Bild + 20 s je Tabelle, in ganzen Minuten", ReadAll: "die Lesezeiten hintereinander", ReadSource: "Wörter je Minute: Brysbaert 2019; Bilder und Tabellen: eigene Regel",
	Ticked: "abgehakte Schritte, von denen, die das Gerät hat und die nötig waren", Gaps: "die Lücken des Nachweises, gezählt", Values: "die Werte unten, gezählt; der kleinste; der größte; die außerhalb des Grenzwerts",
	Done: "aufgezeichnete Male, von denen, die der Plan verlangt",
	Ease: "Grundwert + a · Wörter je Satz + b · Silben je Wort", Grade: "Schuljahr", EaseSource: "Flesch 1948 und Flesch-Kincaid; im Spanischen Szigriszt-Pazos 1993 (aus dem Gedächtnis)",
	Sentence: "Wörter / Sätze", Word: "Silben / Wörter, die keine Zahl sind", Longest: "Wörter des längsten Satzes in einem Schritt, und aller Schritte, gezählt",
	Page: "was auf dieser Seite steht", Shop: "was die Werkstatt in die Dateien des Handbuchs schrieb", Record: "die Nachweise der Arbeiten",
}
