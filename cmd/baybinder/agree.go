package main

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"os"
	"strings"
)

// agreed asks once, on a terminal. Elsewhere nobody can be asked, and the flag
// that answers must be written.
func (d *output) agreed(question, flag string) (bool, error) {
	line, err := d.answer(question+" [y/n]", "add "+flag)
	if err != nil {
		return false, err
	}
	switch strings.ToLower(line) {
	case "y", "yes":
		return true, nil
	}
	d.remark("Nothing was written.")
	return false, nil
}

// answer asks for a line, on a terminal. Where nobody answers the error says what
// must be written instead.
func (d *output) answer(question, instead string) (string, error) {
	nobody := fmt.Errorf("nothing was written: nobody can be asked here, so %s", instead)
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
