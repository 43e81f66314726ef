package main

import (
	"errors"
	"os"
	"os/exec"
	"strconv"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"

	"swanneck/kernel/engine"
)

func TestMain(m *testing.M) {
	engine.WorkerIfAsked(content())
	testscript.Main(m, map[string]func(){"swanneck": func() { os.Exit(command(os.Args[1:])) }})
}

// Each file in testdata/script is a session at the terminal.
func TestScripts(t *testing.T) {
	library, err := os.Getwd()
	if err != nil {
		t.Fatal(err)
	}
	testscript.Run(t, testscript.Params{
		Dir:                 "testdata/script",
		RequireExplicitExec: true,
		Cmds:                map[string]func(*testscript.TestScript, bool, []string){"status": status},
		Setup: func(e *testscript.Env) error {
			e.Setenv("LIBRARY", library+"/../../../worksheets/library")
			return nil
		},
	})
}

// status N COMMAND… runs a command that must end with exit status N.
func status(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: status N command...")
	}
	err := ts.Exec(args[1], args[2:]...)
	got := 0
	var exit *exec.ExitError
	if errors.As(err, &exit) {
		got = exit.ExitCode()
	} else if err != nil {
		ts.Fatalf("%v", err)
	}
	if strconv.Itoa(got) != args[0] {
		ts.Fatalf("exit status %d; want %s", got, args[0])
	}
}
