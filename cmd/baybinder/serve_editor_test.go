package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"baybinder/generator/base/needed"
)

// barelyBegun is a manual in which a writer begins a job: the shop of the
// editor's tests, whose values are all invented. It is in a folder of the test's
// own, which is given.
func barelyBegun(t *testing.T) string {
	t.Helper()
	dir, err := filepath.EvalSymlinks(t.TempDir())
	do(t, err)
	do(t, os.CopyFS(dir, os.DirFS(filepath.Join("..", "..", "generator", "command", "editor", "testdata", "shop"))))
	do(t, os.Mkdir(filepath.Join(dir, "procedures"), 0o755))
	job := "---\ntitle: Job\nfor: rig\n---\n\n## Make safe\n\n1. Tell the foreman.\n\n## Strip\n\n1. Clean the seat.\n\n## Refit\n\n1. Sweep the floor.\n"
	do(t, os.WriteFile(filepath.Join(dir, "procedures", "job.md"), []byte(job), 0o644))
	return dir
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
	dir := barelyBegun(t)
	said, err := exec.Command("node", filepath.Join("testdata", "editor", "session.cjs"), library, self, dir).CombinedOutput()
	if err != nil || !strings.Contains(string(said), "whole session done") {
		t.Fatalf("%v\n%s", err, said)
	}
}

// The same in a real editor, with the settings that the README gives for it.
// What it saved in the end, check reads without a finding.
func TestAWritingSessionInNeovim(t *testing.T) {
	t.Parallel()
	editor, err := exec.LookPath("nvim")
	needed.Judge(t, err == nil, "Neovim")
	dir := barelyBegun(t)
	self, err := os.Executable()
	do(t, err)
	bin, home := t.TempDir(), t.TempDir()
	do(t, os.Symlink(self, filepath.Join(bin, "baybinder")))
	do(t, os.WriteFile(filepath.Join(home, "init.lua"), []byte(settingsFor(t, "Neovim 0.7")), 0o644))
	session, err := filepath.Abs(filepath.Join("testdata", "editor", "session.lua"))
	do(t, err)
	cmd := exec.Command(editor, "--headless", "-n", "-i", "NONE", "-u", filepath.Join(home, "init.lua"), "--cmd", "luafile "+session, "procedures/job.md")
	cmd.Dir = dir
	cmd.Env = append(os.Environ(), "PATH="+bin+string(os.PathListSeparator)+os.Getenv("PATH"), "HOME="+home, "XDG_CONFIG_HOME="+home, "XDG_DATA_HOME="+home, "XDG_CACHE_HOME="+home, "XDG_STATE_HOME="+home)
	said, err := cmd.CombinedOutput()
	if err != nil || !strings.Contains(string(said), "whole session done") {
		t.Fatalf("%v\n%s", err, said)
	}
	check := program(t, dir, "check", "--manual", ".", "--today", "2026-05-04")
	if said, err := check.CombinedOutput(); err != nil {
		t.Errorf("%v\n%s", err, said)
	}
}

// settingsFor are the settings for an editor as the README gives them.
func settingsFor(t *testing.T, editor string) string {
	t.Helper()
	readme, err := os.ReadFile(filepath.Join("..", "..", "README.md"))
	do(t, err)
	_, rest, _ := strings.Cut(string(readme), "\n"+editor)
	_, rest, _ = strings.Cut(rest, "\n\n")
	var lines []string
	for line := range strings.Lines(rest) {
		if !strings.HasPrefix(line, "    ") {
			break
		}
		lines = append(lines, strings.TrimPrefix(line, "    "))
	}
	if len(lines) == 0 {
		t.Fatalf("the README has no settings for %s", editor)
	}
	return strings.Join(lines, "")
}
