//go:build unix

// Command pairs measures the program beside the floor: what no build can leave
// out. Each is a process of its own, they take turns, and processor time counts,
// so that the answer is a ratio that a busy or another machine changes little.
//
//	go run ./cmd/pairs -procedures 1000 -runs 5
package main

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"syscall"
	"time"

	"baybinder/generator/bigmanual"
)

func main() {
	procedures := flag.Int("procedures", 1000, "how many procedures the manual has")
	runs := flag.Int("runs", 5, "how often each is measured")
	in := flag.String("in", memory(), "the folder in which manual and sites are written: best one in memory")
	issued := flag.Bool("issued", false, "issue all procedures first: then what is built is a preview")
	floor := flag.Bool("floor", false, "be the floor, from the manual and the site that are named to a third folder")
	flag.Parse()
	err := error(nil)
	if *floor {
		err = bigmanual.Floor(flag.Arg(0), flag.Arg(1), flag.Arg(2))
	} else {
		err = measure(*in, *procedures, *runs, *issued)
	}
	if err != nil {
		fmt.Fprintln(os.Stderr, "pairs:", err)
		os.Exit(1)
	}
}

// memory is a folder in memory, or that for all that is temporary.
func memory() string {
	if info, err := os.Stat("/dev/shm"); err == nil && info.IsDir() {
		return "/dev/shm"
	}
	return os.TempDir()
}

// bench is where one measurement works.
type bench struct {
	top, program, manual, site string
	today                      time.Time
	edits                      int
	issued                     bool
}

// what is measured, in turns; before is done first and not measured.
type what struct {
	name   string
	before func() error
	args   []string
}

func measure(in string, procedures, runs int, issued bool) (err error) {
	top, err := os.MkdirTemp(in, "pairs")
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, os.RemoveAll(top)) }()
	b := &bench{top, filepath.Join(top, "baybinder"), filepath.Join(top, "manual"), filepath.Join(top, "site"), time.Date(2026, 5, 4, 0, 0, 0, 0, time.UTC), 0, issued}
	if out, err := exec.Command("go", "build", "-o", b.program, "./cmd/baybinder").CombinedOutput(); err != nil {
		return fmt.Errorf("the program cannot be built: %w: %s", err, out)
	}
	if err := bigmanual.Write(b.manual, procedures, 1); err != nil {
		return err
	}
	if issued {
		if _, _, err := b.run([]string{b.program, "issue", "--all", "--reason", "First.", "--readers", "tell", "--yes"}); err != nil {
			return err
		}
	}
	machine(in, procedures, runs)
	return b.turns(runs)
}

func (b *bench) turns(runs int) error {
	self, err := os.Executable()
	if err != nil {
		return err
	}
	floor := filepath.Join(b.top, "floor")
	build, check := []string{b.program, "build", "--to", b.site}, []string{b.program, "check"}
	if b.issued {
		build = append(build, "--preview")
	}
	none := func() error { return nil }
	nothing := func() error {
		return errors.Join(os.RemoveAll(b.site), os.RemoveAll(floor), os.RemoveAll(filepath.Join(b.top, "cache")))
	}
	all := []what{
		{"build from nothing", nothing, build},
		{"the same again", none, build},
		{"words of one changed", b.words, build},
		{"effects of one changed", b.effects, build},
		{"one tool changed", b.register, build},
		{"another day", b.nextDay, build},
		{"check, the same", b.checked, check},
		{"  words of one changed", b.words, check},
		{"  effects of one changed", b.effects, check},
		{"  one tool changed", b.register, check},
		{"  another day", b.nextDay, check},
		{"check --fresh", none, append(check, "--fresh")},
		{"floor", none, []string{self, "-floor", b.manual, b.site, floor}},
	}
	seconds, peak := make([][]float64, len(all)), make([]int64, len(all))
	for range runs {
		for i, w := range all {
			if err := w.before(); err != nil {
				return err
			}
			took, most, err := b.run(w.args)
			if err != nil {
				return fmt.Errorf("%s: %w", w.name, err)
			}
			seconds[i], peak[i] = append(seconds[i], took), max(peak[i], most)
		}
	}
	last := seconds[len(all)-1]
	fmt.Printf("%-24s %8s  %-16s %9s %9s\n", "", "x floor", "from to", "s median", "peak MiB")
	for i, w := range all {
		ratios := make([]float64, runs)
		for k := range ratios {
			ratios[k] = seconds[i][k] / last[k]
		}
		fmt.Printf("%-24s %8.2f  %-16s %9.2f %9d\n", w.name, median(ratios), fmt.Sprintf("%.2f to %.2f", slices.Min(ratios), slices.Max(ratios)), median(seconds[i]), peak[i]>>20)
	}
	return nil
}

