package protocol

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"iter"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"time"
)

// historyFile is a file of entries, a line each. Whoever appends or rewrites holds the lock of a second file, which has
// the number of the latest session as its text; the file itself is never locked, since rewriting puts another in its
// place. It is opened anew for each use, for the same reason.
type historyFile struct {
	name   string
	bounds *historyBounds
}

// errBusy says that another process holds the lock.
var errBusy = errors.New("another kernel holds the history")

func (f *historyFile) create() error {
	if err := os.MkdirAll(filepath.Dir(f.name), 0o700); err != nil {
		return err
	}
	file, err := os.OpenFile(f.name, os.O_RDWR|os.O_APPEND|os.O_CREATE, 0o600)
	if err != nil {
		return err
	}
	return file.Close()
}

// locked calls do while it holds the lock, which it waits for.
func (f *historyFile) locked(wait time.Duration, do func(lock *os.File) error) (err error) {
	lock, err := os.OpenFile(f.name+".lock", os.O_RDWR|os.O_CREATE, 0o600)
	if err != nil {
		return err
	}
	defer func() { err = errors.Join(err, lock.Close()) }() // which gives the lock back
	until := time.Now().Add(wait)
	for {
		err := lockFile(lock)
		if err == nil {
			return do(lock)
		}
		if !errors.Is(err, errBusy) || time.Now().After(until) {
			return err
		}
		time.Sleep(time.Millisecond)
	}
}

// reading calls do, which reads: with the lock if it can be had, as some systems put no file in the place of an open one,
// and without if another process holds it for long.
func (f *historyFile) reading(wait time.Duration, do func(lock *os.File)) {
	done := false
	err := f.locked(wait, func(lock *os.File) error {
		done = true
		do(lock)
		return nil
	})
	if err != nil && !done {
		do(nil)
	}
}

// append writes entries in one write, and returns the session's number, which it claims if that is 0. Entries that are
// too large are left out; written says that nothing is left to do.
func (f *historyFile) append(session int, list []entry, wait time.Duration) (number int, written bool, err error) {
	number = session
	var tooLarge error
	err = f.locked(wait, func(lock *os.File) error {
		if err := f.create(); err != nil { // somebody may have cleared the folder
			return err
		}
		if number == 0 {
			last, err := f.latest(lock)
			if err != nil {
				return err
			}
			if err := writeNumber(lock, last+1); err != nil {
				return err
			}
			number = last + 1
		}
		var text []byte
		for _, e := range list {
			e.Session = number
			line, err := f.line(e)
			if err != nil {
				tooLarge = err
			}
			text = append(text, line...)
		}
		size, err := f.write(text)
		if err != nil {
			return err
		}
		written = true
		if size > f.bounds.rewrite {
			return f.rewrite()
		}
		return nil
	})
	return number, written, errors.Join(err, tooLarge)
}

// line returns the line of an entry: without its output if it would be too large, and none if it still is.
func (f *historyFile) line(e entry) ([]byte, error) {
	b, err := json.Marshal(e)
	if err == nil && len(b) > f.bounds.entry {
		e.Output = ""
		b, err = json.Marshal(e)
	}
	if err != nil {
		return nil, err
	}
	if len(b) > f.bounds.entry {
		return nil, fmt.Errorf("cell %d is left out: it has %d bytes; at most %d are kept", e.Line, len(b), f.bounds.entry)
	}
	return append(b, '\n'), nil
}

// write appends lines in one write, and returns the size of the file. A line that somebody could not finish must not
// spoil them.
func (f *historyFile) write(lines []byte) (size int64, err error) {
	file, err := os.OpenFile(f.name, os.O_RDWR|os.O_APPEND, 0o600)
	if err != nil {
		return 0, err
	}
	defer func() { err = errors.Join(err, file.Close()) }()
	info, err := file.Stat()
	if err != nil {
		return 0, err
	}
	size = info.Size()
	var end [1]byte
	if size > 0 && len(lines) > 0 {
		if _, err := file.ReadAt(end[:], size-1); err != nil {
			return size, err
		}
		if end[0] != '\n' {
			lines = append([]byte{'\n'}, lines...)
		}
	}
	n, err := file.Write(lines)
	return size + int64(n), err
}

