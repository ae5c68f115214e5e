package main

import (
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"golang.org/x/term"

	"baybinder/generator"
	"baybinder/generator/base/finding"
	"baybinder/generator/base/kept"
	"baybinder/generator/language"
	"baybinder/generator/model"
)

// globals are the flags of every command.
type globals struct {
	Manual  string      `default:"content" placeholder:"FOLDER" help:"The manual's folder (default: content)."`
	Version versionFlag `help:"Say which program this is."`
	Today   day         `placeholder:"YYYY-MM-DD" help:"The date that dated rules use (default: the machine's)."`
}

// siteFlag is the flag of the commands that write or show the site.
type siteFlag struct {
	To string `default:"public" placeholder:"FOLDER" help:"The site's folder (default: public)."`
}

// freshFlag is the flag of the commands that remember what they worked out.
type freshFlag struct {
	Fresh bool `help:"Work everything out anew, whatever earlier runs worked out."`
}

// kept is what earlier runs worked out, in the user's cache; nothing where there
// is no such folder.
func (f freshFlag) kept() *kept.Store {
	if f.Fresh {
		return nil
	}
	cache, err := os.UserCacheDir()
	if err != nil {
		return nil
	}
	return kept.Here(filepath.Join(cache, "baybinder", "kept"))
}

// day is a date on the command line.
type day struct{ model.Date }

// UnmarshalText reads 2026-03-02.
func (d *day) UnmarshalText(text []byte) error {
	date, ok := model.ParseDate(string(text))
	if !ok {
		return fmt.Errorf("%q is not a day of the calendar: write it as 2026-03-02", text)
	}
	d.Date = date
	return nil
}

// options are what the generator is told.
func (g *globals) options() generator.Options {
	today := g.Today.Date
	if today.IsZero() {
		today = model.DateOf(time.Now())
	}
	return generator.Options{Manual: g.Manual, Today: today}
}

// output is where a command writes.
type output struct {
	out      io.Writer
	err      io.Writer
	terminal bool // err is a terminal: someone watches

	language string // the tag of the shop's, once it is known
}

func newDesk(stdout, stderr io.Writer) *output {
	return &output{out: stdout, err: stderr, terminal: isTerminal(stderr)}
}

// isTerminal says that someone reads, or writes, at the other end.
func isTerminal(w any) bool {
	file, is := w.(*os.File)
	return is && term.IsTerminal(int(file.Fd()))
}

// speaks makes a command tell in the language of a manual's shop. What note and
// say write is the same in all.
func (d *output) speaks(r *generator.Verdict) { d.language = r.Language }

// tongue is that language; English before it is known.
func (d *output) tongue() *finding.Tongue { return &language.Of(d.language).Findings }

// inShop are words of the program in the shop's language, English where that
// lacks some of them.
func (d *output) inShop(format string, args ...any) string {
	return lines(told(d.tongue(), finding.Words{Template: format, Values: printable(args)}))
}

// inform writes a line of the answer in the shop's language.
func (d *output) inform(format string, args ...any) {
	fmt.Fprintln(d.out, finding.OneStop(d.inShop(format, args...)))
}

// remark says in the shop's language what must be known even where nobody
// watches.
func (d *output) remark(format string, args ...any) {
	fmt.Fprintln(d.err, d.inShop(format, args...))
}

// hear says likewise what another package has in words.
func (d *output) hear(w finding.Words) { d.remark("%s", w) }

// progress says in the shop's language how things go, to someone who watches.
func (d *output) progress(format string, args ...any) {
	if d.terminal {
		d.remark(format, args...)
	}
}

// note says what must be known even where nobody watches.
func (d *output) note(format string, args ...any) {
	fmt.Fprintf(d.err, format+"\n", printable(args)...)
}

// say writes a line of the answer.
func (d *output) say(format string, args ...any) {
	fmt.Fprintln(d.out, finding.OneStop(fmt.Sprintf(format, printable(args)...)))
}

// text writes a text of the program's own, of many lines.
func (d *output) text(text string) { fmt.Fprintln(d.out, text) }

// printable are what a line is made of, with every sign made visible that would
// move a terminal's cursor: a name in the manual may hold any.
func printable(args []any) []any {
	out := slices.Clone(args)
	for i, a := range out {
		switch a := a.(type) {
		case string:
			out[i] = finding.Printable(a)
		case error:
			out[i] = lines(a.Error())
		case finding.Words:
			a.Values = printable(a.Values)
			out[i] = a
		case finding.List:
			a.Items = printable(a.Items)
			out[i] = a
		}
	}
	return out
}

// lines is a text whose line ends are meant, with all else made visible.
func lines(text string) string {
	list := strings.Split(text, "\n")
	for i := range list {
		list[i] = finding.Printable(list[i])
	}
	return strings.Join(list, "\n")
}
