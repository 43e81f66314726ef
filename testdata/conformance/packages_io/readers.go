// Go specification, "Implementing an interface" (package io): limited, tee, section, multi and pipe readers.

package main

import (
	"errors"
	"fmt"
	"io"
	"strings"
)

type slow struct {
	s string
	n int
}

func (r *slow) Read(p []byte) (int, error) {
	if r.s == "" {
		return 0, io.EOF
	}
	n := min(r.n, len(p), len(r.s))
	copy(p, r.s[:n])
	r.s = r.s[n:]
	return n, nil
}

func main() {
	var seen strings.Builder
	b, err := io.ReadAll(io.TeeReader(io.LimitReader(&slow{"distillery", 3}, 7), &seen))
	fmt.Println(string(b), err, seen.String())
	buf := make([]byte, 4)
	r := &slow{"abcdef", 2}
	n, err := io.ReadFull(r, buf)
	fmt.Println(n, err, string(buf[:n]))
	n, err = io.ReadFull(r, buf)
	fmt.Println(n, err, errors.Is(err, io.ErrUnexpectedEOF))
	n, err = io.ReadAtLeast(&slow{"xyz", 1}, buf, 2)
	fmt.Println(n, err, string(buf[:n]))
	sec := io.NewSectionReader(strings.NewReader("0123456789"), 3, 4)
	b, err = io.ReadAll(sec)
	fmt.Println(string(b), err, sec.Size())
	pr, pw := io.Pipe()
	go func() {
		_, err := fmt.Fprint(pw, "through the pipe")
		if err := pw.CloseWithError(err); err != nil {
			panic(err)
		}
	}()
	b, err = io.ReadAll(pr)
	fmt.Println(string(b), err)
	m, err := io.CopyN(&seen, strings.NewReader("12"), 5)
	fmt.Println(m, err, seen.String())
	w, err := io.WriteString(io.Discard, "gone")
	fmt.Println(w, err)
}
