package quantity

// Every factor below follows from these definitions, all of them exact. The
// pound, the foot and the inch are those of the international yard and pound
// agreement of 1959; gravity is the standard acceleration of the CGPM of 1901;
// the gallon of the United States is 231 cubic inches.
const (
	inch       = 0.0254      // m
	foot       = 12 * inch   // m
	mile       = 5280 * foot // m
	pound      = 0.45359237  // kg
	gravity    = 9.80665     // m/s²
	poundForce = pound * gravity
	mercury    = 13595.1                  // kg/m³, by the convention behind the millimetre of mercury
	gallon     = 231 * inch * inch * inch // m³

	zeroCelsius    = 273.15 // K
	zeroFahrenheit = 459.67 // °F above absolute zero

	secondsPerDay = 86400.0
	daysPerYear   = 365.2425 // 146 097 days in 400 Gregorian years
)

// unitEntry is a unit's line of the table.
type unitEntry struct {
	symbol    string
	dimension Dimension
	factor    float64  // base units in one of these; days on the calendar
	offset    float64  // added before the factor; temperatures only
	also      []string // other spellings, which Parse and Find read
}

// units is indexed by Unit. The spellings are those of the format page; the
// compatibility forms of its signs are folded before they are compared.
var units = [...]unitEntry{
	Bare: {"", None, 1, 0, nil},

	NewtonMetre:        {"N·m", Torque, 1, 0, []string{"Nm", "N.m", "N m"}},
	CentinewtonMetre:   {"cN·m", Torque, 0.01, 0, []string{"cNm", "cN.m", "cN m"}},
	PoundForceFoot:     {"lbf·ft", Torque, poundForce * foot, 0, []string{"lbf ft", "lbf-ft", "lbf.ft", "ft-lb", "ft-lbs", "lb-ft", "ft·lb", "lb·ft", "ft lb", "lb ft", "ft-lbf", "ft·lbf", "ft lbf"}},
	PoundForceInch:     {"lbf·in", Torque, poundForce * inch, 0, []string{"lbf in", "lbf-in", "lbf.in", "in-lb", "lb-in", "in·lb", "lb·in", "in-lbf", "in·lbf"}},
	KilogramForceMetre: {"kgf·m", Torque, gravity, 0, []string{"kgfm", "kgf.m", "kgf m", "kgf-m"}},

	Pascal:              {"Pa", Pressure, 1, 0, nil},
	Kilopascal:          {"kPa", Pressure, 1e3, 0, nil},
	Megapascal:          {"MPa", Pressure, 1e6, 0, nil},
	Bar:                 {"bar", Pressure, 1e5, 0, nil},
	Millibar:            {"mbar", Pressure, 100, 0, nil},
	PoundPerSquareInch:  {"psi", Pressure, poundForce / (inch * inch), 0, nil},
	InchOfMercury:       {"inHg", Pressure, mercury * gravity * inch, 0, []string{"in Hg"}},
	MillimetreOfMercury: {"mmHg", Pressure, mercury * gravity / 1000, 0, []string{"mm Hg"}},

	Volt:        {"V", Voltage, 1, 0, nil},
	Millivolt:   {"mV", Voltage, 1e-3, 0, nil},
	Kilovolt:    {"kV", Voltage, 1e3, 0, nil},
	Ampere:      {"A", Current, 1, 0, nil},
	Milliampere: {"mA", Current, 1e-3, 0, nil},
	Ohm:         {"Ω", Resistance, 1, 0, nil},
	Microohm:    {"µΩ", Resistance, 1e-6, 0, nil},
	Milliohm:    {"mΩ", Resistance, 1e-3, 0, nil},
	Kilohm:      {"kΩ", Resistance, 1e3, 0, nil},
	Megohm:      {"MΩ", Resistance, 1e6, 0, nil},
	Farad:       {"F", Capacitance, 1, 0, nil},
	Microfarad:  {"µF", Capacitance, 1e-6, 0, nil},
	Millifarad:  {"mF", Capacitance, 1e-3, 0, nil},
	Watt:        {"W", Power, 1, 0, nil},
	Kilowatt:    {"kW", Power, 1e3, 0, nil},
	Hertz:       {"Hz", Frequency, 1, 0, nil},

	Second:       {"s", Duration, 1, 0, nil},
	Minute:       {"min", Duration, 60, 0, nil},
	Hour:         {"h", Duration, 3600, 0, nil},
	Day:          {"d", Duration, secondsPerDay, 0, []string{"day", "days"}},
	Week:         {"weeks", Duration, 7 * secondsPerDay, 0, []string{"week"}},
	CalendarDay:  {"days", Calendar, 1, 0, nil}, // spelled as Day, and told apart by what is wanted
	CalendarWeek: {"weeks", Calendar, 7, 0, nil},
	Month:        {"months", Calendar, daysPerYear / 12, 0, []string{"month"}},
	Year:         {"years", Calendar, daysPerYear, 0, []string{"year"}},

	Micrometre: {"µm", Length, 1e-6, 0, nil},
	Millimetre: {"mm", Length, 1e-3, 0, nil},
	Centimetre: {"cm", Length, 0.01, 0, nil},
	Metre:      {"m", Length, 1, 0, nil},
	Inch:       {"in", Length, inch, 0, []string{"in."}},
	Foot:       {"ft", Length, foot, 0, nil},
	Thou:       {"thou", Length, inch / 1000, 0, nil},
	Mile:       {"mi", Length, mile, 0, nil},

	Gram:     {"g", Mass, 1e-3, 0, nil},
	Kilogram: {"kg", Mass, 1, 0, nil},
	Tonne:    {"t", Mass, 1e3, 0, nil},
	Pound:    {"lb", Mass, pound, 0, nil},
	Ounce:    {"oz", Mass, pound / 16, 0, nil},

	Millilitre: {"mL", Volume, 1e-6, 0, nil},
	Litre:      {"L", Volume, 1e-3, 0, nil},
	CubicMetre: {"m³", Volume, 1, 0, nil},
	Gallon:     {"gal", Volume, gallon, 0, []string{"gal (US)"}},
	Quart:      {"qt", Volume, gallon / 4, 0, []string{"qt (US)"}},

	Newton:        {"N", Force, 1, 0, nil},
	Kilonewton:    {"kN", Force, 1e3, 0, nil},
	PoundForce:    {"lbf", Force, poundForce, 0, nil},
	KilogramForce: {"kgf", Force, gravity, 0, nil},

	Celsius:    {"°C", Temperature, 1, zeroCelsius, []string{"℃"}},
	Fahrenheit: {"°F", Temperature, 5.0 / 9, zeroFahrenheit, []string{"℉"}},
	Kelvin:     {"K", Temperature, 1, 0, nil},

	Degree:              {"°", Angle, 1, 0, nil},
	Turn:                {"turns", Turns, 1, 0, []string{"turn"}},
	RevolutionPerMinute: {"rpm", RotationalSpeed, 1.0 / 60, 0, nil},
	KilometrePerHour:    {"km/h", Speed, 1 / 3.6, 0, nil},
	MilePerHour:         {"mph", Speed, mile / 3600, 0, nil},
	Percent:             {"%", Ratio, 0.01, 0, nil},
	PartPerMillion:      {"ppm", Ratio, 1e-6, 0, nil},
	Plain:               {"", Ratio, 1, 0, nil},
	Each:                {"each", Count, 1, 0, nil},

	PH:                        {"pH", Acidity, 1, 0, nil},
	MilligramPerLitre:         {"mg/L", Concentration, 1e-3, 0, []string{"mg/l"}},
	GramPerLitre:              {"g/L", Concentration, 1, 0, []string{"g/l"}},
	Nephelometric:             {"NTU", Turbidity, 1, 0, nil},
	MicrosiemensPerCentimetre: {"µS/cm", Conductivity, 1e-4, 0, nil},
	MillisiemensPerCentimetre: {"mS/cm", Conductivity, 0.1, 0, nil},
	Decibel:                   {"dB", Level, 1, 0, nil},
	Drop:                      {"drops", Drops, 1, 0, []string{"drop"}},
}

