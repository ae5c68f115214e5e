package words

// Front are the words of the front page and of a machine's page.
type Front struct {
	MakeSafe, Check, Repair, BringBack string
	AndMore                            string // how many
	ToReach, ComesOffFirst, Part       string
	Inspection, Inspected              string // Inspected: a day
	InspectedUnit                      string // which one, a day
}
