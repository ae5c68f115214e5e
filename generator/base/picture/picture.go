// Package picture says which files of pictures/ may be published, and what in a
// drawing would run or fetch something when it is opened by itself.
package picture

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"path"
	"slices"
	"strings"
)

// kinds are the endings of what is published: what a browser shows as a picture,
// plays, prints or saves. What it would run as a page is not among them.
var kinds = []string{
	".svg", ".png", ".jpg", ".jpeg", ".gif", ".webp", ".avif", ".bmp", ".tif", ".tiff",
	".mp4", ".webm", ".mp3", ".ogg", ".wav", ".pdf", ".txt", ".csv",
	".dxf", ".dwg", ".step", ".stp", ".stl", ".zip", ".docx", ".xlsx", ".odt", ".ods",
}

// Folder is where all stands that a site shows besides its pages.
const Folder = "pictures/"

// Inside says that a file of the manual is in the folder of pictures.
func Inside(name string) bool { return strings.HasPrefix(name, Folder) }

// Kind says that a file is of a kind that is published.
func Kind(name string) bool { return slices.Contains(kinds, strings.ToLower(path.Ext(name))) }

// Sum is the first 16 hex digits of the SHA-256 of a picture; of a drawing, which
// is text, with its line ends made LF.
func Sum(name string, data []byte) string {
	if IsSVG(name) {
		data = bytes.ReplaceAll(data, []byte("\r\n"), []byte("\n"))
	}
	sum := sha256.Sum256(data)
	return hex.EncodeToString(sum[:8])
}

// IsSVG says that a file is a drawing whose text has to be looked through.
func IsSVG(name string) bool { return strings.EqualFold(path.Ext(name), ".svg") }
