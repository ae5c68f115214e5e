package main

import (
	"runtime/debug"
	"testing"
)

func TestVersionOf(t *testing.T) {
	checkout := []debug.BuildSetting{{Key: "vcs.revision", Value: "0123456789abcdef"}, {Key: "vcs.modified", Value: "true"}}
	for want, info := range map[string]debug.BuildInfo{
		"of no release":         {},
		"v1.2.3":                {Main: debug.Module{Version: "v1.2.3"}},
		"v1.2.3 (0123456789ab)": {Main: debug.Module{Version: "v1.2.3"}, Settings: checkout[:1]},
		"of no release (0123456789ab, changed since)": {Main: debug.Module{Version: "(devel)"}, Settings: checkout},
	} {
		if got := versionOf(&info); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}
