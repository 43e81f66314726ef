// Go specification, "Embedded interfaces": union of method sets, overlapping methods, embedding in structs.

package main

import (
	"errors"
	"fmt"
	"strings"
)

type Reader interface{ Read() string }
type Closer interface{ Close() error }
type ReadCloser interface {
	Reader
	Closer
}
type ReadCloseReader interface {
	ReadCloser
	Reader
	Len() int
}

type tap struct {
	left []string
	open bool
}

func (t *tap) Read() (s string) { s, t.left = t.left[0], t.left[1:]; return }
func (t *tap) Len() int         { return len(t.left) }
func (t *tap) Close() error {
	if !t.open {
		return errors.New("already closed")
	}
	t.open = false
	return nil
}

type Loud struct{ Reader }

func (l Loud) Read() string { return strings.ToUpper(l.Reader.Read()) }

func drain(r ReadCloseReader) (out []string, err error) {
	for r.Len() > 0 {
		out = append(out, r.Read())
	}
	return out, r.Close()
}

func main() {
	t := &tap{[]string{"heads", "hearts", "tails"}, true}
	fmt.Println(Loud{t}.Read(), t.Len())
	fmt.Println(drain(t))
	fmt.Println(drain(t))
	var rc ReadCloser = t
	_, isLen := rc.(interface{ Len() int })
	_, isLoud := Reader(rc).(Loud)
	fmt.Println(isLen, isLoud)
}
