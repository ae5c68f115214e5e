package finding

import "regexp"

var stops = regexp.MustCompile(`(\pL)\.\.( |$)`)

// OneStop is a text in which a sentence that ends with initials ends with one
// full stop: "Seen by A.V.", not "Seen by A.V..".
func OneStop(text string) string { return stops.ReplaceAllString(text, "$1.$2") }
