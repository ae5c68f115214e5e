package quantity

import "strings"

// Unit is a unit of measure that the manual knows. The zero Unit is Bare.
type Unit uint8

// The units, dimension by dimension.
const (
	Bare Unit = iota // no unit at all

	NewtonMetre
	CentinewtonMetre
	PoundForceFoot
	PoundForceInch
	KilogramForceMetre

	Pascal
	Kilopascal
	Megapascal
	Bar
	Millibar
	PoundPerSquareInch
	InchOfMercury
	MillimetreOfMercury

	Volt
	Millivolt
	Kilovolt
	Ampere
	Milliampere
	Ohm
	Microohm
	Milliohm
	Kilohm
	Megohm
	Farad
	Microfarad
	Millifarad
	Watt
	Kilowatt
	Hertz

	Second
	Minute
	Hour
	Day
	Week
	CalendarDay
	CalendarWeek
	Month
	Year

	Micrometre
	Millimetre
	Centimetre
	Metre
	Inch
	Foot
	Thou
	Mile

	Gram
	Kilogram
	Tonne
	Pound
	Ounce

	Millilitre
	Litre
	CubicMetre
	Gallon // of the United States, 231 in³
	Quart  // a quarter of it

	Newton
	Kilonewton
	PoundForce
	KilogramForce

	Celsius
	Fahrenheit
	Kelvin

	Degree
	Turn
	RevolutionPerMinute
	KilometrePerHour
	MilePerHour
	Percent
	PartPerMillion
	Plain // a ratio without a unit, "1.26"
	Each

	PH
	MilligramPerLitre
	GramPerLitre
	Nephelometric // of turbidity
	MicrosiemensPerCentimetre
	MillisiemensPerCentimetre
	Decibel
	Drop
)

// Symbol returns the unit as it is printed, "N·m". Nothing stands for Bare.
func (u Unit) Symbol() string { return u.entry().symbol }

// String returns the symbol.
func (u Unit) String() string { return u.Symbol() }

// Dimension returns what the unit measures, None for Bare.
func (u Unit) Dimension() Dimension { return u.entry().dimension }

// Units returns the units of a dimension in the order of the handbook's table,
// or all of them for None. A plain ratio, which has no symbol, is none of them.
func Units(d Dimension) []Unit {
	var list []Unit
	for u := Bare + 1; int(u) < len(units); u++ {
		if u != Plain && (d == None || u.Dimension() == d) {
			list = append(list, u)
		}
	}
	return list
}

// UnitNamed returns the unit of a symbol or of any spelling that Parse reads.
// Days and weeks are those of the clock; see CalendarDay and CalendarWeek.
func UnitNamed(symbol string) (u Unit, ok bool) {
	u, size := matchUnit(symbol, None, field)
	return u, size > 0 && size == len(symbol)
}

// Like reports whether two units are one but for the prefix, such as mL and L:
// whoever reads one reads the other. A unit is like itself.
func (u Unit) Like(other Unit) bool {
	return u.Dimension() == other.Dimension() && u.root() == other.root()
}

// root returns the symbol of the unit without its prefix.
func (u Unit) root() string {
	symbol := u.Symbol()
	for _, prefix := range [...]string{"m", "c", "k", "M", "µ"} {
		rest, has := strings.CutPrefix(symbol, prefix)
		if root, known := UnitNamed(rest); has && known && root.Dimension() == u.Dimension() {
			return rest
		}
	}
	return symbol
}

// entry returns the unit's line of the table; a value that is no unit gets
// the line of Bare.
func (u Unit) entry() unitEntry {
	if int(u) >= len(units) {
		u = Bare
	}
	return units[u]
}

// isTime reports whether amounts in the unit may be written in parts, "1 h 30 min".
func (u Unit) isTime() bool {
	d := u.Dimension()
	return d == Duration || d == Calendar
}

// onCalendar returns the calendar's day or week for that of the clock.
func (u Unit) onCalendar() (Unit, bool) {
	switch u {
	case Day:
		return CalendarDay, true
	case Week:
		return CalendarWeek, true
	}
	return Bare, false
}

// onClock is the inverse of onCalendar.
func (u Unit) onClock() (Unit, bool) {
	switch u {
	case CalendarDay:
		return Day, true
	case CalendarWeek:
		return Week, true
	}
	return Bare, false
}

// converts reports whether an amount in u is one in other by arithmetic alone.
// Months are not a number of days, so the calendar has two such families.
func (u Unit) converts(other Unit) bool {
	if u.Dimension() != other.Dimension() || u == Bare {
		return false
	}
	return u.Dimension() != Calendar || u.inMonths() == other.inMonths()
}

func (u Unit) inMonths() bool { return u == Month || u == Year }
