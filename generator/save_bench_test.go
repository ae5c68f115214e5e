package generator_test

import (
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"baybinder/generator"
	"baybinder/generator/bigmanual"
)

// What watch does after a file was saved, from the first byte read to the site
// put in place; the 20 ms that it waits for an editor to end come on top. Run
// it with
//
//	go test ./generator -run '^$' -bench Save -benchtime 3x
func BenchmarkSave(b *testing.B) {
	for _, n := range []int{1000, 10000} {
		b.Run(fmt.Sprint(n), func(b *testing.B) { benchmarkSave(b, n) })
	}
}

func benchmarkSave(b *testing.B, n int) {
	from, to := b.TempDir(), filepath.Join(b.TempDir(), "site")
	if err := bigmanual.Write(from, n, 1); err != nil {
		b.Fatal(err)
	}
	files, err := filepath.Glob(filepath.Join(from, "procedures", "*", "*.md"))
	if err != nil || len(files) == 0 {
		b.Fatalf("no procedures: %v", err)
	}
	o := generator.Options{Manual: from, To: to, Today: demoDay, Preview: true}
	save := func(i int) {
		name := files[i%len(files)]
		old, err := os.ReadFile(name)
		if err == nil {
			err = os.WriteFile(name, append(old, fmt.Sprintf("\nSaved for the %d. time.\n", i)...), 0o644)
		}
		if err != nil {
			b.Fatal(err)
		}
	}
	i := 0
	for b.Loop() {
		save(i)
		i++
		if r, err := generator.Build(o); err != nil || r.Errors() > 0 {
			b.Fatalf("%d errors: %v", r.Errors(), err)
		}
	}
}
