package main

import (
	"fmt"
	"runtime"
	"runtime/debug"

	"github.com/alecthomas/kong"
)

// versionFlag says which program this is, and ends it.
type versionFlag bool

// BeforeReset is called before anything else that was asked for is looked at.
func (versionFlag) BeforeReset(app *kong.Kong) error {
	info, known := debug.ReadBuildInfo()
	if !known {
		info = &debug.BuildInfo{}
	}
	fmt.Fprintln(app.Stdout, "baybinder "+versionOf(info)+" "+runtime.GOOS+"/"+runtime.GOARCH)
	app.Exit(exitClean)
	return nil
}

// versionOf is the version that a program was built as; where it was built from
// a checkout, the revision of that.
func versionOf(info *debug.BuildInfo) string {
	version, revision, changed := info.Main.Version, "", ""
	for _, s := range info.Settings {
		switch {
		case s.Key == "vcs.revision":
			revision = s.Value[:min(len(s.Value), 12)]
		case s.Key == "vcs.modified" && s.Value == "true":
			changed = ", changed since"
		}
	}
	if version == "" || version == "(devel)" {
		version = "of no release"
	}
	if revision == "" {
		return version
	}
	return version + " (" + revision + changed + ")"
}
