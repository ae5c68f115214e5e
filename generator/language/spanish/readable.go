package spanish

import "baybinder/generator/language/words"

var readable = words.Readable{
	Title: "Lo difíciles de leer que son los pasos",
	Intro: "Primero los más difíciles. Es una cifra para comparar textos, no un defecto: no hay un límite publicado para los pasos de un taller. Con frases y palabras más cortas, sube.",
	Figures: map[string]string{
		"en": "Facilidad de lectura de Flesch (1948), según el largo de frases y palabras: menos de 30 muy difícil, 30 a 50 difícil, 50 a 60 algo difícil, 60 a 70 normal, 70 a 90 fácil, desde 90 muy fácil. Grado: curso escolar en Estados Unidos (Flesch-Kincaid).",
		"es": "Perspicuidad de Szigriszt-Pazos (1993), según el largo de frases y palabras, con los grados de la escala INFLESZ (2008): menos de 40 muy difícil, 40 a 55 algo difícil, 55 a 65 normal, 65 a 80 fácil, más de 80 muy fácil.",
	},
	Other:     "Aquí no hay fórmula para este idioma: primero va la frase más larga.",
	Procedure: "Procedimiento", Ease: "Facilidad", Longest: "Frase más larga", Step: "paso", WordsInSteps: "Palabras en los pasos",
	EaseGrade: "%.0f · grado %.0f", TooShort: "menos de 100 palabras: muy corto para medirlo", NoFormula: "sin fórmula",
	More: "Se muestran los %d más difíciles de %d procedimientos.",
}
