// Go specification, "Errors": types with their own Is and Unwrap methods.

package main

import (
	"errors"
	"fmt"
	"io"
	"strconv"
)

type HTTPish struct {
	status int
	cause  error
}

func (e *HTTPish) Error() string { return fmt.Sprintf("status %d: %v", e.status, e.cause) }
func (e *HTTPish) Unwrap() error { return e.cause }
func (e *HTTPish) Is(target error) bool {
	t, ok := target.(*HTTPish)
	return ok && t.status == e.status
}

type Multi []error

func (m Multi) Error() string   { return fmt.Sprint(len(m), " errors") }
func (m Multi) Unwrap() []error { return m }

func main() {
	err := fmt.Errorf("call: %w", &HTTPish{404, io.ErrUnexpectedEOF})
	fmt.Println(err)
	fmt.Println(errors.Is(err, &HTTPish{status: 404}), errors.Is(err, &HTTPish{status: 500}), errors.Is(err, io.ErrUnexpectedEOF))
	m := Multi{errors.New("a"), err}
	fmt.Println(m, errors.Is(m, io.ErrUnexpectedEOF), errors.Unwrap(m) == nil)
	var h *HTTPish
	ok := errors.As(m, &h)
	fmt.Println(ok, h.status, h.cause)
	_, convErr := strconv.Atoi("12x")
	var ne *strconv.NumError
	ok = errors.As(convErr, &ne)
	fmt.Println(ok, ne.Func, ne.Num, ne.Err == strconv.ErrSyntax)
	_, convErr = strconv.ParseInt("999", 10, 8)
	fmt.Println(convErr, errors.Is(convErr, strconv.ErrRange))
}
