package english

import (
	"strings"

	"baybinder/generator/language/shape"
)

var acts = shape.Acts{
	Undo:      "undo loosen slacken unscrew untighten",
	Tighten:   "tighten retighten torque nip|up do|up",
	Open:      "open",
	Shut:      "close shut",
	Remove:    "remove detach dismount uninstall unplug disconnect take|off take|out take|away lift|off lift|out pull|off pull|out",
	Fit:       "fit refit install reinstall mount attach reattach connect reconnect put|back put|on put|in plug|in",
	Fill:      "fill refill top|up",
	Drain:     "drain let|out",
	Lock:      "lock padlock",
	Unlock:    "unlock",
	Off:       "isolate switch|off turn|off shut|off cut|off cut power|down unplug",
	On:        "restore reconnect energise energize switch|on turn|on power|up plug|in",
	Placed:    "place slide set lay hang",
	Emptied:   "empty",
	Pulled:    "pull unplug disconnect remove take|out",
	Renewed:   "renew replace exchange change swap swap|out",
	Fresh:     "new",
	Hung:      "lock locks padlock padlocks tag tags",
	Joiners:   "and",
	Articles:  "the a an its your his her their own it them this that these those both all each every",
	Nouns:     "lock padlock fill drain fit mount torque",
	Compounds: "off away plug valve cock tap screw hole cap port line hose pump pan level pipe tube bolt nut wrench ring point tray",
	Switches:  "switch isolator breaker fuse plug disconnector disconnect",
	Valves:    "valve cock tap seacock stopcock", Vents: "vent drain bleed dump", Earthing: "earth earthing ground grounding", Blocks: "block",
	Sides:        "left right front rear upper lower top bottom one two three four main north south east west",
	Prepositions: "of at for in on by behind under above beside near to from with",
}

var (
	ones = strings.Fields("one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty")
	tens = strings.Fields("twenty thirty forty fifty sixty seventy eighty ninety")
)

var numbers = shape.Counting(shape.Numbers{
	Words:    ones,
	Spelled:  shape.SpelledOf(ones, tens, func(ten, one int) string { return tens[ten] + " " + ones[one] }),
	Hundreds: shape.Spelled{"hundred": 100}, Thousand: "thousand", And: "and",
	Apart:  shape.SetOf("point few several many some dozen"),
	Dozens: shape.Spelled{"dozen": 12, "half a dozen": 6, "half dozen": 6},
	Parts: []shape.Fraction{
		{Said: "half of a", Of: 0.5}, {Said: "half of an", Of: 0.5}, {Said: "half a", Of: 0.5}, {Said: "half an", Of: 0.5}, {Said: "half", Of: 0.5},
		{Said: "quarter of a", Of: 0.25}, {Said: "quarter of an", Of: 0.25}, {Said: "quarter", Of: 0.25},
		{Said: "quarters of a", Of: 0.25}, {Said: "quarters of an", Of: 0.25}, {Said: "quarters", Of: 0.25},
		{Said: "third of a", Of: 1. / 3}, {Said: "third of an", Of: 1. / 3}, {Said: "thirds of a", Of: 1. / 3}, {Said: "thirds of an", Of: 1. / 3}, // "third" alone is one in a row
	},
	Plus: []shape.Fraction{{Said: "and a half", Of: 0.5}, {Said: "and a quarter", Of: 0.25}, {Said: "and a third", Of: 1. / 3}, {Said: "and three quarters", Of: 0.75}},
	One:  shape.SetOf("a an"),
	Many: shape.SetOf("both these those"), Plurals: []string{"s"},
	Of: "of", Articles: []string{"the", "its", "their", "these", "those", "all"},
})
