package engine

import (
	"crypto/sha256"
	"encoding/json"
	"hash"
	"maps"

	"swanneck/kernel/display"
)

// Output takes what a cell says, in order. Its methods are called from one goroutine, while Run runs. An Output may
// have more methods: those of Asker, Clearer, Updater.
type Output interface {
	Stream(name, text string) // name is "stdout" or "stderr"
	Display(b display.Bundle) // shown in the middle of a cell; b[DisplayID] names it if it can be updated
	Value(b display.Bundle)   // the value of the cell's last expression
}

// Asker answers questions of a cell. An error tells the cell that there is no answer.
type Asker interface {
	Ask(prompt string, secret bool) (string, error)
}

// Clearer takes away what the cell has shown so far; with wait, when something new is shown.
type Clearer interface{ Clear(wait bool) }

// Updater shows something else in the place of an earlier display.
type Updater interface {
	Update(id string, b display.Bundle)
}

// DisplayID is the key under which a bundle carries the name of a display that can be updated.
const DisplayID = "swanneck/display_id"

// session is one run of a cell, as the parent hears it: it hands on what the cell says, and notes it for a replay.
type session struct {
	out      Output // nil in a replay
	given    []string
	answers  []string
	files    map[string][]folderAnswer
	hash     hash.Hash
	lastName string

	givenFiles map[string][]folderAnswer
}

// newSession begins a run of a cell; in a replay, before says what it was answered then.
func newSession(out Output, before request) *session {
	return &session{out: out, given: before.answers, givenFiles: maps.Clone(before.files), hash: sha256.New()}
}

// hear takes a message that is output.
func (s *session) hear(m message) bool {
	switch m.Type {
	case "stream":
		if s.lastName != m.Stream {
			s.note(m.Type, m.Stream)
			s.lastName = m.Stream
		}
		s.hash.Write([]byte(m.Text)) // a hash does not fail
		if s.out != nil {
			s.out.Stream(m.Stream, m.Text)
		}
		return true
	case "display", "value", "update", "clear":
		s.lastName = ""
		s.note(m.Type, m.ID)
		if text, err := json.Marshal(m.Bundle); err == nil {
			s.hash.Write(text)
		}
	default:
		return false
	}
	if s.out == nil {
		return true
	}
	switch m.Type {
	case "display":
		if m.ID != "" {
			m.Bundle[DisplayID] = m.ID
		}
		s.out.Display(m.Bundle)
	case "value":
		s.out.Value(m.Bundle)
	case "update":
		if u, ok := s.out.(Updater); ok {
			u.Update(m.ID, m.Bundle)
		}
	case "clear":
		if c, ok := s.out.(Clearer); ok {
			c.Clear(m.Flag)
		}
	}
	return true
}

func (s *session) note(parts ...string) {
	for _, p := range parts {
		s.hash.Write([]byte("\x00" + p + "\x00"))
	}
}

// answer is what a question of a cell was answered; not ok is that it was not.
type answer struct {
	text string
	ok   bool
}

// ask answers a question: in a replay as it was answered before. The person may take longer than the cell lives.
func (s *session) ask(prompt string, secret bool, to chan<- answer) {
	text, ok := s.answerTo(prompt, secret)
	to <- answer{text, ok}
}

func (s *session) answerTo(prompt string, secret bool) (text string, ok bool) {
	if s.out == nil {
		if len(s.given) == 0 {
			return "", false
		}
		text, s.given = s.given[0], s.given[1:]
		return text, true
	}
	a, can := s.out.(Asker)
	if !can {
		return "", false
	}
	text, err := a.Ask(prompt, secret)
	return text, err == nil
}

func (s *session) sum() (out [sha256.Size]byte) {
	s.hash.Sum(out[:0])
	return out
}
