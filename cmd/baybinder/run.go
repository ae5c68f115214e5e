package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path"
	"runtime"
	"strings"

	"github.com/alecthomas/kong"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/parallel"
)

// How the program ends.
const (
	exitClean    = 0 // no error
	exitErrors   = 1 // the manual has errors
	exitCouldNot = 2 // it could not run
)

// errFound is the end of a command that found errors in the manual, and has
// told of them.
var errFound = errors.New("the manual has errors")

const about = `The shop's ring binder that checks itself: a folder of your own procedures becomes a manual to read at the bay.

To see one, run these three:

    baybinder begin      writes a small manual into content/, to change into yours
    baybinder build      checks it and writes its site into public/
    baybinder browse     shows the site to a browser on this machine`

// errNothing is the end of a run that was asked for nothing: the help that it
// prints is no answer.
var errNothing = errors.New("name one of these commands")

// parse reads what was asked for. Where that is help, it is printed and ends
// the program here.
func parse(c *commands, args []string, stdout, stderr io.Writer) (*kong.Context, error) {
	if len(args) == 0 {
		parser, err := newParser(c, stderr, stderr, func(int) {})
		if err == nil {
			_, _ = parser.Parse([]string{"--help"})
		}
		return nil, errors.Join(err, errNothing)
	}
	parser, err := newParser(c, stdout, stderr, os.Exit)
	if err != nil {
		return nil, err
	}
	return parser.Parse(args)
}

func newParser(c *commands, stdout, stderr io.Writer, exit func(int)) (*kong.Kong, error) {
	return kong.New(c,
		kong.Name("baybinder"),
		kong.Description(about),
		kong.ConfigureHelp(kong.HelpOptions{
			Compact: true, FlagsLast: true, NoExpandSubcommands: true, NoAppDescFormat: true, WrapUpperBound: 100,
		}),
		kong.Writers(stdout, stderr),
		kong.Exit(exit),
	)
}

// ended turns the end of a command into the program's.
func (d *output) ended(err error) int {
	switch {
	case err == nil:
		return exitClean
	case errors.Is(err, errFound):
		return exitErrors
	}
	return d.failed(err)
}

// wrong is what an error says, in the language that the command speaks.
func (d *output) wrong(err error) string { return told(d.tongue(), finding.Told(err)) }

// failed tells why a command ended early, in the language that it spoke.
func (d *output) failed(err error) int {
	fmt.Fprintf(d.err, "baybinder: %s\n", lines(d.wrong(err)))
	var usage *kong.ParseError
	if errors.As(err, &usage) {
		d.note("Run \"%s --help\".", usageOf(usage))
	}
	return exitCouldNot
}

// usageOf is the command whose help tells what was wrong.
func usageOf(bad *kong.ParseError) string {
	if bad.Context != nil && bad.Context.Selected() != nil {
		return bad.Context.Selected().FullPath()
	}
	return "baybinder"
}

// guarded runs the program. A fault of the program's own ends it with a plain
// message: a page of stack helps nobody at a shop's PC.
func guarded(stderr io.Writer, program func() int) (code int) {
	defer func() {
		if fault := recover(); fault != nil {
			fmt.Fprintf(stderr, "baybinder: this is a fault of the program, not of your manual: %v (%s)\n", fault, faultPlace(fault))
			fmt.Fprintln(stderr, "The site is as it was. Please report these two lines, with the procedure that was being changed.")
			code = exitCouldNot
		}
	}()
	return program()
}

// faultPlace is the nearest of our own functions to a panic; of one in work that
// was done in parallel, where it was there.
func faultPlace(fault any) string {
	callers := make([]uintptr, 64)
	callers = callers[:runtime.Callers(3, callers)]
	if elsewhere, is := fault.(*parallel.Fault); is {
		callers = elsewhere.Callers
	}
	frames := runtime.CallersFrames(callers)
	for {
		frame, more := frames.Next()
		if strings.HasPrefix(frame.Function, "baybinder/") || strings.HasPrefix(frame.Function, "main.") {
			return fmt.Sprintf("%s, %s:%d", frame.Function, path.Base(frame.File), frame.Line)
		}
		if !more {
			return "place unknown"
		}
	}
}
