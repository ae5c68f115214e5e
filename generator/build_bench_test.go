package generator_test

import (
	"bytes"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"runtime/debug"
	"testing"
	"time"

	"github.com/yuin/goldmark"

	"baybinder/generator"
	"baybinder/generator/base/parallel"
	"baybinder/generator/bigmanual"
)

// The benchmarks report the full build as a ratio to the floor of the design:
// reading the same files, bare goldmark over the procedures, and writing the
// same number of files and bytes. Run them with
//
//	go test ./generator -run '^$' -bench Build -benchtime 3x
func BenchmarkBuild(b *testing.B) {
	for _, n := range []int{1000, 10000} {
		b.Run(fmt.Sprint(n), func(b *testing.B) { benchmarkBuild(b, n) })
	}
}

func benchmarkBuild(b *testing.B, n int) {
	asTheProgram(b)
	from, to := b.TempDir(), ""
	if err := bigmanual.Write(from, n, 1); err != nil {
		b.Fatal(err)
	}
	sites := 0
	build := func() { // into a folder of its own: what stands already would not be written again
		sites++
		to = filepath.Join(b.TempDir(), fmt.Sprint("site-", sites))
		r, err := generator.Build(generator.Options{Manual: from, To: to, Today: demoDay})
		if err != nil {
			b.Fatal(err)
		}
		for _, f := range r.Findings {
			b.Fatalf("%s: %s [%s]", f.At.Path(), f.Message, f.Code)
		}
	}
	build()
	names, sizes := written(b, to)
	for b.Loop() {
		build()
	}
	perBuild := b.Elapsed().Seconds() / float64(b.N)
	b.StopTimer()
	start := time.Now()
	for i := range b.N {
		runFloor(b, from, filepath.Join(b.TempDir(), fmt.Sprint("floor-", i)), names, sizes)
	}
	perFloor := time.Since(start).Seconds() / float64(b.N)
	b.ReportMetric(perBuild/perFloor, "x-floor")
	b.ReportMetric(perBuild*1000/float64(n), "ms/procedure")
}

// asTheProgram has garbage collected as late as the program has it.
func asTheProgram(b *testing.B) {
	percent, limit := debug.SetGCPercent(generator.Garbage), debug.SetMemoryLimit(generator.SoftLimit)
	b.Cleanup(func() {
		debug.SetGCPercent(percent)
		debug.SetMemoryLimit(limit)
	})
}

// written lists the files of a site and their sizes.
func written(b *testing.B, site string) (names []string, sizes []int) {
	b.Helper()
	err := filepath.WalkDir(site, func(full string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		info, err := d.Info()
		if err != nil {
			return err
		}
		rel, err := filepath.Rel(site, full)
		names, sizes = append(names, rel), append(sizes, int(info.Size()))
		return err
	})
	if err != nil {
		b.Fatal(err)
	}
	return names, sizes
}

// runFloor does what no build of this manual can leave out, on all processors
// as the build does.
func runFloor(b *testing.B, from, to string, names []string, sizes []int) {
	b.Helper()
	var files []string
	err := filepath.WalkDir(from, func(full string, d fs.DirEntry, err error) error {
		if err == nil && !d.IsDir() {
			files = append(files, full)
		}
		return err
	})
	if err != nil {
		b.Fatal(err)
	}
	failed := make([]error, len(files)+len(names))
	parallel.Each(len(files), func(i int) {
		data, err := os.ReadFile(files[i])
		failed[i] = err
		if filepath.Ext(files[i]) == ".md" {
			var out bytes.Buffer
			failed[i] = goldmark.Convert(data, &out)
		}
	})
	for _, name := range names {
		if err := os.MkdirAll(filepath.Dir(filepath.Join(to, name)), 0o755); err != nil {
			b.Fatal(err)
		}
	}
	filler := bytes.Repeat([]byte("x"), 1<<20)
	parallel.Each(len(names), func(i int) {
		failed[len(files)+i] = os.WriteFile(filepath.Join(to, names[i]), filler[:min(sizes[i], len(filler))], 0o644)
	})
	for _, err := range failed {
		if err != nil {
			b.Fatal(err)
		}
	}
}
