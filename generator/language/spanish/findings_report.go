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

	// of explain
	"Why it matters": "Por qué importa",
	"What to do":     "Qué hacer",
	"For example, this is found in %s\nand this is its mend, in %s": "Por ejemplo, esto se encuentra en %s\ny así queda corregido, en %s",
	"How files are written":            "Cómo están escritos los archivos",
	"What fields hold":                 "Qué llevan los campos",
	"What names and addresses lead to": "Adónde llevan los nombres y las direcciones",
	"What a procedure says and does":   "Qué dice y qué hace un procedimiento",
	"baybinder explain CODE says why one matters, with an example and its mend.": "baybinder explain CÓDIGO dice por qué importa, con un ejemplo y cómo se corrige.",
	"baybinder explain links lists the kinds of links.":                          "baybinder explain links muestra los tipos de enlace.",

	// of check
	"%d procedure":  "%d procedimiento",
	"%d procedures": "%d procedimientos",
	"%d of %s is not issued yet: baybinder issue --all --reason \"First issue\"":  "%d de %s está sin publicar: baybinder issue --all --reason \"Primera edición\"",
	"%d of %s are not issued yet: baybinder issue --all --reason \"First issue\"": "%d de %s están sin publicar: baybinder issue --all --reason \"Primera edición\"",
}
