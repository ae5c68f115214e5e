package needed

import "os/exec"

// Browser is the browser that tests open, "" where there is none: of Chromium the
// headless shell, which lays pages out and runs them as the browser does, in three
// quarters of its time, or the browser itself.
func Browser() string {
	for _, name := range []string{"chromium-headless-shell", "chromium"} {
		if path, err := exec.LookPath(name); err == nil {
			return path
		}
	}
	return ""
}
