package spanish

// findingsReport is the words around findings: of a report's head and end.
var findingsReport = map[string]string{
	"nothing found":                         "sin hallazgos",
	"error":                                 "error",
	"advice":                                "consejo",
	"%d error":                              "%d error",
	"%d errors":                             "%d errores",
	"1 advice":                              "1 consejo",
	"%d advice":                             "%d consejos",
	"%d file":                               "%d archivo",
	"%d files":                              "%d archivos",
	"%s, %s, in %s":                         "%s, %s, en %s",
	"; baybinder settle mends %d of them":   "; baybinder settle corrige %d",
	"mend: %s":                              "qué hacer: %s",
	"Mend: %s":                              "Qué hacer: %s",
	"and %d more of this kind: check --all": "y %d más de este tipo: check --all",
	"and of other kinds: %s: check --all":   "y de otros tipos: %s: check --all",
	" and ":                                 " y ",
	" or ":                                  " o ",
}
