// Command mutants judges the tests: it changes one place of a package at a time
// and asks whether a test fails.
//
//	go run ./cmd/mutants [-count 20] [-seed 1] [-at REGEXP] [-slow REGEXP] [-then ./PACKAGE,...] ./PACKAGE...
//
// A sample of each package's places is drawn from the seed. A changed file is
// laid over the real one for the one test run (go test -overlay), so the source
// stays as it is. Where some of a package's tests take long, -slow names them:
// only what the others let pass is tried on them. What the package's own tests
// let pass is tried on those of -then, its dependants. A
// change that does not compile is not counted; one that never ends is killed by
// the time limit of its run and counts as noticed.
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
	"regexp"
	"slices"
	"strings"
	"time"
)

func main() {
	count := flag.Int("count", 20, "how many changes of each package")
	seed := flag.Uint64("seed", 1, "of the sample")
	limit := flag.Duration("limit", 10*time.Minute, "the longest time of one test run")
	at := flag.String("at", "", "only places whose FILE:LINE it matches")
	slow := flag.String("slow", "", "tests that run after the others, as go test -skip has it")
	then := flag.String("then", "", "packages whose tests try what the package's own let pass, parted by commas")
	flag.Parse()
	if flag.NArg() == 0 {
		fmt.Fprintln(os.Stderr, "mutants: which packages?")
		os.Exit(2)
	}
	r := run{limit: limit.String(), slow: *slow, then: strings.FieldsFunc(*then, func(c rune) bool { return c == ',' })}
	var err error
	if r.at, err = regexp.Compile(*at); err != nil {
		fmt.Fprintln(os.Stderr, "mutants:", err)
		os.Exit(2)
	}
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
	limit, slow    string
	then           []string
	at             *regexp.Regexp
	tried, noticed int
}

// judge tries a sample of a package's mutants and prints those that no test
// noticed, and the share of the others.
func (r *run) judge(folder string, count int, random *rand.Rand) error {
	all, err := sites(folder)
	if err != nil {
		return err
	}
	all = slices.DeleteFunc(all, func(m mutant) bool { return !r.at.MatchString(m.place()) })
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
		fmt.Printf("%s: nobody notices %q for %q\n", all[i].place(), all[i].text, all[i].was)
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
	tests := filepath.Join(work, "tests")
	// Without the tables of a debugger it is linked in half the time.
	if err := exec.Command("go", "test", "-c", "-overlay", overlay, "-vet=off", "-ldflags=-s -w", "-o", tests, folder).Run(); err != nil {
		return broken, exits(err)
	}
	for _, which := range r.turns() {
		own := exec.Command(tests, "-test.failfast", "-test.timeout="+r.limit, which)
		own.Dir = folder
		if err := own.Run(); err != nil {
			return seen, exits(err)
		}
	}
	for _, other := range r.then {
		if err := exec.Command("go", "test", "-overlay", overlay, "-vet=off", "-failfast", "-count=1", "-timeout="+r.limit, other).Run(); err != nil {
			return seen, exits(err)
		}
	}
	return unknown, nil
}

// turns say which of the package's tests run together, one turn after the other.
func (r *run) turns() []string {
	if r.slow == "" {
		return []string{"-test.run="}
	}
	return []string{"-test.skip=" + r.slow, "-test.run=" + r.slow}
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
