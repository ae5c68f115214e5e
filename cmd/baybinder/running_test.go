package main

import (
	"bytes"
	"os"
	"os/exec"
	"regexp"
	"sync"
)

// running is the program at work. Nothing here waits for a time: what is waited
// for is the next line that it says, or its end.
type running struct {
	cmd        *exec.Cmd
	out, wrong said
	ended      chan struct{}
	err        error // how it ended, once ended is closed
}

// begun starts a command.
func begun(cmd *exec.Cmd) (*running, error) {
	r := &running{cmd: cmd, ended: make(chan struct{})}
	r.out.more = make(chan struct{}, 1)
	cmd.Stdout, cmd.Stderr = &r.out, &r.wrong
	if err := cmd.Start(); err != nil {
		return nil, err
	}
	go func() {
		r.err = cmd.Wait()
		close(r.ended)
	}()
	return r, nil
}

// until asks after each thing that the command says; false where it ends first.
func (r *running) until(is func() bool) bool {
	for !is() {
		select {
		case <-r.out.more:
		case <-r.ended:
			return is()
		}
	}
	return true
}

var servedAt = regexp.MustCompile(`http://\S+/`)

// address is where it serves; "" before it said so.
func (r *running) address() string { return servedAt.FindString(r.out.String()) }

// interrupt is Ctrl-C; the error is how it ended.
func (r *running) interrupt() error {
	if err := r.cmd.Process.Signal(os.Interrupt); err != nil {
		return err
	}
	<-r.ended
	return r.err
}

func (r *running) kill() { _ = r.cmd.Process.Kill() }

// said is what a process says, while it runs. more holds one word when there is
// something new.
type said struct {
	mu   sync.Mutex
	text bytes.Buffer
	more chan struct{}
}

func (s *said) Write(p []byte) (int, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	select {
	case s.more <- struct{}{}:
	default: // a word waits already, or nobody asks
	}
	return s.text.Write(p)
}

func (s *said) String() string {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.text.String()
}
