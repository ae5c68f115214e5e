//go:build !unix

package editor_test

import "time"

var began = time.Now()

// worked is the time that passed: the processor's is not told here.
func worked() time.Duration { return time.Since(began) }
