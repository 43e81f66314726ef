package protocol

import (
	"bufio"
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"

	"github.com/google/uuid"
)

// HistoryFile returns where the history is kept: a file in the user's state folder.
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

// entry is a line of the history file.
type entry struct {
	Session string `json:"session"` // of the kernel that wrote it
	Line    int    `json:"line"`    // the cell's execution count
	Input   string `json:"input"`
	Output  string `json:"output,omitempty"`

	number int // of the session, from 1, in the order of the file
}

// history keeps what was run. Each kernel appends whole lines to the same file, each line in one write, so that several
// can do so at once. Without a file it keeps its own session in memory.
type history struct {
	session string
	name    string
	file    *os.File
	own     []entry // if there is no file
	logf    func(string, ...any)
}

func openHistory(name string, logf func(string, ...any)) *history {
	h := &history{session: uuid.NewString(), name: name, logf: logf}
	if name == "" {
		return h
	}
	err := os.MkdirAll(filepath.Dir(name), 0o700)
	if err == nil {
		h.file, err = os.OpenFile(name, os.O_APPEND|os.O_CREATE|os.O_WRONLY, 0o600)
	}
	if err != nil {
		logf("history: %v; it is kept in memory only", err)
	}
	return h
}

// add writes down a cell.
func (h *history) add(line int, input, output string) {
	e := entry{Session: h.session, Line: line, Input: input, Output: output}
	if h.file == nil {
		h.own = append(h.own, e)
		return
	}
	b, err := json.Marshal(e)
	if err == nil {
		// A newline before it, too: a line that another kernel could not finish must not spoil this one.
		_, err = h.file.Write(append(append([]byte{'\n'}, b...), '\n'))
	}
	if err != nil {
		h.logf("history: %v", err)
	}
}

func (h *history) close() error {
	if h.file == nil {
		return nil
	}
	return h.file.Close()
}

// all reads the entries and returns the number of the current session.
func (h *history) all() (list []entry, current int, err error) {
	numbers := map[string]int{}
	take := func(e entry) {
		if numbers[e.Session] == 0 {
			numbers[e.Session] = len(numbers) + 1
		}
		e.number = numbers[e.Session]
		list = append(list, e)
	}
	for _, e := range h.own {
		take(e)
	}
	if h.file != nil {
		f, err := os.Open(h.name)
		switch {
		case errors.Is(err, fs.ErrNotExist): // somebody cleared it
		case err != nil:
			return nil, 0, err
		default:
			defer f.Close()
			r := bufio.NewReader(f)
			for {
				line, err := r.ReadBytes('\n')
				var e entry
				if len(bytes.TrimSpace(line)) > 0 && json.Unmarshal(line, &e) == nil && e.Session != "" {
					take(e)
				}
				if err == io.EOF {
					break
				}
				if err != nil {
					return nil, 0, err
				}
			}
		}
	}
	if n := numbers[h.session]; n > 0 {
		return list, n, nil
	}
	return list, len(numbers) + 1, nil
}
