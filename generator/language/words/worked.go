package words

// Worked are the words over a computed result, which opens to its working.
type Worked struct {
	LiftAlone, LiftTogether string // index, part, mass, limit; LiftTogether: people before limit
	GasOut, FluidOut        string // energy, amount
	Setting                 string // fastener, torque, adapter, wrench, setting
	Label, Signal           string
	Calibration             string // tool or individual, day
	AfterAngle              string
	Section                 string
	Source                  string // in a line of its own: what it is from
	Sum                     string // supply, amount
	SumFormula, SumSource   string
	Locks                   string // how many, tool
	LocksFormula            string
	LocksPut, LocksSource   string // LocksPut: points, locks on each

	Discharge Discharge
	Bolt      Bolt
	Adapter   Adapter
	Gas       Gas
	Lift      Lift
	Safety    Safety
	Chemical  Chemical
	Sums      Sums
}
