package english

import "baybinder/generator/language/shape"

// verbs are said in orders. "The bolt that you loosen" is none.
var verbs = shape.Verbs{
	Said: []shape.Verb{
		{Kind: "remove", Of: shape.Part, Said: "remove detach dismount open take|off take|out lift|off lift|out pull|off pull|out"},
		{Kind: "refit", Of: shape.Part, Said: "refit reattach put|back"},
		{Kind: "disconnect", Of: shape.Part, Said: "disconnect unplug"},
		{Kind: "connect", Of: shape.Part, Said: "connect reconnect plug|in"},
		{Kind: "cap", Of: shape.Part, Said: "cap tape"},
		{Kind: "loosen", Of: shape.Fastener, Said: "undo loosen slacken unscrew remove back|out take|out take|off"},
		{Kind: "tighten", Of: shape.Fastener, Said: "tighten retighten torque"},
		{Kind: "isolate", Of: shape.Energy, Said: "isolate switch|off turn|off cut|off"},
		{Kind: "lock", Of: shape.Energy, Said: "lock"},
		{Kind: "release", Of: shape.Energy, Said: "release"},
		{Kind: "prove", Of: shape.Energy, Said: "prove"},
		{Kind: "unlock", Of: shape.Energy, Said: "unlock"},
		{Kind: "restore", Of: shape.Energy, Said: "restore switch|on turn|on"},
		{Kind: "drain", Of: shape.Fluid, Said: "drain let|out"},
		{Kind: "fill", Of: shape.Fluid, Said: "fill refill top|up"},
		{Kind: "bleed", Of: shape.Fluid, Said: "bleed"},

		// What these do depends on the thing: a switch is opened to cut, a valve to
		// bring back.
		{Kind: "restore", Of: shape.Energy, Said: "plug|in start run"},
		{Kind: shape.Either, Of: shape.Energy, Said: "open close shut pull|out pull switch turn bridge put|in leave|in take|out"},
		{Kind: shape.EitherSetting, Of: shape.Setting, Said: "open close shut pull switch turn bridge put|in leave|in take|out"},
		{Kind: "place", Of: shape.Tool, Said: "put|in leave|in"},
		{Kind: "clear", Of: shape.Tool, Said: "take|out pull|out pull"},
	},
	Articles: shape.SetOf("the a an its this that these those both all each every other one two three four five six seven eight ten twelve"),
	Little:   shape.SetOf("only just also both all again fully completely carefully slowly gently evenly"),
	Joiners:  shape.SetOf("and then now"),
	Parts:    shape.SetOf("in on"),
	Plurals:  []string{"s", "es"},
	After:    shape.SetOf("with and then by on in using or before after while when until as for if so again first but from through during"),
}
