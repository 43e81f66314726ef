package engine

import (
	"go/types"
	"io"
	"reflect"
	"time"

	"swanneck/kernel/cell"
)

// Evaluator is the border between checked Go and what runs it. There is one a worker.
type Evaluator interface {
	// Run runs a chunk of a checked cell: what its declarations set up, then its statements. It says how many
	// statements came to their end. An error that is a *RunError says where and why it stopped.
	Run(ch *cell.Chunk) (shown []Shown, completed int, err error)
	// Stop asks the running chunk to end soon, from another goroutine, and lets no other begin until Resume.
	Stop()
	Resume()
	// Value returns what a variable of the session holds.
	Value(v *types.Var) any
	// Error returns a value as an error if its type is one, those that cells declared included.
	Error(v any) (error, bool)
	// Text writes a value as fmt.Print would, those of types that cells declared included.
	Text(v any) string
}

// Shown is a value of a cell's last expression.
type Shown struct {
	Value any
	Text  string
}

// RunError says why a chunk stopped.
type RunError struct {
	Line, Col int    // in the cell Name; 0 if there is none
	Name      string // of the cell in which it happened
	Msg       string
	Halted    bool // stopped from outside
	Refused   bool // cannot be run faithfully; nothing was run
}

func (e *RunError) Error() string { return e.Msg }

// Content is what cells of a program can use. The program hands it in, so that the engine knows no library.
type Content struct {
	Library  func() cell.Library                        // types, for the checker
	Packages []string                                   // paths of the packages that Values knows
	Values   func(path string) map[string]reflect.Value // a fresh table, for the evaluator (see kernel/symbols)
}

// evaluatorSetup is what an evaluator is made with.
type evaluatorSetup struct {
	content        Content
	library        cell.Library
	session        *cell.Session
	stdout, stderr io.Writer
	clock          time.Time
	seed           int64
	crash          func(*RunError) // a panic in a goroutine of a cell
}
