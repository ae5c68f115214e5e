package main

import (
	"context"
	"io"
	"os"
	"time"

	"baybinder/generator"
	"baybinder/generator/command/editor"
)

type serveEditorCommand struct{}

// Help is the longer text of serve-editor --help.
func (*serveEditorCommand) Help() string {
	return "An editor starts it and speaks with it over standard input and output, in the Language Server Protocol; README.md says how it is set up. " +
		"It shows findings as you type, offers what can be written next and what an address can name, goes to what is named, renames, and mends what needs no judgement. " +
		"It writes nothing: the editor does. The manual is the folder that the editor has open, or content/ in it, where there is a shop.yaml; else --manual."
}

// Run answers one editor until it ends.
func (*serveEditorCommand) Run(g *globals, _ *output) error {
	o := g.options()
	return editor.Serve(context.Background(), stdio{os.Stdin, os.Stdout}, editor.Options{
		Folder: g.Manual, Quiet: 200 * time.Millisecond,
		Open: func(folder string) editor.Manual {
			o := o
			o.Manual = folder
			return generator.NewWriting(o)
		},
	})
}

// stdio is standard input and output as one.
type stdio struct {
	io.ReadCloser
	io.Writer
}
