// Command mutants judges the tests: it changes one place of a package at a time
// and asks whether a test fails.
//
//	go run ./cmd/mutants [-count 20] [-seed 1] [-then ./PACKAGE,...] ./PACKAGE...
//
// A sample of each package's places is drawn from the seed. A changed file is
// laid over the real one for the one test run (go test -overlay), so the source
// stays as it is. What the package's own tests let pass is tried on those of
// -then, its dependants. A change that does not compile is not counted; one that
// never ends is killed by the time limit of its run and counts as noticed.
package main

import (
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

func main() {
	count := flag.Int("count", 20, "how many changes of each package")
	seed := flag.Uint64("seed", 1, "of the sample")
	limit := flag.Duration("limit", 0, "the longest time of one test run; 0: ten minutes, as go test has it")
	then := flag.String("then", "", "packages whose tests try what the package's own let pass, parted by commas")
	flag.Parse()
	if flag.NArg() == 0 {
		fmt.Fprintln(os.Stderr, "mutants: which packages?")
		os.Exit(2)
	}
	r := run{limit: limit.String(), then: strings.FieldsFunc(*then, func(c rune) bool { return c == ',' })}
	for _, folder := range flag.Args() {
		if err := r.judge(folder, *count, rand.New(rand.NewPCG(*seed, 0))); err != nil {
			fmt.Fprintln(os.Stderr, "mutants:", err)
			os.Exit(1)
		}
	}
	fmt.Printf("in all: %d of %d noticed\n", r.noticed, r.tried)
}

// run is what all packages of one call have in common.
type run struct {
	limit          string
	then           []string
	tried, noticed int
}

// judge tries a sample of a package's mutants and prints those that no test
// noticed, and the share of the others.
func (r *run) judge(folder string, count int, random *rand.Rand) error {
	all, err := sites(folder)
	if err != nil {
		return err
	}
	tried, noticed := 0, 0
	for _, i := range random.Perm(len(all)) {
		if tried == count {
			break
		}
		fate, err := r.try(folder, all[i])
		if err != nil {
			return err
		}
		if fate == broken {
			continue
		}
		tried++
		if fate == seen {
			noticed++
			continue
		}
		fmt.Printf("%s:%d: nobody notices %q for %q\n", all[i].file, all[i].line, all[i].text, all[i].was)
	}
	r.tried, r.noticed = r.tried+tried, r.noticed+noticed
	fmt.Printf("%s: %d of %d noticed, of %d places\n", folder, noticed, tried, len(all))
	return nil
}

// fate is what became of a mutant.
type fate int

const (
	broken  fate = iota // it does not compile
	seen                // a test fails
	unknown             // no test fails
)

// try runs the package's tests with the mutant laid over, then its dependants'.
func (r *run) try(folder string, m mutant) (fate, error) {
	work, err := os.MkdirTemp("", "mutants")
	if err != nil {
		return broken, err
	}
	defer os.RemoveAll(work)
	overlay, err := m.overlay(work)
	if err != nil {
		return broken, err
	}
	if err := exec.Command("go", "build", "-overlay", overlay, folder).Run(); err != nil {
		return broken, exits(err)
	}
	for _, tests := range append([]string{folder}, r.then...) {
		args := []string{"test", "-overlay", overlay, "-vet=off", "-failfast", "-count=1"}
		if r.limit != "0s" {
			args = append(args, "-timeout", r.limit)
		}
		if err := exec.Command("go", append(args, tests)...).Run(); err != nil {
			return seen, exits(err)
		}
	}
	return unknown, nil
}

// exits passes on an error that is none of the command's own.
func exits(err error) error {
	var code *exec.ExitError
	if errors.As(err, &code) {
		return nil
	}
	return err
}

// overlay writes the changed file and the list that lays it over the real one.
func (m mutant) overlay(work string) (string, error) {
	text, err := os.ReadFile(m.file)
	if err != nil {
		return "", err
	}
	changed := filepath.Join(work, filepath.Base(m.file))
	if err := os.WriteFile(changed, m.apply(text), 0o600); err != nil {
		return "", err
	}
	real, err := filepath.Abs(m.file)
	if err != nil {
		return "", err
	}
	list, err := json.Marshal(map[string]map[string]string{"Replace": {real: changed}})
	if err != nil {
		return "", err
	}
	name := filepath.Join(work, "overlay.json")
	return name, os.WriteFile(name, list, 0o600)
}
