package signs

import "maps"

// undrawn are registered signs that no file here draws, by what they warn of:
// in English, from memory.
var undrawn = map[string]string{
	"W013": "Guard dog",
	"W033": "Barbed wire",
	"W034": "Bull",
	"W037": "Run over by a vehicle or a machine",
	"W039": "Falling ice",
	"W040": "Roof avalanche",
	"M023": "Use the footbridge",
	"M024": "Use this walkway",
	"M025": "Protect infants' eyes with opaque eye protection",
	"M029": "Sound horn",
	"M030": "Use litter bin",
	"P005": "Not drinking water",
	"P018": "No sitting",
	"P020": "Do not use the lift in the event of fire",
	"P021": "No dogs",
	"P029": "No photography",
	"P030": "Do not tie knots in rope",
	"P035": "Do not wear metal-studded footwear",
}

// Undrawn are the names of registered signs that are not drawn here, by number.
func Undrawn() map[string]string { return maps.Clone(undrawn) }
