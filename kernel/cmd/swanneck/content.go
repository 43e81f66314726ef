package main

import (
	"fmt"
	"time"

	"swanneck/kernel/cell"
	"swanneck/kernel/engine"
	"swanneck/kernel/symbols"
	"swanneck/kernel/symbols/whitelist"
)

// content hands the engine what cells can use.
func content() engine.Content {
	return engine.Content{
		Library:  func() cell.Library { return symbols.NewLibrary() },
		Packages: whitelist.Packages,
		Values:   symbols.Values,
	}
}

// engine returns the options of an engine with these limits.
func (l limits) engine(clock time.Time) (engine.Options, error) {
	o := engine.Options{Clock: clock, Seed: l.Seed, MemoryMiB: l.Memory}
	d, err := time.ParseDuration(l.TimeLimit)
	switch {
	case l.TimeLimit == "0":
		o.CellTime = -1
	case err != nil || d < 0:
		return o, fmt.Errorf("--time-limit %s: want a time as 90s or 5m, or 0 for no limit", l.TimeLimit)
	case d == 0:
		o.CellTime = -1
	default:
		o.CellTime = d
	}
	if l.Memory < 64 || l.Memory > 1<<20 {
		return o, fmt.Errorf("--memory %d: want MiB, from 64 to %d", l.Memory, 1<<20)
	}
	return o, nil
}
