package page

import (
	"testing"

	"baybinder/generator/show/page/pagetest"
)

// siteOf makes the pages' values of a manual that is written as texts.
func siteOf(t *testing.T, files map[string]string) *Site {
	t.Helper()
	m, walks := pagetest.Manual(t, files)
	return NewSite(m, walks, nil, pagetest.Day, false)
}
