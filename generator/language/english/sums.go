package english

import "baybinder/generator/language/words"

var sums = words.Sums{
	How:     "%s. How this was worked out",
	Convert: "amount · one of its unit in the other", Rounded: "Rounded by 1 % at most, and by no more than a tenth of a tolerance.", Units: "definitions of the units; NIST SP 811, appendix B.8",
	Spread: "from the shortest to the longest of its kinds of unit, each its phases one after another",
	People: "the most that the job or a procedure that it performs needs", Tools: "the most that the job or a procedure that it performs lists", Each: "locks on a point, one for each person where the shop says so",
	Checked: "actions in steps + procedures performed + steps that follow from the strip", Words: "steps that are words only", All: "steps of the procedure",
	Missed: "a tenth of the steps that close something, rounded up, and no more than are easily missed", Untimed: "steps without a time that are no wait and perform nothing", AtOnce: "the most people of a step of the phase",
	Until: "last day = day + time",
	Read:  "words/238 a minute + 12 s for a picture + 20 s for a table, in whole minutes", ReadAll: "the reading times one after another", ReadSource: "words a minute: Brysbaert 2019; pictures and tables: our own rule",
	Ticked: "steps ticked, of those that the unit has and that were needed", Gaps: "the gaps of the record, counted", Values: "the values below, counted; the least; the greatest; those out of the limit",
	Done: "times recorded, of those that the plan asks for",
	Ease: "base + a · words in a sentence + b · syllables in a word", Grade: "grade", EaseSource: "Flesch 1948 and Flesch-Kincaid; in Spanish Szigriszt-Pazos 1993 (from memory)",
	Sentence: "words / sentences", Word: "syllables / words that are no figure", Longest: "words of the longest sentence in a step, and of all steps, counted",
	Page: "what stands on this page", Shop: "what the shop wrote in the manual", Record: "the records of the jobs",
}
