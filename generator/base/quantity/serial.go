package quantity

// maxSerial is the most digits of a serial number.
const maxSerial = 9

// ParseSerials reads the serial numbers "101 to 130", or one number, which is
// then both ends. Serial numbers are whole and have no leading zero. The error
// is an *Error.
func ParseSerials(text string) (from, to int, err error) {
	r := reader{text: text, want: Count}
	from, to, f := r.serials()
	if !f.bad() {
		f = r.end()
	}
	if f.bad() {
		return 0, 0, r.fail(f, serialNumbers)
	}
	return from, to, nil
}

func (r *reader) serials() (from, to int, f fault) {
	r.spaces()
	start := r.at
	if from, f = r.serial(); f.bad() {
		return 0, 0, f
	}
	mark := r.at
	if r.joiner() != Between {
		r.at = mark
		return from, from, fault{}
	}
	if to, f = r.serial(); f.bad() {
		return 0, 0, f
	}
	if from > to {
		return 0, 0, fault{kind: OutOfOrder, cause: runsDown, from: start, to: r.at}
	}
	return from, to, fault{}
}

// serial reads one number.
func (r *reader) serial() (int, fault) {
	r.spaces()
	start := r.at
	n, f := r.number()
	if f.bad() {
		return 0, f
	}
	if n.decimals > 0 {
		return 0, fault{kind: BadNumber, cause: notWhole, from: start, to: r.at}
	}
	if r.at-start > maxSerial {
		return 0, fault{kind: BadNumber, cause: serialTooLong, from: start, to: r.at}
	}
	return int(n.value), fault{}
}
