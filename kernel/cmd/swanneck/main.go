// Command swanneck runs worksheets of distilling math: cells of Go, with strength, density, reduction and the rest of
// the trade's arithmetic built in.
package main

import (
	"errors"
	"fmt"
	"os"

	"github.com/alecthomas/kong"

	"swanneck/kernel/engine"
)

// Exit statuses of every command.
const (
	exitOK     = 0 // all went well
	exitFailed = 1 // a cell did not succeed
	exitUsage  = 2 // the command line or a file handed in cannot be used
	exitOutput = 3 // what came out could not be written, or the worker could not be started
)

type commands struct {
	Run       runCommand       `cmd:"" help:"Run a worksheet and leave the executed notebook and a report."`
	Sweep     sweepCommand     `cmd:"" help:"Run a worksheet with many inputs and make one table of what comes out."`
	Gather    gatherCommand    `cmd:"" help:"Join the parts of a sweep into its table."`
	Check     checkCommand     `cmd:"" help:"Run an executed worksheet again and say what differs."`
	List      listCommand      `cmd:"" help:"List the worksheets that come with the program."`
	New       newCommand       `cmd:"" help:"Put one of these worksheets into this folder, to be filled in."`
	Inputs    inputsCommand    `cmd:"" help:"List the inputs of a worksheet, as a file to fill in."`
	Eval      evalCommand      `cmd:"" help:"Run code as one cell and print what it shows."`
	Export    exportCommand    `cmd:"" help:"Write a worksheet as a Go program that prints the same results."`
	Drills    drillsCommand    `cmd:"" help:"Write a set of proofing problems for a class: a paper and its key."`
	Tables    tablesCommand    `cmd:"" help:"Write correction tables to print and hang on the wall."`
	Install   installCommand   `cmd:"" help:"Register the kernel with notebook front ends."`
	Uninstall uninstallCommand `cmd:"" help:"Take the kernel out of the notebook front ends again."`
	Kernel    kernelCommand    `cmd:"" help:"Serve a notebook front end; front ends start this themselves."`
	Version   versionCommand   `cmd:"" help:"Print the versions of the program, the math and its sources."`
	Licences  licencesCommand  `cmd:"" help:"Print the notices of everything that is built in."`
}

// limits are the flags that bound a cell.
type limits struct {
	TimeLimit string `help:"Longest time a cell may run, as 90s or 5m; 0 for no limit." default:"60s"`
	Memory    int    `help:"Most memory the worker may hold, in MiB." default:"1024"`
	Seed      int64  `help:"Seed of math/rand in cells." default:"0"`
}

func main() {
	engine.WorkerIfAsked(content())
	os.Exit(command(os.Args[1:]))
}

// command runs the program with its arguments and returns the exit status.
func command(args []string) int {
	var c commands
	status := -1
	parser, err := kong.New(&c, kong.Name("swanneck"),
		kong.Description("Distilling math in worksheets. Exit status: 0 well, 1 a cell did not succeed, 2 the command or a file handed in cannot be used, 3 output could not be written."),
		kong.UsageOnError(), kong.Exit(func(int) { status = exitOK }))
	if err != nil {
		fmt.Fprintln(os.Stderr, "swanneck:", err)
		return exitUsage
	}
	if len(args) == 0 {
		fmt.Fprintln(os.Stderr, "swanneck: say what to do: list, new, run, check, eval, install; swanneck --help says more")
		return exitUsage
	}
	ctx, err := parser.Parse(args)
	if status == exitOK {
		return exitOK // help was asked for and given
	}
	if err != nil {
		fmt.Fprintf(os.Stderr, "swanneck: %v; swanneck --help lists what there is\n", err)
		return exitUsage
	}
	err = ctx.Run()
	var s *statusError
	switch {
	case err == nil:
		return exitOK
	case errors.As(err, &s):
		if s.err != nil {
			fmt.Fprintln(os.Stderr, "swanneck:", s.err)
		}
		return s.status
	}
	fmt.Fprintln(os.Stderr, "swanneck:", err)
	return exitOutput
}

// statusError is an error with the exit status that goes with it. A nil error has been printed already.
type statusError struct {
	status int
	err    error
}

func (e *statusError) Error() string {
	if e.err == nil {
		return "failed"
	}
	return e.err.Error()
}

func withStatus(status int, err error) error {
	if err == nil {
		return nil
	}
	return &statusError{status, err}
}
