// Go specification, "Handling panics": all deferred calls run on the way up, state stays as it was.

package main

import "fmt"

type Tank struct{ litres int }

func (t *Tank) Draw(n int) {
	if n > t.litres {
		panic(fmt.Errorf("draw %d of %d", n, t.litres))
	}
	t.litres -= n
}

func transaction(t *Tank, steps ...func()) (err error) {
	saved := *t
	defer func() {
		if r := recover(); r != nil {
			*t = saved
			err = fmt.Errorf("rolled back: %w", r.(error))
		}
	}()
	for _, s := range steps {
		s()
	}
	return
}

func level3() { defer fmt.Print("3 "); panic("up") }
func level2() { defer fmt.Print("2 "); level3(); fmt.Print("unreached") }
func level1() { defer func() { fmt.Print("1:", recover(), " ") }(); level2() }

func main() {
	t := &Tank{100}
	fmt.Println(transaction(t, func() { t.Draw(60) }, func() { t.Draw(30) }))
	fmt.Println(t.litres)
	fmt.Println(transaction(t, func() { t.Draw(5) }, func() { t.Draw(30) }))
	fmt.Println(t.litres)
	idx := []int{}
	fmt.Println(transaction(t, func() { t.litres = 1 }, func() { idx[len(idx)]++ }))
	fmt.Println(t.litres)
	level1()
	fmt.Println("end")
}
