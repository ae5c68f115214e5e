package fastening

// proofLoads are the proof loads of coarse threads, N: nominal diameter → by
// class. Source: ISO 898-1, tables 4 and 5, as two bolt makers' charts print
// them, both alike ("ISO Metric Pitch Thread Proof Loads", "Tensile Strength").
var proofLoads = map[float64]map[string]float64{
	5:  {"8.8": 8230, "10.9": 11800, "12.9": 13800},
	6:  {"8.8": 11600, "10.9": 16700, "12.9": 19500},
	8:  {"8.8": 21200, "10.9": 30400, "12.9": 35500},
	10: {"8.8": 33700, "10.9": 48100, "12.9": 56300},
	12: {"8.8": 48900, "10.9": 70000, "12.9": 81800},
	14: {"8.8": 66700, "10.9": 95500, "12.9": 112000},
	16: {"8.8": 91000, "10.9": 130000, "12.9": 152000},
	18: {"8.8": 115000, "10.9": 159000, "12.9": 186000},
	20: {"8.8": 147000, "10.9": 203000, "12.9": 238000},
	22: {"8.8": 182000, "10.9": 252000, "12.9": 294000},
	24: {"8.8": 212000, "10.9": 293000, "12.9": 342000},
}

// Proof is a proof load: the pull that a bolt bears without a lasting stretch.
type Proof struct {
	Load    float64 // N
	Area    float64 // stress area of the formula, mm²
	Stress  float64 // proof stress of the class, MPa
	Printed bool    // the load is the table's; else area times stress
}

// ProofOf is the proof load of a thread in a class: the table's figure where
// it has one, else Fp = As·Sp (ISO 898-1, 9.6, as the charts head their
// tables). The table rounds to three figures, so the two differ by up to
// 0.5 %. It is false where the class has no bolts of that size.
func ProofOf(t Thread, c Class) (Proof, bool) {
	p := Proof{Area: t.StressArea(), Stress: c.proof}
	if t.Diameter > 16 {
		p.Stress = c.proofAbove16
	}
	p.Load = p.Area * p.Stress
	if load, has := proofLoads[t.Diameter][c.Code]; has && t.Coarse() {
		p.Load, p.Printed = load, true
	}
	return p, p.Load > 0
}
