// Go specification, "Interface types" (package io): a hand-written line and word scanner over any reader.

package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"strings"
)

type Scanner struct {
	r    io.Reader
	buf  []byte
	text string
	err  error
}

func (s *Scanner) Scan() bool {
	for {
		if i := bytes.IndexByte(s.buf, '\n'); i >= 0 {
			s.text, s.buf = strings.TrimSuffix(string(s.buf[:i]), "\r"), s.buf[i+1:]
			return true
		}
		if s.err != nil {
			if len(s.buf) == 0 {
				return false
			}
			s.text, s.buf = string(s.buf), nil
			return true
		}
		chunk := make([]byte, 5)
		n, err := s.r.Read(chunk)
		s.buf = append(s.buf, chunk[:n]...)
		s.err = err
	}
}

func (s *Scanner) Err() error {
	if s.err == io.EOF {
		return nil
	}
	return s.err
}

type broken struct{}

func (broken) Read(p []byte) (int, error) { return copy(p, "ab"), errors.New("pipe burst") }

func main() {
	s := &Scanner{r: strings.NewReader("one\r\n\nthree words here\nlast")}
	for n := 1; s.Scan(); n++ {
		fmt.Printf("%d %q %d\n", n, s.text, len(strings.Fields(s.text)))
	}
	fmt.Println(s.Err())
	s = &Scanner{r: broken{}}
	for s.Scan() {
		fmt.Printf("%q\n", s.text)
	}
	fmt.Println(s.Err())
}
