package german

// findingsReport is the words around findings: of a report's head and end.
var findingsReport = map[string]string{
	"nothing found":                         "nichts gefunden",
	"error":                                 "Fehler",
	"advice":                                "Rat",
	"%d error":                              "%d Fehler",
	"%d errors":                             "%d Fehler",
	"1 advice":                              "1 Ratschlag",
	"%d advice":                             "%d Ratschläge",
	"%d file":                               "%d Datei",
	"%d files":                              "%d Dateien",
	"%s, %s, in %s":                         "%s, %s, in %s",
	"; baybinder settle mends %d of them":   "; baybinder settle behebt %d davon",
	"mend: %s":                              "Abhilfe: %s",
	"Mend: %s":                              "Abhilfe: %s",
	"and %d more of this kind: check --all": "und %d weitere dieser Art: check --all",
	"and of other kinds: %s: check --all":   "und von anderen Arten: %s: check --all",
	" and ":                                 " und ",
	" or ":                                  " oder ",

	// of explain
	"Why it matters": "Warum es darauf ankommt",
	"What to do":     "Was zu tun ist",
	"For example, this is found in %s\nand this is its mend, in %s": "Zum Beispiel findet sich das in %s\nund so ist es behoben, in %s",
	"How files are written":            "Wie Dateien geschrieben werden",
	"What fields hold":                 "Was in Feldern steht",
	"What names and addresses lead to": "Wohin Namen und Adressen führen",
	"What a procedure says and does":   "Was eine Anweisung sagt und tut",
	"baybinder explain CODE says why one matters, with an example and its mend.": "baybinder explain CODE sagt, warum es darauf ankommt, mit einem Beispiel und seiner Abhilfe.",
	"baybinder explain links lists the kinds of links.":                          "baybinder explain links zeigt die Arten von Links.",

	// of check
	"%d procedure":  "%d Anweisung",
	"%d procedures": "%d Anweisungen",
	"%d of %s is not issued yet: baybinder issue --all --reason \"First issue\"":  "%d von %s ist noch nicht herausgegeben: baybinder issue --all --reason \"Erste Ausgabe\"",
	"%d of %s are not issued yet: baybinder issue --all --reason \"First issue\"": "%d von %s sind noch nicht herausgegeben: baybinder issue --all --reason \"Erste Ausgabe\"",
}
