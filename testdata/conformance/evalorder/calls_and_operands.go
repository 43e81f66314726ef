// Go specification, "Order of evaluation": function calls, method calls and receives happen left to right.

package main

import "fmt"

func f(s string, n int) int { fmt.Print(s, " "); return n }

type T struct{ log *[]string }

func (t T) M(s string) T { *t.log = append(*t.log, s); return t }

func get(s string) []int { fmt.Print("slice-", s, " "); return []int{10, 20, 30} }

func pair() (int, int) { fmt.Print("pair "); return 3, 4 }

func add(a, b int) int { return a*10 + b }

func main() {
	a := [4]int{}
	a[f("i", 1)], a[f("j", 2)] = f("x", 100), f("y", 200)
	fmt.Println(a)
	n := f("a", 1) + f("b", 2)*f("c", 3)
	fmt.Println(n)
	fmt.Println(get("p")[f("q", 1)], add(pair()))
	_ = f("l", 0) == 1 && f("not", 1) == 1 || f("m", 1) == 1
	fmt.Println()
	var log []string
	T{&log}.M("one").M("two").M("three")
	fmt.Println(log)
	m := map[int]int{f("k1", 1): f("v1", 2)}
	fmt.Println(m)
	s := []int{f("e1", 1), f("e2", 2), f("e3", 3)}
	fmt.Println(s)
	ch := make(chan int, 2)
	ch <- 1
	ch <- 2
	fmt.Println(<-ch-<-ch, f("z", 9))
}