// words changes the words of one procedure, effects what one does: a time in it,
// and the order of two acts.
func (b *bench) words() error {
	return b.edit("procedures/*/*.md", "it is dry, and", "it is dry, clean and")
}

func (b *bench) effects() error {
	return errors.Join(b.edit("procedures/*/*.md", "(time:2min)", "(time:4min)"),
		b.edit("procedures/*/*.md", "[Take the lid off](remove:lid) with", "[Take the lid off](remove:lid) and look at it, with"))
}

// register changes where one tool is kept.
func (b *bench) register() error {
	return b.edit("register/tools.yaml", "kind: other, kept: \"shelf", "kind: other, kept: \"high shelf")
}

// edit puts a text in place of another in the file in the middle of some.
func (b *bench) edit(pattern, old, fresh string) error {
	files, err := filepath.Glob(filepath.Join(b.manual, filepath.FromSlash(pattern)))
	if err != nil || len(files) == 0 {
		return fmt.Errorf("there is no %s: %w", pattern, err)
	}
	b.edits++
	name := files[(len(files)/2+37*b.edits)%len(files)]
	data, err := os.ReadFile(name)
	if err != nil {
		return err
	}
	changed := bytes.Replace(data, []byte(old), []byte(fresh), 1)
	if bytes.Equal(changed, data) {
		return fmt.Errorf("%s has no %q", name, old)
	}
	return os.WriteFile(name, changed, 0o644)
}

// nextDay is the day after the last.
func (b *bench) nextDay() error {
	b.today = b.today.AddDate(0, 0, 1)
	return nil
}

// checked checks what stands, so that a check of the same can follow.
func (b *bench) checked() error {
	_, _, err := b.run([]string{b.program, "check"})
	return err
}

// run runs a command: its processor time in seconds, and its peak in bytes.
func (b *bench) run(args []string) (seconds float64, peak int64, err error) {
	if args[0] == b.program {
		args = append(slices.Clip(args), "--manual", b.manual, "--today", b.today.Format(time.DateOnly))
	}
	c := exec.Command(args[0], args[1:]...)
	c.Env = append(os.Environ(), "XDG_CACHE_HOME="+filepath.Join(b.top, "cache"))
	if out, err := c.CombinedOutput(); err != nil && !(b.issued && c.ProcessState.ExitCode() == 1) { // there is an error where something is not issued
		return 0, 0, fmt.Errorf("%w: %s", err, out)
	}
	used := c.ProcessState.SysUsage().(*syscall.Rusage)
	peak = int64(used.Maxrss)
	if runtime.GOOS == "linux" {
		peak <<= 10 // it counts in KiB
	}
	return (c.ProcessState.UserTime() + c.ProcessState.SystemTime()).Seconds(), peak, nil
}

func median(list []float64) float64 {
	list = slices.Sorted(slices.Values(list))
	return (list[(len(list)-1)/2] + list[len(list)/2]) / 2
}

// machine says on what this is measured.
func machine(in string, procedures, runs int) {
	model := runtime.GOARCH
	if data, err := os.ReadFile("/proc/cpuinfo"); err == nil {
		for line := range strings.Lines(string(data)) {
			if key, value, is := strings.Cut(line, ":"); is && strings.TrimSpace(key) == "model name" {
				model = strings.TrimSpace(value)
				break
			}
		}
	}
	fmt.Printf("%s, %s, %d processors, %s, in %s, %s\n", time.Now().Format(time.DateOnly), model, runtime.NumCPU(), runtime.Version(), in, runtime.GOOS)
	fmt.Printf("%d procedures, %d runs in turns, processor time\n", procedures, runs)
}
