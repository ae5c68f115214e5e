package spanish

import "baybinder/generator/language/words"

var collect = words.Collect{
	Kept:      "El registro queda guardado con el manual.",
	NotKept:   "El registro no se pudo guardar con el manual; queda en las descargas.",
	FirstTime: "Escriba el código que muestra el ordenador del taller. Después este aparato queda conocido un tiempo.",
	Wrong:     "El código no es correcto. Escriba las seis cifras que muestra el ordenador del taller.",
	Code:      "Código",
	Send:      "Enviar el registro",
}
