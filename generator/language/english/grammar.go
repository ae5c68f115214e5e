package english

import "baybinder/generator/language/shape"

var grammar = shape.Grammar{
	Verbs: shape.SetOf(`open close remove lower raise disconnect connect install tighten loosen undo unscrew unplug unlock
			isolate refit replace put attach detach lay rinse wipe scrape sweep apply pour carry bring take send
			write read tell prove restore renew unclip rotate adjust inspect examine weigh`),
	Either: shape.SetOf(`release check measure press switch lift turn pull push place fit wash fill record slide
			swing dry clean bleed call insert hang move clip drain seal clamp cap plug bolt screw pin lock paint oil grease tape cover stop start mark tag tap
			brush file hammer chock block jack hook label spray level test look torque drill cut shim support strap tie vent set
			hold pump charge drive`),
	Objects:    shape.SetOf(`the a an it them its your his her each both all this that these those every`),
	Ways:       shape.SetOf(`out off on up down in into at for from with over under by back away again through round around`),
	Toward:     shape.SetOf(`out off on up down into over back away through round around again`),
	Joiners:    shape.SetOf(`and then`),
	Conditions: shape.SetOf(`if when once after before with without on for until while unless`),
	Same:       [][]string{{"at", "the", "same", "time"}, {"at", "once"}, {"while"}, {"together"}},
}

var passive = shape.Passive{
	Orders: [][]string{{"must", "be"}, {"must", "not", "be"}, {"should", "be"}, {"should", "not", "be"}, {"shall", "be"}, {"shall", "not", "be"},
		{"has", "to", "be"}, {"have", "to", "be"}, {"needs", "to", "be"}, {"need", "to", "be"}, {"is", "to", "be"}, {"are", "to", "be"}},
	Between: shape.SetOf(`now then also always never again first only`),
	Endings: []string{"ed"},
	Irregular: shape.SetOf(`bent blown bought brought built cut done drawn driven fed found given ground held hung kept laid led left let lit
			made met put read said seen sent set shown shut spun swept taken thrown told torn undone withdrawn worn wound written`),
	AdverbEnds: "ly",
}

// vague is our list: it holds what has no exact use in a step.
var vague = []string{
	"as needed", "as required", "as necessary", "as appropriate", "as applicable",
	"if necessary", "if needed", "if required", "if appropriate", "where necessary", "when necessary",
	"adequate", "adequately", "appropriate", "appropriately", "sufficient", "sufficiently", "suitable", "suitably",
	"proper", "properly", "carefully", "tight", "tight enough", "long enough", "hard enough",
	"some", "a few", "several", "a little", "a bit", "slightly", "a while",
	"periodically", "regularly", "from time to time", "etc", "and so on", "and the like",
}
