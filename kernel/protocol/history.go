package protocol

import (
	"errors"
	"fmt"
	"iter"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"sync"
	"time"
)

// HistoryFile returns where the history is kept: a file in the user's state folder. It grows to 8 MiB; then it is
// rewritten with the newest 10,000 cells, 4 MiB of them at most.
func HistoryFile() (string, error) {
	dir := os.Getenv("SWANNECK_STATE")
	if dir == "" {
		home, err := os.UserHomeDir()
		if err != nil {
			return "", fmt.Errorf("protocol: history: %w", err)
		}
		switch {
		case runtime.GOOS == "darwin":
			dir = filepath.Join(home, "Library", "Application Support", "swanneck")
		case runtime.GOOS == "windows":
			dir = filepath.Join(os.Getenv("LOCALAPPDATA"), "swanneck")
		case os.Getenv("XDG_STATE_HOME") != "":
			dir = filepath.Join(os.Getenv("XDG_STATE_HOME"), "swanneck")
		default:
			dir = filepath.Join(home, ".local", "state", "swanneck")
		}
	}
	return filepath.Join(dir, "history.jsonl"), nil
}

// historyBounds bounds a history.
type historyBounds struct {
	rewrite int64 // bytes of the file over which it is rewritten
	keep    int64 // bytes that a rewritten file has at most
	entries int   // cells that a rewritten file has at most
	entry   int   // bytes of a cell: a larger one is left out
	wait    time.Duration
}

var usualBounds = historyBounds{rewrite: 8 << 20, keep: 4 << 20, entries: 10_000, entry: 256 << 10, wait: 200 * time.Millisecond}

// entry is a line of the history file.
type entry struct {
	Session int    `json:"session"` // its number, from 1, in the order in which sessions ran their first cell
	Line    int    `json:"line"`    // the cell's execution count
	Input   string `json:"input"`
	Output  string `json:"output,omitempty"`
}

// history keeps what was run. Several kernels share a file (see historyFile). Without a file it keeps its own session in
// memory.
type history struct {
	bounds historyBounds
	file   *historyFile // or nil
	logf   func(string, ...any)

	mu      sync.Mutex
	session int     // the number of this one; 0 until it has run a cell
	own     []entry // without a file: what was run; with one: what could not be written yet
}

func openHistory(name string, logf func(string, ...any)) *history {
	h := &history{bounds: usualBounds, logf: logf}
	if name == "" {
		return h
	}
	f := &historyFile{name: name, bounds: &h.bounds}
	err := f.create()
	if err == nil {
		err = f.locked(0, func(*os.File) error { return nil })
	}
	if err != nil && !errors.Is(err, errBusy) {
		logf("history: %v; it is kept in memory only", err)
		return h
	}
	h.file = f
	return h
}

// add writes down a cell.
func (h *history) add(line int, input, output string) {
	h.mu.Lock()
	defer h.mu.Unlock()
	if h.file == nil {
		h.session = 1
	}
	h.own = append(h.own, entry{Session: h.session, Line: line, Input: input, Output: output})
	h.flush(h.bounds.wait)
	if n := len(h.own) - h.bounds.entries; n > 0 {
		h.own = slices.Clone(h.own[n:])
	}
}

// flush writes down what waits. What cannot be written because another kernel holds the file goes on waiting.
func (h *history) flush(wait time.Duration) {
	if h.file == nil || len(h.own) == 0 {
		return
	}
	session, written, err := h.file.append(h.session, h.own, wait)
	if err != nil {
		h.logf("history: %v", err)
	}
	h.session = session
	if written {
		h.own = nil
	}
}

func (h *history) close() error {
	h.mu.Lock()
	defer h.mu.Unlock()
	h.flush(time.Second)
	if n := len(h.own); h.file != nil && n > 0 {
		return fmt.Errorf("protocol: history: %d cells could not be written", n)
	}
	return nil
}

// current returns the number of this session, or what it will be when it has run a cell.
func (h *history) current() (int, error) {
	h.mu.Lock()
	defer h.mu.Unlock()
	if h.file == nil {
		return 1, nil
	}
	h.flush(h.bounds.wait)
	if h.session > 0 {
		return h.session, nil
	}
	var last int
	var err error
	h.file.reading(h.bounds.wait, func(lock *os.File) { last, err = h.file.latest(lock) })
	return last + 1, err
}

// newest yields the entries from the newest to the oldest.
func (h *history) newest() iter.Seq2[entry, error] {
	return func(yield func(entry, error) bool) {
		h.mu.Lock()
		defer h.mu.Unlock()
		h.flush(h.bounds.wait)
		for _, e := range slices.Backward(h.own) {
			if e.Session == 0 {
				e.Session = h.session
			}
			if !yield(e, nil) {
				return
			}
		}
		if h.file == nil {
			return
		}
		h.file.reading(h.bounds.wait, func(*os.File) { h.file.newest()(yield) })
	}
}
