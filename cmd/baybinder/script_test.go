package main

import (
	"fmt"
	"io"
	"net/http"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"

	"baybinder/generator/base/needed"
	"baybinder/generator/base/parallel"
)

// TestMain lets the scripts run the program as a command of its own. faulty is
// the program with a fault in it, faulty-within with one in what is done at
// once.
func TestMain(m *testing.M) {
	testscript.Main(ending{m}, map[string]func(){
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

// ending ends the browser when all tests have ended.
type ending struct{ *testing.M }

func (m ending) Run() int {
	defer func() { chromiumEnds() }()
	return m.M.Run()
}

// TestScripts meets every command as a user does: what is typed, what is said
// where, how it ends, what stands in the folders afterwards.
func TestScripts(t *testing.T) {
	t.Parallel()
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
			"serve": serve,
			"quit":  quit,
		},
	})
}

// setup gives each script room for the servers that it starts.
func setup(env *testscript.Env) error {
	env.Setenv("XDG_CACHE_HOME", filepath.Join(env.WorkDir, ".cache"))
	env.Values["servers"] = map[string]*running{}
	return nil
}

// serve starts a command that serves: "serve NAME COMMAND [ARGUMENT...]". It
// goes on once the command said where, which is in $URL, with $PORT.
func serve(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: serve NAME COMMAND [ARGUMENT...]")
	}
	self, err := os.Executable()
	ts.Check(err)
	cmd := exec.Command(self)
	cmd.Args, cmd.Dir, cmd.Env = args[1:], ts.Getenv("WORK"), append(os.Environ(), "TMPDIR="+ts.Getenv("TMPDIR"))
	r, err := begun(cmd)
	ts.Check(err)
	ts.Defer(r.kill)
	if !r.until(func() bool { return r.address() != "" }) {
		ts.Fatalf("it serves nothing: %v %s%s", r.err, &r.out, &r.wrong)
	}
	servers(ts)[args[0]] = r
	at, err := url.Parse(r.address())
	ts.Check(err)
	ts.Setenv("URL", r.address())
	ts.Setenv("PORT", at.Port())
}

func servers(ts *testscript.TestScript) map[string]*running {
	return ts.Value("servers").(map[string]*running)
}

// quit presses Ctrl-C: "quit NAME WORDS". The command ends clean, having said
// the words, and nothing on standard error.
func quit(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 2 {
		ts.Fatalf("usage: quit NAME WORDS")
	}
	r := servers(ts)[args[0]]
	if err := r.interrupt(); err != nil || r.wrong.String() != "" || !strings.Contains(r.out.String(), args[1]) {
		ts.Fatalf("it ended with %v, having said %s%s", err, &r.out, &r.wrong)
	}
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

// fetch asks a server for a page: "fetch 200 URL WORDS".
func fetch(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 3 {
		ts.Fatalf("usage: fetch STATUS URL WORDS")
	}
	status, body := page(ts, args[1])
	if strconv.Itoa(status) != args[0] || !strings.Contains(body, args[2]) {
		ts.Fatalf("got %d %s", status, body)
	}
}

// await asks a server for a page after each thing that it says, until the page
// has the words: "await NAME URL WORDS".
func await(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 3 {
		ts.Fatalf("usage: await NAME URL WORDS")
	}
	if !servers(ts)[args[0]].until(func() bool {
		_, body := page(ts, args[1])
		return strings.Contains(body, args[2])
	}) {
		ts.Fatalf("it ended, and the page never had %q", args[2])
	}
}

func page(ts *testscript.TestScript, url string) (status int, body string) {
	answer, err := http.Get(url)
	ts.Check(err)
	defer answer.Body.Close()
	data, err := io.ReadAll(answer.Body)
	ts.Check(err)
	return answer.StatusCode, string(data)
}
