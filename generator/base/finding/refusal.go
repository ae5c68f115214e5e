package finding

import (
	"strings"
)

// Refusal is an error in words of the program: a shop is told it in its own
// language, as it is told its findings.
type Refusal struct {
	says  Words
	under []error
}

// Refuse is an error in words: Refuse("there is no part %s", id). An error among the
// values is told in words where it has some, and can be asked for.
func Refuse(format string, args ...any) error {
	r := &Refusal{says: Words{Template: format, Values: make([]any, len(args))}}
	for i, a := range args {
		r.says.Values[i] = a
		if err, is := a.(error); is {
			r.says.Values[i] = Told(err)
			r.under = append(r.under, err)
		}
	}
	return r
}

// Error is the refusal in English.
func (r *Refusal) Error() string { return r.says.String() }

// Says are its words.
func (r *Refusal) Says() Words { return r.says }

// Unwrap are the errors among its values.
func (r *Refusal) Unwrap() []error { return r.under }

// Told are the words of an error: its own, those of each of several that were
// joined, a line each, or what it says where it has none, as the system's errors.
func Told(err error) Words {
	if says, is := err.(Sayer); is {
		return says.Says()
	}
	joined, is := err.(interface{ Unwrap() []error })
	if !is || err.Error() != lines(joined.Unwrap()) {
		return Words{Template: "%s", Values: []any{err.Error()}}
	}
	var values []any
	for _, one := range joined.Unwrap() {
		values = append(values, Told(one))
	}
	return Words{Template: strings.TrimSuffix(strings.Repeat("%s\n", len(values)), "\n"), Values: values}
}

func lines(list []error) string {
	var out []string
	for _, err := range list {
		out = append(out, err.Error())
	}
	return strings.Join(out, "\n")
}
