package english

import "baybinder/generator/language/shape"

// jotted are the words of notes as mechanics jot them, and of old procedures.
var jotted = shape.Jotted{
	Said: []shape.Verb{
		{Kind: "remove", Of: shape.Part, Said: "uninstall extract unscrew unbolt unclip slip|off slide|off slide|out screw|out screw|off knock|out drive|out cut|off prise|off prise|out withdraw swing|out take|away pull"},
		{Kind: "refit", Of: shape.Part, Said: "fit install reinstall mount remount attach replace|back put|on put|in set|back slip|on slide|on slide|in screw|in screw|on clip|on clip|in bolt|on bolt|up press|in push|in insert close"},
		{Kind: "disconnect", Of: shape.Part, Said: "detach unclip unhook pull|off"},
		{Kind: "connect", Of: shape.Part, Said: "hook|up attach rejoin"},
		{Kind: "cap", Of: shape.Part, Said: "plug seal blank blank|off cap|off"},
		{Kind: "loosen", Of: shape.Fastener, Said: "unbolt unfasten free crack break|loose unscrew screw|out pull|out knock|out"},
		{Kind: "tighten", Of: shape.Fastener, Said: "fasten nip|up do|up pull|up screw|down screw|tight retorque snug"},
		{Kind: "isolate", Of: shape.Energy, Said: "shut|off power|down disconnect de-energise de-energize deenergise deenergize"},
		{Kind: "lock", Of: shape.Energy, Said: "padlock lock|out lock|off"},
		{Kind: "unlock", Of: shape.Energy, Said: "unpadlock"},
		{Kind: "release", Of: shape.Energy, Said: "let|out vent discharge blow|down dissipate depressurise depressurize"},
		{Kind: "prove", Of: shape.Energy, Said: "verify"},
		{Kind: "restore", Of: shape.Energy, Said: "re-energise re-energize reenergise reenergize energise energize power|up reconnect put|back"},
		{Kind: "drain", Of: shape.Fluid, Said: "empty drain|off run|out let|off"},
		{Kind: "fill", Of: shape.Fluid, Said: "fill|up fill|in replenish"},
		{Kind: "dry", Of: shape.Fluid, Said: "mop|up"},
		{Kind: "mark", Of: shape.Group, Said: "mark label tag"},
		{Kind: "place", Of: shape.Tool, Said: "put set place fit insert slide|in push|in position"},
		{Kind: "clear", Of: shape.Tool, Said: "remove clear clear|away take|away take|off withdraw"},
		{Kind: "reset", Of: shape.Setting, Said: "reset"},
	},
	Lead:    []string{"first", "then", "now", "next", "finally", "carefully", "slowly", "please", "again", "also", "you must", "you should", "make sure to", "be sure to"},
	It:      shape.SetOf("it them these those both"),
	Fresh:   shape.SetOf("new"),
	Old:     shape.SetOf("old worn used spent broken"),
	Off:     shape.SetOf("off out"),
	On:      shape.SetOf("on back in"),
	At:      shape.SetOf("at by on the"),
	Under:   shape.SetOf("in under underneath beneath below behind round around between"),
	Padlock: shape.SetOf("lock locks padlock padlocks"),
	Not:     shape.SetOf("not never dont don't no without cannot otherwise"),
	If:      shape.SetOf("if unless whether optionally"),
	When:    shape.SetOf("when once after before with while until for on during as"),
	Or:      shape.SetOf("or"),
	Behind: shape.SetOf(`and or with w from to at in on off out up down back away by until till using before after while so it them then now first again
		evenly crosswise fully completely slightly gently carefully slowly when where which that is are was were must should shall can will has have
		if unless because as into onto under over behind above below beside between through without only too both dead loose tight open closed
		per each for against towards toward about between straight half one two three four five six seven eight a the your its slowly together live`),
	Wait:     shape.SetOf("wait cool leave"),
	Reverse:  []string{"in reverse", "reverse order", "reverse of removal", "reverse of dismantling"},
	Step:     shape.SetOf("step"),
	Toolbox:  shape.SetOf("tool tools toolbox equipment materials material parts consumables spares"),
	Contents: []string{"needed", "required", "list", "to fetch", "you need", "and material", "and materials", "and parts"},
	ToChoose: "A hazard to choose (%s was typed here)",
}
