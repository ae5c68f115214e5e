package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"baybinder/generator/base/needed"
)

// barelyBegun is a manual in which a writer begins a job; all its values are
// invented.
var barelyBegun = fstest.MapFS{
	"shop.yaml":             {Data: []byte("title: Shop\n")},
	"register/tools.yaml":   {Data: []byte("socket-13: { name: 13 mm socket, kind: socket, fits: [13 mm] }\n")},
	"register/hazards.yaml": {Data: []byte("shock: { name: live terminals, harm: death, nature: The terminals are live., consequence: A shock can kill., avoid: [Prove dead.], of: power }\n")},
	"register/holds.yaml":   {Data: []byte("seen: { name: the meter, kind: look, what: the meter, good: 0, of: power }\n")},
	"machines/rig.yaml": {Data: []byte(`name: Rig
points:
  plug: { name: plug, lock: yes }
energies:
  power: { name: battery, kind: electric, voltage: 24 V dc, points: [plug] }
parts:
  seat: { name: seat, held-by: { bolt: 4 } }
  lid: { name: lid, under: [seat], guards: [power] }
fasteners:
  bolt: { name: bolt, across-flats: 13 mm }
`)},
	"procedures/job.md": {Data: []byte("---\ntitle: Job\nfor: rig\n---\n\n## Make safe\n\n1. Tell the foreman.\n\n## Strip\n\n1. Clean the seat.\n\n## Refit\n\n1. Sweep the floor.\n")},
}

// Known: SEEN.

// A whole writing session with the protocol library that editors use as the
// client.
func TestAWritingSession(t *testing.T) {
	t.Parallel()
	library, err := filepath.Abs(filepath.Join("..", "..", ".ci", "node_modules", "vscode-languageserver-protocol"))
	do(t, err)
	_, err = os.Stat(library)
	needed.Judge(t, err == nil, "vscode-languageserver-protocol")
	self, err := os.Executable()
	do(t, err)
	dir, err := filepath.EvalSymlinks(t.TempDir())
	do(t, err)
	do(t, os.CopyFS(dir, barelyBegun))
	said, err := exec.Command("node", filepath.Join("testdata", "editor", "session.cjs"), library, self, dir).CombinedOutput()
	if err != nil || !strings.Contains(string(said), "whole session done") {
		t.Fatalf("%v\n%s", err, said)
	}
}
