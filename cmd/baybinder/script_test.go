package main

import (
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/rogpeppe/go-internal/testscript"

	"baybinder/generator/base/needed"
	"baybinder/generator/base/parallel"
)

// TestMain lets the scripts run the program as a command of its own. faulty is
// the program with a fault in it, faulty-within with one in what is done at
// once.
func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){
		"baybinder": main,
		"faulty":    func() { os.Exit(guarded(os.Stderr, func() int { panic("a fault for the test") })) },
		"faulty-within": func() {
			os.Exit(guarded(os.Stderr, func() int {
				parallel.Each(100, func(int) { panic("a fault for the test") })
				return exitClean
			}))
		},
	})
}

// TestScripts meets every command as a user does: what is typed, what is said
// where, how it ends, what stands in the folders afterwards.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:                 "testdata/script",
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		Setup:               setup,
		Condition:           condition,
		Cmds: map[string]func(*testscript.TestScript, bool, []string){
			"ends":  ends,
			"fetch": fetch,
			"await": await,
		},
	})
}

// setup gives each script a port that is free.
func setup(env *testscript.Env) error {
	listener, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		return err
	}
	_, port, _ := net.SplitHostPort(listener.Addr().String())
	env.Setenv("PORT", port)
	return listener.Close()
}

func condition(name string) (bool, error) {
	switch name {
	case "ci":
		return needed.InCI(), nil // a judge that is missing fails
	case "root":
		return os.Geteuid() == 0, nil // root may read everything
	}
	return false, fmt.Errorf("there is no condition %s", name)
}

// ends runs a command and asks how it ends: "ends 2 baybinder check". What it
// says is there for stdout and stderr.
func ends(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: ends CODE COMMAND [ARGUMENT...]")
	}
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	err = ts.Exec(args[1], args[2:]...)
	got := 0
	if exit, is := err.(interface{ ExitCode() int }); is {
		got = exit.ExitCode()
	} else if err != nil {
		ts.Fatalf("%v", err)
	}
	if got != want {
		ts.Fatalf("it ended with %d, want %d", got, want)
	}
}

// fetch asks a server for a page: "fetch 200 URL WORDS". It waits for the
// server to come up.
func fetch(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 3 {
		ts.Fatalf("usage: fetch STATUS URL WORDS")
	}
	for try := 0; ; try++ {
		answer, err := http.Get(args[1])
		if err != nil && try < 200 {
			time.Sleep(50 * time.Millisecond)
			continue
		}
		ts.Check(err)
		defer answer.Body.Close()
		body, err := io.ReadAll(answer.Body)
		ts.Check(err)
		if strconv.Itoa(answer.StatusCode) != args[0] || !strings.Contains(string(body), args[2]) {
			ts.Fatalf("got %d %s", answer.StatusCode, body)
		}
		return
	}
}

// await asks for a page until it has the words: "await URL WORDS".
func await(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 2 {
		ts.Fatalf("usage: await URL WORDS")
	}
	body := ""
	for range 200 {
		body = page(ts, args[0])
		if strings.Contains(body, args[1]) {
			return
		}
		time.Sleep(50 * time.Millisecond)
	}
	ts.Fatalf("it never came; the page is %s", body)
}

func page(ts *testscript.TestScript, url string) string {
	answer, err := http.Get(url)
	ts.Check(err)
	defer answer.Body.Close()
	body, err := io.ReadAll(answer.Body)
	ts.Check(err)
	return string(body)
}
