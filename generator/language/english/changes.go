package english

import "baybinder/generator/language/words"

// changes are the words for what is another in a revision.
var changes = words.Changes{
	Step:         "step %s",
	Phase:        "phase %d",
	Job:          "the whole job",
	Gone:         "%s is gone: %s",
	New:          "%s is new: %s",
	Silent:       "it says nothing",
	Renumbered:   "%s was %s",
	Reordered:    "%s has the same in another order",
	Other:        "%s: %s, was %s",
	Also:         "%s: now also: %s",
	NoLonger:     "%s: no longer: %s",
	Says:         "it says",
	Reason:       "the reason is",
	AtRefit:      "at the refit it says",
	Performs:     "now it performs: %s",
	Performed:    "what it performs changed: %s",
	NotPerformed: "no longer performed: %s",
	Terms: map[string]string{
		"tool": "tool", "supply": "supply", "role": "role", "post": "post", "hazard": "hazard", "hold": "hold",
		"isolate": "isolate", "lock": "lock", "release": "release", "prove": "prove", "unlock": "unlock", "restore": "restore",
		"test-live": "test-live", "remove": "remove", "disconnect": "disconnect", "refit": "refit", "connect": "connect", "renew": "renew",
		"cap": "cap", "loosen": "loosen", "tighten": "tighten", "mark": "mark", "place": "place", "clear": "clear",
		"alter": "alter", "reset": "reset", "drain": "drain", "fill": "fill", "bleed": "bleed", "dry": "dry",
		"part": "part", "fastener": "fastener", "energy": "energy", "point": "point", "fluid": "fluid", "setting": "setting",
		"machine": "machine", "noted": "noted", "do": "performing a procedure", "see": "see", "reverse": "reverse", "each": "each",
		"between": "between", "when": "when", "if-not": "if-not", "if": "if", "again": "again", "optional": "optional",
		"people": "people", "time": "time", "within": "within", "pause": "pause", "adds": "adds", "again-in": "again-in",
		"alike": "alike", "amount": "amount", "answer": "answer", "at": "at", "avoid": "avoid", "before-isolate": "before-isolate",
		"before-restore": "before-restore", "blocked-by": "blocked-by", "by": "by", "call": "call", "capacity": "capacity", "carries": "carries",
		"consequence": "consequence", "contained-by": "contained-by", "first-aid": "first-aid", "fits": "fits", "for": "for", "freed-by": "freed-by",
		"gas-volume": "gas-volume", "ghs": "ghs", "good": "good", "guards": "guards", "happens": "happens", "harm": "harm",
		"hazards": "hazards", "held-by": "held-by", "how": "how", "kind": "kind", "length": "length", "limit": "limit",
		"looks-for": "looks-for", "mass": "mass", "name": "name", "nature": "nature", "near": "near", "needed-by": "needed-by",
		"needs": "needs", "note": "note", "of": "of", "old": "old", "option": "option", "or": "or",
		"places": "places", "precharge": "precharge", "pressure": "pressure", "prove-dead": "prove-dead", "proved-on": "proved-on", "range": "range",
		"rated": "rated", "serial": "serial", "stored": "stored", "symbol": "symbol", "temperature": "temperature", "tries": "tries",
		"under": "under", "unit": "unit", "value": "value", "voltage": "voltage", "wait": "wait", "waste": "waste", "wear": "wear",
		"what": "what", "why": "why", "with": "with", "where": "where", "only-with": "only-with", "travel": "travel",
		"frequency": "frequency", "duration": "duration", "coupling": "coupling", "lift": "lift", "horizontal": "horizontal", "vertical": "vertical",
		"asymmetry": "asymmetry", "thread": "thread", "class": "class", "across-flats": "across-flats", "drive": "drive", "torque": "torque",
		"stage": "stage", "condition": "condition", "lubricant": "lubricant", "sequence": "sequence", "start": "start", "mark-after": "mark-after",
		"retorque": "retorque", "renew-with": "renew-with", "expects": "expects", "leaves": "leaves",
	},
}

// marks are the words for what was amiss with those who did a job.
var marks = words.Marks{
	Away:   "%s was not there on %s",
	Unread: "%s had not read %s as it stood on %s",
	Lacks:  "nobody who did it held %s on %s",
	Signed: "%s, who signed %s, did not hold %s on %s",
}
