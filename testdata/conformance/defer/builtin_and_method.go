// Go specification, "Defer statements": deferring methods, interface methods, builtins and closures with arguments.

package main

import "fmt"

type Logger interface{ Log(string) }

type buf struct{ lines []string }

func (b *buf) Log(s string) { b.lines = append(b.lines, s) }

func work(l Logger, m map[string]int, ch chan int) {
	defer l.Log("last")
	defer delete(m, "tmp")
	defer close(ch)
	defer func(n int) { l.Log(fmt.Sprint("len was ", n, " now ", len(m))) }(len(m))
	m["tmp"] = 1
	m["keep"] = 2
	ch <- len(m)
	l.Log("first")
}

func main() {
	b := &buf{}
	m := map[string]int{}
	ch := make(chan int, 2)
	work(b, m, ch)
	v, ok := <-ch
	_, ok2 := <-ch
	fmt.Println(v, ok, ok2, m)
	fmt.Printf("%q\n", b.lines)
	func() {
		var f func()
		defer func() { fmt.Println("nil func:", recover()) }()
		defer f()
		fmt.Println("reached")
	}()
}
