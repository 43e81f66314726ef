package main

import (
	"os"
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
		Setup: func(e *testscript.Env) error {
			e.Setenv("LIBRARY", library+"/../../../worksheets/library")
			return nil
		},
	})
}
