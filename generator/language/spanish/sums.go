package spanish

import "baybinder/generator/language/words"

var sums = words.Sums{
	How:     "%s. Cómo se calculó",
	Convert: "cantidad · una de su unidad en la otra", Rounded: "Redondeado en un 1 % como mucho, y en no más de la décima parte de una tolerancia.", Units: "definiciones de las unidades; NIST SP 811, apéndice B.8",
	Spread: "del más corto al más largo de sus tipos de unidad, en cada uno las fases una tras otra",
	People: "lo más que necesita el trabajo o un procedimiento que hace", Tools: "lo más que enumera el trabajo o un procedimiento que hace", Each: "candados en un punto, uno por persona donde el taller lo dice",
	Checked: "acciones en los pasos + procedimientos realizados + pasos que siguen del desmontaje", Words: "pasos que son solo palabras", All: "pasos del procedimiento",
	Missed: "la décima parte de los pasos que cierran algo, redondeada hacia arriba, y no más de los que se olvidan fácilmente", Untimed: "pasos sin tiempo que no son espera ni hacen otro procedimiento", AtOnce: "lo más de un paso de la fase",
	Until: "último día = día + tiempo",
	Read:  "palabras/238 por minuto + 12 s por imagen + 20 s por tabla, en minutos enteros", ReadAll: "los tiempos de lectura uno tras otro", ReadSource: "palabras por minuto: Brysbaert 2019; imágenes y tablas: regla propia",
	Ticked: "pasos marcados, de los que la unidad tiene y hacían falta", Gaps: "los huecos del registro, contados", Values: "los valores de abajo, contados; el menor; el mayor; los que están fuera del límite",
	Done: "veces registradas, de las que pide el plan",
	Ease: "base + a · palabras por frase + b · sílabas por palabra", Grade: "curso", EaseSource: "Flesch 1948 y Flesch-Kincaid; en español Szigriszt-Pazos 1993 (de memoria)",
	Sentence: "palabras / frases", Word: "sílabas / palabras que no son cifras", Longest: "palabras de la frase más larga de un paso, y de todos los pasos, contadas",
	Page: "lo que está en esta página", Shop: "lo que el taller escribió en el manual", Record: "los registros de los trabajos",
}
