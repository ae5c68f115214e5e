package check

import (
	"path"
	"slices"
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/read/bind"
)

// runFileNotRead tells of files whose names end in another way than the format's:
// nobody reads them, and nothing would say so.
func runFileNotRead(c *Context) []finding.Finding {
	var found []finding.Finding
	for name := range c.Manual.Files {
		if better := betterName(name); better != "" {
			at := position.NewFile(name, "").At(0, 0)
			found = append(found, bind.UnknownReference.At(at, "this file is not read: its name does not end in %s", path.Ext(better)).
				WithMend("name it %s", path.Base(better)))
		}
	}
	slices.SortFunc(found, func(a, b finding.Finding) int { return strings.Compare(a.At.Path(), b.At.Path()) })
	return found
}

// betterName is the name under which a file would be read, or "".
func betterName(name string) string {
	top, _, deep := strings.Cut(name, "/")
	ext := path.Ext(name)
	stem := strings.TrimSuffix(name, ext)
	switch {
	case !deep && stem == "shop", top == "register", top == "machines", strings.HasPrefix(name, "readings/plans/"):
		if ext == ".yml" || ext == ".YAML" || ext == ".YML" {
			return stem + ".yaml"
		}
	case top == "procedures":
		if slices.Contains([]string{".markdown", ".mdown", ".mkd", ".MD"}, ext) {
			return stem + ".md"
		}
	case top == "records":
		if name = strings.TrimSuffix(name, ".txt"); path.Ext(name) == ".JSON" || path.Ext(name) == ".json" && ext == ".txt" {
			return strings.TrimSuffix(name, path.Ext(name)) + ".json"
		}
	}
	return ""
}