// rewrite puts a file with the newest entries in the place of the file. The caller holds the lock.
func (f *historyFile) rewrite() error {
	var lines [][]byte
	var size int64
	for e, err := range f.newest() {
		if err != nil {
			return err
		}
		line, err := f.line(e)
		if err != nil {
			continue // somebody else's, beyond our bounds
		}
		if size += int64(len(line)); size > f.bounds.keep || len(lines) >= f.bounds.entries {
			break
		}
		lines = append(lines, line)
	}
	slices.Reverse(lines)
	next := f.name + ".new"
	file, err := os.OpenFile(next, os.O_WRONLY|os.O_CREATE|os.O_TRUNC, 0o600)
	if err != nil {
		return err
	}
	_, err = file.Write(bytes.Join(lines, nil))
	if err == nil {
		err = file.Sync() // or a power cut could leave an empty file under the name
	}
	if err = errors.Join(err, file.Close()); err != nil {
		return err
	}
	return os.Rename(next, f.name)
}

// latest reads the number of the latest session from the lock's file, and looks at all entries too, as that file may be
// gone or damaged. Of a session that has left the history only the first knows.
func (f *historyFile) latest(lock *os.File) (last int, err error) {
	if lock != nil {
		b := make([]byte, 32)
		n, err := lock.ReadAt(b, 0)
		if err != nil && err != io.EOF {
			return 0, err
		}
		if last, err = strconv.Atoi(strings.TrimSpace(string(b[:n]))); err != nil || last < 0 {
			last = 0
		}
	}
	for e, err := range f.newest() {
		if err != nil {
			return 0, err
		}
		last = max(last, e.Session)
	}
	return last, nil
}

func writeNumber(lock *os.File, n int) error {
	if err := lock.Truncate(0); err != nil {
		return err
	}
	_, err := lock.WriteAt([]byte(strconv.Itoa(n)+"\n"), 0)
	return err
}

// newest yields the entries from the last to the first, and reads no more of the file than is asked for. Lines that are
// no entries are skipped. The file that is read stays the same when another is put in its place.
func (f *historyFile) newest() iter.Seq2[entry, error] {
	return func(yield func(entry, error) bool) {
		file, err := os.Open(f.name)
		if errors.Is(err, fs.ErrNotExist) { // somebody cleared it
			return
		}
		if err != nil {
			yield(entry{}, err)
			return
		}
		defer file.Close()
		info, err := file.Stat()
		if err != nil {
			yield(entry{}, err)
			return
		}
		for line, err := range linesBackward(file, info.Size(), 4*f.bounds.entry) {
			if err != nil {
				yield(entry{}, err)
				return
			}
			var e entry
			if json.Unmarshal(line, &e) != nil || e.Session <= 0 {
				continue
			}
			if !yield(e, nil) {
				return
			}
		}
	}
}

// linesBackward yields the lines of a text from the last to the first, without their newlines. Lines longer than most
// bytes are left out.
func linesBackward(r io.ReaderAt, size int64, most int) iter.Seq2[[]byte, error] {
	const piece = 64 << 10
	return func(yield func([]byte, error) bool) {
		var tail []byte // the part of a line that has been read
		long := false   // and it is too long
		for at := size; at > 0; {
			n := min(piece, at)
			at -= n
			buf := make([]byte, n, int(n)+len(tail))
			if _, err := r.ReadAt(buf, at); err != nil {
				yield(nil, err)
				return
			}
			for {
				i := bytes.LastIndexByte(buf, '\n')
				if i < 0 {
					break
				}
				if line := append(buf[i+1:len(buf):cap(buf)], tail...); !long && len(line) <= most && !yield(line, nil) {
					return
				}
				buf, tail, long = buf[:i:i], nil, false
			}
			if tail = append(buf, tail...); long || len(tail) > most {
				tail, long = nil, true
			}
		}
		if !long && len(tail) > 0 {
			yield(tail, nil)
		}
	}
}
