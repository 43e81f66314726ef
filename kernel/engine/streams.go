package engine

import (
	"bytes"
	"os"
	"time"
	"unicode/utf8"
)

// A stream is sent in batches: after batchTime, or when it holds batchSize bytes, or when something else is to be sent.
const (
	batchTime = 20 * time.Millisecond
	batchSize = 64 << 10
)

type streamWriter struct {
	w    *workerSide
	name string
}

func (w *workerSide) stream(name string) streamWriter { return streamWriter{w, name} }

func (s streamWriter) Write(b []byte) (int, error) {
	w := s.w
	w.mu.Lock()
	defer w.mu.Unlock()
	if w.bufName != s.name {
		w.sendText(len(w.buf))
		w.bufName = s.name
	}
	w.buf = append(w.buf, b...)
	if len(w.buf) >= batchSize || time.Since(w.sent) > batchTime {
		w.sendText(wholeRunes(w.buf)) // what is said after a pause goes at once: the cell may be about to end its process
	} else if w.timer == nil {
		w.timer = time.AfterFunc(batchTime, w.flushRunes)
	}
	return len(b), nil
}

// flush sends all that waits: something else is to be sent, or nothing more will come.
func (w *workerSide) flush() {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.sendText(len(w.buf))
}

// flushRunes sends what waits, but for a rune that the cell has only begun to print.
func (w *workerSide) flushRunes() {
	w.mu.Lock()
	defer w.mu.Unlock()
	w.sendText(wholeRunes(w.buf))
}

// sendText sends the first n bytes of what waits. Under mu.
func (w *workerSide) sendText(n int) {
	if w.timer != nil {
		w.timer.Stop()
		w.timer = nil
	}
	if n == 0 {
		return
	}
	w.sent = time.Now()
	text := string(bytes.ToValidUTF8(w.buf[:n], []byte("\uFFFD")))
	if rest := w.buf[n:]; cap(w.buf) > 4*batchSize {
		w.buf = bytes.Clone(rest)
	} else {
		w.buf = append(w.buf[:0], rest...)
	}
	if err := w.pipe.write(message{Type: "stream", Stream: w.bufName, Text: text}); err != nil {
		os.Exit(0) // the parent is gone
	}
}

// wholeRunes returns how many bytes of a text stand before a rune at its end whose last bytes are still to come.
func wholeRunes(text []byte) int {
	for i := len(text) - 1; i >= max(0, len(text)-utf8.UTFMax+1); i-- {
		if utf8.RuneStart(text[i]) {
			if utf8.FullRune(text[i:]) {
				break
			}
			return i
		}
	}
	return len(text)
}