// proseWords are unit words that people write in sentences, whatever the language.
// Find reads them; a field of the manual is written with the symbol. A word that is
// more than a unit as often (feet, meters, pounds, degrees) is none of them. In small
// letters a German one is the end of a word: "Viertelstunde".
var proseWords = map[Unit][]string{
	Second:      {"second", "seconds", "segundo", "segundos", "Sekunde", "Sekunden"},
	Minute:      {"minute", "minutes", "minuto", "minutos", "Minute", "Minuten"},
	Hour:        {"hour", "hours", "hora", "horas", "Stunde", "Stunden", "stunde", "stunden"},
	Day:         {"día", "días", "Tag", "Tage", "Tagen"},
	Week:        {"semana", "semanas", "Woche", "Wochen"},
	Month:       {"mes", "meses", "Monat", "Monate", "Monaten"},
	Year:        {"año", "años", "Jahr", "Jahre", "Jahren"},
	Volt:        {"volt", "volts", "Volt", "voltio", "voltios"},
	Litre:       {"litre", "litres", "liter", "liters", "Liter", "Litern", "litro", "litros"},
	Millilitre:  {"millilitre", "millilitres", "milliliter", "milliliters", "Milliliter", "Millilitern", "mililitro", "mililitros"},
	Kilogram:    {"kilogram", "kilograms", "Kilogramm", "kilogramo", "kilogramos", "kilo", "kilos", "Kilo"},
	Millimetre:  {"millimetre", "millimetres", "millimeter", "millimeters", "Millimeter", "Millimetern", "milímetro", "milímetros"},
	NewtonMetre: {"newton metre", "newton metres", "newton meter", "newton meters", "newton-metre", "newton-metres", "newton-meters", "Newtonmeter", "Newtonmetern", "newton metro", "newton metros"},
	Turn:        {"Umdrehung", "Umdrehungen", "umdrehung", "umdrehungen", "Drehung", "Drehungen", "drehung", "drehungen", "vuelta", "vueltas"},
	Bar:         {"bares"},

	RevolutionPerMinute: {"min-1", "min−1", "min⁻¹", "U/min", "rev/min", "r/min"},

	Ampere:  {"Ampere", "amperio", "amperios"},
	Ohm:     {"ohm", "ohms", "Ohm", "ohmio", "ohmios"},
	Celsius: {"degrees Celsius", "degree Celsius", "Grad Celsius", "grados Celsius"},
}

