package front_test

import (
	"testing"

	"baybinder/generator"
	"baybinder/generator/bigmanual"
	"baybinder/generator/model"
	"baybinder/generator/show/front"
	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page"
)

// BenchmarkReadable times what the table costs the snag list of 1,000
// procedures:
//
//	go test ./generator/show/front -run '^$' -bench Readable -benchtime 20x
func BenchmarkReadable(b *testing.B) {
	from := b.TempDir()
	if err := bigmanual.Write(from, 1000, 1); err != nil {
		b.Fatal(err)
	}
	day, _ := model.ParseDate("2026-05-04")
	r, err := generator.Check(generator.Options{Manual: from, Today: day})
	if err != nil || r.Errors() > 0 {
		b.Fatal(err, r.Errors())
	}
	s := front.Of(jobs.Of(page.NewSite(r.Manual, r.Walks, r.Findings, day, false)))
	for b.Loop() {
		s.Snags(s.SnagPages()[0])
	}
}
