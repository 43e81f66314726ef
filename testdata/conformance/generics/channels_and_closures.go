// Go specification, "Type parameter declarations": generic functions over channels, closures and variadics.

package main

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

func Gen[T any](xs ...T) <-chan T {
	ch := make(chan T)
	go func() {
		defer close(ch)
		for _, x := range xs {
			ch <- x
		}
	}()
	return ch
}

func Pipe[T, U any](in <-chan T, f func(T) U) <-chan U {
	out := make(chan U)
	go func() {
		defer close(out)
		for x := range in {
			out <- f(x)
		}
	}()
	return out
}

func Collect[T any](in <-chan T) (out []T) {
	for x := range in {
		out = append(out, x)
	}
	return
}

func Partial[A, B, R any](f func(A, B) R, a A) func(B) R {
	return func(b B) R { return f(a, b) }
}

func Must[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}

func main() {
	sq := Pipe(Gen(1, 2, 3), func(n int) int { return n * n })
	fmt.Println(Collect(Pipe(sq, func(n int) string { return fmt.Sprint("<", n, ">") })))
	rep := Partial(strings.Repeat, "ab")
	fmt.Println(rep(2), rep(0) == "", Partial(math.Pow, 2)(10))
	fmt.Println(Must(strconv.Atoi("42")), Must(strconv.ParseBool("t")))
	defer func() { fmt.Println(recover()) }()
	fmt.Println(Must(strconv.Atoi("4x")))
}