// slips are spellings that are not read, with what their writer meant.
var slips = map[string]string{
	"uF": "µF", "mfd": "µF", "ohm": "Ω", "ohms": "Ω", "kohm": "kΩ", "Mohm": "MΩ", "R": "Ω",
	"PSI": "psi", "Bar": "bar", "BAR": "bar", "v": "V", "KV": "kV", "amp": "A", "amps": "A", "volt": "V", "volts": "V",
	"sec": "s", "secs": "s", "second": "s", "seconds": "s", "mins": "min", "minute": "min", "minutes": "min",
	"hr": "h", "hrs": "h", "hour": "h", "hours": "h", "wk": "weeks", "yr": "years", "yrs": "years",
	"inch": "in", "inches": "in", "\"": "in", "feet": "ft", "foot": "ft", "MM": "mm", "Mm": "mm",
	"Kg": "kg", "KG": "kg", "kgs": "kg", "lbs": "lb", "T": "t", "tons": "t", "grams": "g",
	"l": "L", "litre": "L", "litres": "L", "liter": "L", "liters": "L", "ml": "mL", "cc": "mL", "m3": "m³", "gals": "gal",
	"C": "°C", "degC": "°C", "ºC": "°C", "degF": "°F", "ºF": "°F", "k": "K", "deg": "°", "degrees": "°", "º": "°",
	"RPM": "rpm", "kph": "km/h", "kmh": "km/h", "KM/H": "km/h", "MPH": "mph", "percent": "%", "pcs": "each", "off": "each",
	"uS/cm": "µS/cm", "us/cm": "µS/cm", "mohm": "mΩ", "uohm": "µΩ", "uΩ": "µΩ", "um": "µm", "micron": "µm", "microns": "µm", "mile": "mi", "miles": "mi", "PH": "pH", "ph": "pH", "db": "dB", "DB": "dB", "ntu": "NTU", "PPM": "ppm", "rev": "turns", "revs": "turns",
	"NM": "N·m", "nm": "N·m", "ft lbs": "lbf·ft", "ft.lbs": "lbf·ft", "lbs ft": "lbf·ft", "in lbs": "lbf·in", "in-lbs": "lbf·in", "hz": "Hz", "HZ": "Hz", "kw": "kW", "KW": "kW",
}
