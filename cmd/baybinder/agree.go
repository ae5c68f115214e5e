package main

import (
	"bufio"
	"fmt"
	"os"
	"strings"
)

// agreed asks once, on a terminal. Elsewhere nobody can be asked, and the flag
// that answers must be written.
func (d *output) agreed(question, flag string) (bool, error) {
	if !isTerminal(os.Stdin) {
		return false, fmt.Errorf("nothing was written: nobody can be asked here, so add %s", flag)
	}
	fmt.Fprintf(d.err, "%s [y/n] ", question)
	line, err := bufio.NewReader(os.Stdin).ReadString('\n')
	switch strings.ToLower(strings.TrimSpace(line)) {
	case "y", "yes":
		return true, nil
	}
	d.note("Nothing was written.")
	if strings.TrimSpace(line) == "" && err != nil {
		return false, err
	}
	return false, nil
}
