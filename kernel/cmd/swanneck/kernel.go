package main

import (
	"fmt"
	"os"
	"os/signal"
	"syscall"
	"time"

	"swanneck/kernel/engine"
	"swanneck/kernel/protocol"
)

type kernelCommand struct {
	Connection    string `required:"" type:"existingfile" help:"Connection file, as the front end hands it over."`
	TimeLimit     string `help:"Longest time a cell may run, as 90s or 5m; 0 for no limit." default:"0"`
	Memory        int    `help:"Most memory the worker may hold, in MiB." default:"1024"`
	Seed          int64  `help:"Seed of math/rand in cells." default:"0"`
	NoHistory     bool   `help:"Keep no history of what was run."`
	OutliveParent bool   `help:"Go on when the program that started the kernel has ended."`
}

// Run serves a notebook front end until it asks for the end.
func (c *kernelCommand) Run() error {
	l := limits{TimeLimit: c.TimeLimit, Memory: c.Memory, Seed: c.Seed}
	o, err := l.engine(time.Time{})
	if err != nil {
		return withStatus(exitUsage, err)
	}
	o.Folder = "." // front ends start a kernel in the folder of its notebook
	conn, err := protocol.ReadConnection(c.Connection)
	if err != nil {
		return withStatus(exitUsage, err)
	}
	note := func(format string, args ...any) {
		fmt.Fprintf(os.Stderr, "swanneck kernel: "+format+"\n", args...)
	}
	history := ""
	if !c.NoHistory {
		if history, err = protocol.HistoryFile(); err != nil {
			note("%v; it is kept in memory only", err)
		}
	}
	k, err := protocol.Listen(protocol.Options{
		Connection: conn, Version: programVersion, HistoryFile: history, Log: note, OutliveParent: c.OutliveParent,
		Start: func() (protocol.Runner, error) { return engine.Start(o) },
	})
	if err != nil {
		return err
	}
	signals := make(chan os.Signal, 8)
	signal.Notify(signals, os.Interrupt, syscall.SIGTERM)
	go func() {
		for s := range signals {
			if s == os.Interrupt {
				k.Interrupt()
			} else {
				k.Shutdown()
			}
		}
	}()
	return k.Serve()
}
