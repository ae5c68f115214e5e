package procedure

import (
	"testing"

	"baybinder/generator/show/jobs"
	"baybinder/generator/show/page"
	"baybinder/generator/show/page/pagetest"
)

// siteOf makes the pages' values of a manual that is written as texts.
func siteOf(t *testing.T, files map[string]string) *Pages {
	t.Helper()
	m, walks := pagetest.Manual(t, files)
	return Of(jobs.Of(page.NewSite(m, walks, nil, pagetest.Day, false)))
}

// recordedSite makes them of a procedure and records of it.
func recordedSite(t *testing.T, records map[string]string) *Pages {
	t.Helper()
	return siteOf(t, pagetest.Recorded(records))
}
