package main

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"os"
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"

	"baybinder/generator/base/finding"
)

// agreed asks once, on a terminal. Elsewhere nobody can be asked, and the flag
// that answers must be written.
func (d *output) agreed(question, flag string) (bool, error) {
	line, err := d.answer(question+" "+d.inShop("[y/n]"), finding.Say("add %s", flag))
	if err != nil {
		return false, err
	}
	if d.saysYes(line) {
		return true, nil
	}
	d.remark("Nothing was written.")
	return false, nil
}

// saysYes says that an answer is yes, or its first letter, in the shop's language or
// in English.
func (d *output) saysYes(answer string) bool {
	answer = strings.ToLower(strings.TrimRight(answer, ".!"))
	for _, yes := range []string{"yes", d.inShop("yes")} {
		if answer == yes || answer == plain(yes) || answer == plain(yes)[:1] {
			return true
		}
	}
	return false
}

// plain is a word without its accents, as it is typed in haste.
func plain(word string) string {
	return strings.Map(func(r rune) rune {
		if unicode.Is(unicode.Mn, r) {
			return -1
		}
		return r
	}, norm.NFD.String(word))
}

// answer asks for a line, on a terminal. Where nobody answers the error says what
// must be written instead.
func (d *output) answer(question string, instead finding.Words) (string, error) {
	nobody := finding.Refuse("nothing was written: nobody can be asked here, so %s", instead)
	if !isTerminal(os.Stdin) {
		return "", nobody
	}
	fmt.Fprint(d.err, question+" ")
	line, err := bufio.NewReader(os.Stdin).ReadString('\n')
	if line = strings.TrimSpace(line); line == "" && errors.Is(err, io.EOF) {
		fmt.Fprintln(d.err)
		return "", nobody
	}
	return line, nil
}
