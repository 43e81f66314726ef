// Go specification, "Method declarations": methods on functions, maps, slices, arrays, channels, strings and bools.

package main

import (
	"fmt"
	"strings"
)

type Op func(int) int
type Tally map[string]int
type Stack []int
type RGB [3]uint8
type Pipe chan int
type Word string
type Switch bool

func (o Op) Then(p Op) Op    { return func(n int) int { return p(o(n)) } }
func (t Tally) Add(w string) { t[w]++ }
func (s *Stack) Push(n int)  { *s = append(*s, n) }
func (c RGB) Hex() string    { return fmt.Sprintf("#%02x%02x%02x", c[0], c[1], c[2]) }
func (c *RGB) Dim() {
	for i := range c {
		c[i] /= 2
	}
}
func (p Pipe) Send(ns ...int) {
	for _, n := range ns {
		p <- n
	}
	close(p)
}
func (w Word) Vowels() (n int) {
	return len(w) - len(strings.NewReplacer("a", "", "e", "", "i", "", "o", "", "u", "").Replace(string(w)))
}
func (s *Switch) Flip() { *s = !*s }

func main() {
	inc := Op(func(n int) int { return n + 1 })
	fmt.Println(inc.Then(inc).Then(func(n int) int { return n * n })(3))
	t := Tally{}
	t.Add("a")
	t.Add("a")
	var s Stack
	s.Push(4)
	s.Push(5)
	c := RGB{255, 128, 9}
	fmt.Print(c.Hex(), " ")
	c.Dim()
	fmt.Println(c.Hex(), t, s)
	p := make(Pipe, 3)
	p.Send(1, 2, 3)
	for n := range p {
		fmt.Print(n, " ")
	}
	var on Switch
	on.Flip()
	fmt.Println(Word("aquavit").Vowels(), on)
}
