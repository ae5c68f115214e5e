package english

import "baybinder/generator/language/shape"

var asides = shape.Asides{
	Not:     []string{"not", "not to", "not at", "never", "never to", "never at", "instead of", "instead of the", "rather than", "rather than the", "no longer"},
	Every:   []string{"every", "each"},
	Added:   []string{"another", "a further", "an extra"},
	More:    []string{"more", "longer", "later", "earlier"},
	Away:    []string{"from", "apart", "away", "in from", "off the", "intervals", "clear of"},
	Steps:   []string{"in steps of", "steps of", "to the nearest"},
	AtATime: []string{"a minute", "an hour", "a day", "a second", "per minute", "per hour", "per day", "at a time", "each time", "a turn", "per turn", "a week", "a month", "a year"},
	Makes:   []string{"is", "are", "makes", "make", "gives", "give", "="},
	About:   shape.SetOf("about roughly approximately nearly"),
	Turn:    shape.SetOf("turn turns click clicks notch notches"),
	Within:  []string{"within", "within the first", "in the first", "for the first"},
	New:     []string{"new", "when new", "as new"},
	PartOf:  []string{"the last", "the first", "the other", "the remaining", "the next", "the final"},
	By:      []string{"by", "by about"},
	Moves:   shape.SetOf("drop drops dropped dropping fall falls fell falling sink sinks sank rise rises rose rising climb climbs climbed lose loses lost gain gains gained differ differs vary varies change changes changed shift shifts move moves drift drifts drifted lower lowers raise raises off out down up"),
	Loses:   []string{"drops", "dropped", "falls", "fell", "loses", "lost", "gains", "gained", "climbs", "climbed"},
	Found: []string{"came at", "came in at", "came on at", "opened at", "closed at", "shut at", "lifted at", "tripped at", "popped at", "blew at", "cut in at", "cut out at", "stood at", "was at", "was found at", "was set to", "was set at", "had been set to", "had been set at",
		"came only at", "opened only at", "tripped only at", "it had", "it showed"},
	Supposing:   shape.SetOf("if when whenever once unless until till"),
	Ranges:      []shape.Range{{Between: "to"}, {Before: "between", Between: "and"}, {Before: "from", Between: "down to"}},
	OffBy:       []string{"plus or minus", "plus/minus", "plus-minus", "give or take"},
	RangeBehind: shape.SetOf("to from between at of for is are about within with by reads read has have shows show"),
	AllOf:       shape.SetOf("all both each and every"),
	Of:          []string{"of", "for"},
	SetTo:       []string{"to", "at", "on"},
	Things: shape.SetOf("lamp light torch lantern bulb flashlight drill grinder saw charger fan vacuum tester meter multimeter voltmeter dial compressor regulator " +
		"hoist crane jack sling strap cable wire chain trolley lifter winch gantry shackle tackle rope bar lever extension feeler rule ruler caliper calliper micrometer straightedge " +
		"brush drift punch bit file spanner socket wrench key screwdriver driver rod bolt screw stud hose clamp vice epoxy adhesive glue sealant paint primer tape grease " +
		"spray glove gun oven thermometer clock timer watch pliers hammer mallet puller magnet mirror funnel rag cloth"),
	Vessels: shape.SetOf("can drum tray bucket jug bottle tank container canister keg cup syringe tin pot pail jar pan bag box tub cartridge tube sachet sack barrel vessel beaker basin carboy skip"),
	Scales:  shape.SetOf("range scale setting probe"),
	Media:   shape.SetOf("air nitrogen"),
	Breaks:  shape.SetOf("the a an and or to at on in with without by from for of as if when while until till then before after using its their this that is are it them"),
}

var denials = []string{"not", "no", "never", "without", "nor", "neither", "none", "nothing", "nobody", "cannot"}
