package words

// Discharge are the words of the working of a wait for a stored charge.
type Discharge struct {
	R, C, V, AtItsPeak, Safe    string // what stands for what; AtItsPeak goes behind V
	AtLeast                     string // the time, the same in whole seconds
	Whole, Marked, Alone, Maker string // Marked: the longer time; Alone: the energy, J
	Source                      string
}

// Bolt are the words of the working of a bolt's load.
type Bolt struct {
	Share                  string            // the load, per cent, the proof load
	T, K, D, Fp            string            // K: the condition; Fp: thread, class
	Conditions             map[string]string // by the manual's word
	Span, Thread           string            // Span: two nut factors, two loads
	Source, Tables, Stress string            // Source: of the proof load, which is Tables or Stress
}

// Adapter are the words of the working of a wrench's setting behind an adapter.
type Adapter struct {
	T, L, A, InLine, Grip, Source string // L: the wrench; A: the adapter
}

// Gas are the words of the working of what pressure lets out.
type Gas struct {
	Gas, Fluid                      string // an amount
	Vessel, Gauge, Air              string // what stands for what
	FluidOut, Precharge, Before     string
	Warm, Breathed                  string
	AloneIs, Keeps, Right, GivesOff string // GivesOff: the energy
	SourceGas, SourceFluid          string
}

// Lift are the words of the working of a lifting index.
type Lift struct {
	Index, None                   string            // Index: the index, the limit with its unit
	L, LOfSeveral                 string            // LOfSeveral: the whole load, how many people
	LC, HM, VM, DM, AM, FM, CM    string            // a length; FM: lifts with their unit, how long; CM: the hold
	Minute                        string            // lifts in a minute
	Hours, Holds                  map[string]string // by the program's words
	Hands, Above, Several         string
	Worse, AtMachine, WhereItGoes string // Worse: one of the others
	Source                        string
}

// Safety are the words of the working of a signal word.
type Safety struct {
	Formula, Put        string            // Put: the harm, whether it will or could follow
	Harms, Happens      map[string]string // by the manual's words
	Words, Most, Source string
}

// Chemical are the words of the working of a chemical's label.
type Chemical struct {
	Danger, Warning                  string            // the signal words of a label
	Statements                       map[string]string `may:"empty"` // by code, where not those of the table, which is English
	Precautions                      map[string]string `may:"empty"` // likewise, by the name of each
	Formula, None, Source            string
	NoSign, GivesWay                 string            // GivesWay: a pictogram
	Signs                            map[string]string // what the pictograms show, by number
	Twofold                          string            // code; the graver category, its word; the other, its word
	WithSign, NoPictogram            string            // WithSign: a word, a pictogram; NoPictogram: a word
	Covered, Optional, OfTheChemical string            // Covered: a statement; Optional: a pictogram
}
