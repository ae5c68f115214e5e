package generator_test

import (
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"baybinder/generator"
	"baybinder/generator/bigmanual"
)

// What watch does after a procedure was saved: Save is from the first byte read
// to its page put in place, Follow is the build of everything that comes
// behind it. The 20 ms that watch waits for an editor to end come on top. Run
// them with
//
//	go test ./generator -run '^$' -bench 'Save|Follow' -benchtime 20x
func BenchmarkSave(b *testing.B) {
	eachSize(b, func(b *testing.B, s *generator.Session, save func() string) {
		for b.Loop() {
			name := save()
			if r, saved, err := s.Saved([]string{name}); err != nil || r.Errors() > 0 || len(saved) != 1 {
				b.Fatalf("%d pages, %v", len(saved), err)
			}
		}
	})
}

func BenchmarkFollow(b *testing.B) {
	eachSize(b, func(b *testing.B, s *generator.Session, save func() string) {
		for b.Loop() {
			save()
			if r, err := s.Build(b.Context()); err != nil || r.Errors() > 0 {
				b.Fatalf("%d errors: %v", r.Errors(), err)
			}
		}
	})
}

// eachSize calls run with a session that has built, and with a function that
// saves a procedure and says which.
func eachSize(b *testing.B, run func(b *testing.B, s *generator.Session, save func() string)) {
	for _, n := range []int{1000, 10000} {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			from, to := b.TempDir(), filepath.Join(b.TempDir(), "site")
			if err := bigmanual.Write(from, n, 1); err != nil {
				b.Fatal(err)
			}
			files, err := filepath.Glob(filepath.Join(from, "procedures", "*", "*.md"))
			if err != nil || len(files) == 0 {
				b.Fatalf("no procedures: %v", err)
			}
			s := generator.NewSession(generator.Options{Manual: from, To: to, Today: demoDay, Preview: true})
			if r, err := s.Build(b.Context()); err != nil || r.Errors() > 0 {
				b.Fatalf("%d errors: %v", r.Errors(), err)
			}
			i := 0
			run(b, s, func() string {
				name := files[len(files)/2] // as a writer does: one file, many times
				i++
				old, err := os.ReadFile(name)
				if err == nil {
					err = os.WriteFile(name, append(old, fmt.Sprintf("\nSaved for the %d. time.\n", i)...), 0o644)
				}
				rel, relErr := filepath.Rel(from, name)
				if err != nil || relErr != nil {
					b.Fatal(err, relErr)
				}
				return filepath.ToSlash(rel)
			})
		})
	}
}
