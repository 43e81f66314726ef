// Go specification, "Function literals": subscribing, unsubscribing and closures that remove themselves.

package main

import (
	"fmt"
	"maps"
	"slices"
)

type emitter struct {
	next int
	subs map[int]func(string)
}

func (e *emitter) on(f func(string)) (cancel func()) {
	if e.subs == nil {
		e.subs = make(map[int]func(string))
	}
	id := e.next
	e.next++
	e.subs[id] = f
	return func() { delete(e.subs, id) }
}

func (e *emitter) once(f func(string)) {
	var cancel func()
	cancel = e.on(func(s string) {
		cancel()
		f(s)
	})
}

func (e *emitter) emit(s string) {
	for _, id := range slices.Sorted(maps.Keys(e.subs)) {
		e.subs[id](s)
	}
}

func debounce(n int, f func(string)) func(string) {
	seen := 0
	return func(s string) {
		if seen++; seen%n == 0 {
			f(s)
		}
	}
}

func main() {
	var e emitter
	var log []string
	add := func(tag string) func(string) { return func(s string) { log = append(log, tag+s) } }
	stop := e.on(add("a"))
	e.once(add("b"))
	e.on(debounce(2, add("c")))
	e.emit("1")
	e.emit("2")
	stop()
	stop()
	e.emit("3")
	e.emit("4")
	fmt.Println(log, len(e.subs), e.next)
}
