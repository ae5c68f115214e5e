package words

// Sums are the words of the workings of what is added, counted and dated.
type Sums struct {
	How                        string // a number with its words
	Convert, Rounded, Units    string // formula; what is assumed; source
	Spread                     string // formula: of the times of several kinds of unit
	People, Tools, Each        string // formulas
	Checked, Words, All        string // formula; what stands for what
	Missed, Untimed, AtOnce    string // formulas
	Until                      string // formula
	Read, ReadAll, ReadSource  string // formulas; source
	Ticked, Gaps, Values, Done string // formulas
	Ease, Grade, EaseSource    string // formulas; source
	Sentence, Word             string // what stands for what
	Longest                    string // formula
	Page, Shop, Record         string // sources
}
