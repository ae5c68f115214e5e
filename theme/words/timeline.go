package words

// TimeLine are the words of the time line at a procedure's end.
type TimeLine struct {
	Title, Intro, Picture string // Picture: how many phases, how long
	From, People, Waits   string // From: two times; People: how many; Waits: how long
	Second                string // the step, and the role of who is there besides
	NoTime, NoTimeOne     string // NoTime: how many steps
	Work, Wait, Call      string // the legend
	Least, Decide         string // Least: how long, how many people; Decide: the steps
	LeastOne              string // how long
}

// TimeLineIn are the words in a language; English where the theme does not
// speak it.
func TimeLineIn(language string) *TimeLine {
	if language == "es" {
		return &timeLineInSpanish
	}
	return &timeLineInEnglish
}

var timeLineInEnglish = TimeLine{
	Title: "Time line", Intro: "The steps one after another, as they are written.",
	Picture: "%d phases in %s, one after another; the list below says the same.",
	From:    "from %s to %s", People: "up to %d people", Second: "at step %s besides: %s", Waits: "%s of it waits",
	NoTime: "%d steps have no time", NoTimeOne: "1 step has no time",
	Work: "work; as tall as people at once", Wait: "a wait", Call: "another procedure, performed here",
	Least:    "The same work cannot take less than %s with %d people, in whatever order.",
	LeastOne: "The same work cannot take less than %s with one person, in whatever order.",
	Decide:   "What decides it: steps %s. The steps stay in the order in which they are written.",
}

var timeLineInSpanish = TimeLine{
	Title: "Línea de tiempo", Intro: "Los pasos uno tras otro, tal como están escritos.",
	Picture: "%d fases en %s, una tras otra; la lista de abajo dice lo mismo.",
	From:    "de %s a %s", People: "hasta %d personas", Second: "en el paso %s además: %s", Waits: "%s son esperas",
	NoTime: "%d pasos no tienen tiempo", NoTimeOne: "1 paso no tiene tiempo",
	Work: "trabajo; tan alto como personas a la vez", Wait: "una espera", Call: "otro procedimiento, que se hace aquí",
	Least:    "El mismo trabajo no puede durar menos de %s con %d personas, en ningún orden.",
	LeastOne: "El mismo trabajo no puede durar menos de %s con una persona, en ningún orden.",
	Decide:   "Lo deciden los pasos %s. Los pasos siguen en el orden en que están escritos.",
}
