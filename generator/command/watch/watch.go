// Package watch builds at every change of a manual's folder, and keeps the page that is open in a browser up to date.
//
// What a build is, it is told; it knows folders, time and browsers. The site
// that is published is a build's, byte for byte: the script that refreshes a
// page is added to what is served, and stands in no file.
//
// # Decided where the format is silent
//
// `watch` builds with drafts, as `build --preview` does, 20 ms after the last change and at most
// 500 ms after the first. The saved procedure's page comes first, with what is found in it; what
// calls it, the indexes and the search follow with a full build, so that whatever the first step
// cannot see, the site and the findings end as those of a build from nothing. A build that is at
// work when something is saved is broken off. What did not change keeps its file and its date. A
// served page is told its own state, the hash of its bytes, and is loaded anew only where the
// site's differs; it goes to the first step that reads otherwise. What was closed in the box of
// findings stays closed in that tab until something else is found. Hidden files and the site's own
// folder are no change. The box and its findings speak the shop's language, as of the last
// build. The script that refreshes a page, and the leave for it to ask for news, are added to
// what is served; no file has them.
package watch

import (
	"context"
	"io/fs"
	"maps"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"github.com/fsnotify/fsnotify"

	"baybinder/generator/base/finding"
)

// An editor that saves writes two to five times within a few milliseconds; a
// version-control switch writes for longer. A build begins once it has been
// quiet so long, or after so much at the latest.
const (
	quiet  = 20 * time.Millisecond
	latest = 500 * time.Millisecond
)

// Folder watches a folder with all that is below it.
type Folder struct {
	root    string
	apart   string // a folder below root that is not looked at: the site
	watcher *fsnotify.Watcher
}

// Open begins to watch a folder; what stands in the folder apart is no change.
func Open(root, apart string) (*Folder, error) {
	watcher, err := fsnotify.NewWatcher()
	if err != nil {
		return nil, finding.Refuse("the manual's folder cannot be watched: %s", err)
	}
	if real, err := filepath.EvalSymlinks(root); err == nil {
		root = real // a link is not walked into
	}
	f := &Folder{root: root, watcher: watcher}
	if abs, err := filepath.Abs(apart); err == nil {
		f.apart = abs
	}
	if err := f.add(root); err != nil {
		_ = watcher.Close()
		return nil, finding.Refuse("the manual's folder cannot be watched: %s", err)
	}
	return f, nil
}

// Close ends the watching.
func (f *Folder) Close() error { return f.watcher.Close() }

// Each calls changed after every change, never twice at once, until the
// context ends. Changes during a call lead to another one. The names are paths
// inside the folder; there is none where it is not known what changed.
func (f *Folder) Each(ctx context.Context, changed func(names []string)) {
	soon := time.NewTimer(time.Hour)
	soon.Stop()
	var first time.Time // of the changes that wait for a call
	names, lost := map[string]bool{}, false
	note := func() {
		now := time.Now()
		if first.IsZero() {
			first = now
		}
		soon.Reset(min(quiet, max(0, latest-now.Sub(first))))
	}
	for {
		select {
		case <-ctx.Done():
			return
		case event, open := <-f.watcher.Events:
			if !open {
				return
			}
			if f.counts(event) {
				names[f.inside(event.Name)] = true
				note()
			}
		case <-f.watcher.Errors: // changes were lost: look at everything anew
			_ = f.add(f.root)
			lost = true
			note()
		case <-soon.C:
			known := slices.Sorted(maps.Keys(names))
			if lost {
				known = nil
			}
			first, names, lost = time.Time{}, map[string]bool{}, false
			changed(known)
		}
	}
}

// counts says whether an event is a change of the manual. A new folder is
// watched from now on.
func (f *Folder) counts(event fsnotify.Event) bool {
	if event.Op == fsnotify.Chmod || f.skips(event.Name) {
		return false
	}
	if event.Has(fsnotify.Create) {
		_ = f.add(event.Name) // gone again: its removal is an event too
	}
	return true
}

// inside is a file's path inside the folder.
func (f *Folder) inside(name string) string {
	rel, err := filepath.Rel(f.root, name)
	if err != nil {
		return name
	}
	return filepath.ToSlash(rel)
}

// add watches a folder and those below it. A folder is watched before it is
// listed: what comes into it meanwhile is listed, or is an event.
func (f *Folder) add(folder string) error {
	return filepath.WalkDir(folder, func(name string, d fs.DirEntry, err error) error {
		switch {
		case err != nil && name == f.root:
			return err
		case err != nil || !d.IsDir():
			return nil
		case f.skips(name):
			return fs.SkipDir
		}
		if err := f.watcher.Add(name); err != nil && name == f.root {
			return err
		}
		return nil
	})
}

// skips says that nobody reads a file: hidden ones, and the site's.
func (f *Folder) skips(name string) bool {
	if rel, err := filepath.Rel(f.root, name); err == nil && rel != "." {
		for part := range strings.SplitSeq(filepath.ToSlash(rel), "/") {
			if strings.HasPrefix(part, ".") && part != ".." {
				return true
			}
		}
	}
	abs, err := filepath.Abs(name)
	return err == nil && f.apart != "" && (abs == f.apart || strings.HasPrefix(abs, f.apart+string(filepath.Separator)))
}
