package english

import "baybinder/generator/language/words"

var readable = words.Readable{
	Title: "How hard the steps are to read",
	Intro: "The hardest first. It is a figure to compare texts by, not a finding: no limit is published for a workshop's steps. Shorter sentences and shorter words raise it.",
	Figures: map[string]string{
		"en": "Flesch reading ease (1948), from sentence and word length: under 30 very hard, 30 to 50 hard, 50 to 60 fairly hard, 60 to 70 plain, 70 to 90 easy, from 90 very easy. Grade: school year in the United States (Flesch-Kincaid).",
		"es": "Szigriszt-Pazos perspicuity (1993), from sentence and word length, in the bands of the INFLESZ scale (2008): under 40 very hard, 40 to 55 fairly hard, 55 to 65 plain, 65 to 80 easy, over 80 very easy.",
	},
	Other:     "There is no formula here for this language: the longest sentence leads.",
	Procedure: "Procedure", Ease: "Reading ease", Longest: "Longest sentence", Step: "step", WordsInSteps: "Words in steps",
	EaseGrade: "%.0f · grade %.0f", TooShort: "under 100 words: too short to measure", NoFormula: "no formula",
	More: "The %d hardest of %d procedures are listed.",
}
