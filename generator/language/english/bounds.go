package english

import "baybinder/generator/language/shape"

var bounds = shape.Bounds{
	AtMost: []string{"at most", "at the most", "no more than", "not more than", "no longer than", "not longer than", "no higher than", "not higher than", "no warmer than", "no hotter than", "no thicker than", "no wider than", "no larger than",
		"not above", "not over", "never more than", "never above", "never over", "never exceed", "not exceed", "not exceeding", "max", "max.", "maximum", "a maximum of", "wait up to", "for up to"},
	AtLeast: []string{"at least", "at the least", "no less than", "not less than", "no shorter than", "not shorter than", "no lower than", "not lower than", "no colder than", "no cooler than", "no thinner than", "no narrower than", "no smaller than",
		"not below", "not under", "never less than", "never below", "never under", "min", "min.", "minimum", "a minimum of"},
	Having: shape.SetOf("of with"),
	OrLess: []string{"or less", "or lower", "or below", "or under", "or shorter"},
	OrMore: []string{"or more", "or higher", "or above", "or over", "or longer"},
	Below:  []string{"below", "under", "less than", "lower than", "shorter than", "smaller than", "colder than", "cooler than", "thinner than", "narrower than"},
	Above:  []string{"above", "over", "more than", "higher than", "longer than", "greater than", "warmer than", "hotter than", "thicker than", "wider than"},
	UpTo:   []string{"up to"},
	Musts:  []string{"must", "shall", "should", "has to", "have to", "needs to", "need to"},
	Being:  shape.SetOf("be have read show weigh stay remain measure kept held fall drop sink rise climb get go come"),
	Always: shape.SetOf("always still well then everywhere"),
	Waits:  []string{"wait", "let", "soak", "purge", "run", "hold"},
	Orders: []string{"fill", "pump", "inflate", "set", "heat", "cool", "charge", "turn", "keep", "pour", "add", "tighten", "torque", "grind", "bring", "lower", "raise", "reduce"},
	For:    shape.SetOf("for"),
	To:     shape.SetOf("to"),
	With:   shape.SetOf("with"),
	Lead:   shape.SetOf("and then now next first"),

	Keeps:   []string{"keep", "hold", "maintain"},
	At:      shape.SetOf("at to"),
	Told:    shape.SetOf("that which who whose can could may might will would what open closed shut running before after while as so but because"),
	Forbids: []string{"do not let", "don't let", "never let", "do not allow", "never allow"},
	Goes:    shape.SetOf("get go come rise climb fall drop sink cool heat warm run"),
	Sees:    []string{"make sure that", "make sure", "check that", "see that", "see to it that", "ensure that", "ensure"},
	SoThat:  []string{"so that", "such that", "so", "in such a way that"},
	Is:      shape.SetOf("is are stays stay remains remain shows show reads read has have weighs weigh measures gets goes rises rise falls fall drops drop"),
}
