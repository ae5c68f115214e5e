package main

import (
	"time"

	"github.com/schollz/progressbar/v3"
)

// patience is how long work may take before somebody who watches is shown how
// far it is.
const patience = time.Second

// bar shows on a terminal how far work is that takes longer than a second, and
// takes it away when it is done. Elsewhere it is nil: a log needs no bar.
func (d *output) bar(of string) func(done, all int) {
	if !d.terminal {
		return nil
	}
	begun := time.Now()
	var shown *progressbar.ProgressBar
	return func(done, all int) {
		if shown == nil && time.Since(begun) < patience {
			return
		}
		if shown == nil {
			shown = progressbar.NewOptions(all,
				progressbar.OptionSetWriter(d.err), progressbar.OptionSetDescription(of), progressbar.OptionShowCount(),
				progressbar.OptionSetPredictTime(false), progressbar.OptionThrottle(patience/10), progressbar.OptionClearOnFinish())
		}
		_ = shown.Set(done) // a terminal that takes no more is not missed
	}
}
