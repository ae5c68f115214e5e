package words

// kinds are the words for the kinds of tools, holds and energies, by the
// format's own word: English, then Spanish.
var kinds = map[string][2]string{
	"socket": {"Sockets", "Vasos"}, "spanner": {"Spanners", "Llaves"}, "screwdriver": {"Screwdrivers", "Destornilladores"},
	"torque-wrench": {"Torque wrenches", "Llaves dinamométricas"}, "angle-gauge": {"Angle gauges", "Medidores de ángulo"},
	"tester": {"Testers and gauges", "Medidores"}, "lifting": {"Lifting gear", "Elevación"}, "ppe": {"Protective gear", "Equipo de protección"},
	"lock": {"Locks", "Candados"}, "aid": {"Aids", "Ayudas"}, "other": {"Other tools", "Otras herramientas"},
	"wait": {"Waits", "Esperas"}, "measure": {"Measurements", "Medidas"}, "look": {"Looks", "Inspecciones"}, "ask": {"Questions", "Preguntas"},
	"note": {"Notes to write down", "Anotaciones"}, "sign": {"Sign-offs", "Firmas"}, "check": {"Checks by a second person", "Comprobaciones de otra persona"},
	"witness":  {"Witness points", "Puntos de testigo"},
	"electric": {"electric", "eléctrica"}, "pressure": {"pressure", "presión"}, "vacuum": {"vacuum", "vacío"}, "gravity": {"gravity", "gravedad"},
	"spring": {"spring", "muelle"}, "motion": {"motion", "movimiento"}, "heat": {"heat", "calor"}, "chemical": {"chemical", "química"},
	"line": {"line", "tubería"}, "wire": {"wire", "cable"}, "connector": {"connector", "conector"},
}

// Kind is the word for a kind that the format has a word for; other words are
// returned as they are.
func (w *Words) Kind(kind string) string {
	both, known := kinds[kind]
	switch {
	case !known:
		return kind
	case w.Lang == "es":
		return both[1]
	}
	return both[0]
}
