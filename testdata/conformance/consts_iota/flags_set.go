// Go specification, "Iota": bit flags combined and printed.

package main

import (
	"fmt"
	"strings"
)

type Fault uint8

const (
	Cloudy Fault = 1 << iota
	Heads
	Tails
	Scorched
)

var names = []string{"cloudy", "heads", "tails", "scorched"}

func (f Fault) String() string {
	if f == 0 {
		return "clean"
	}
	var parts []string
	for i, n := range names {
		if f&(1<<i) != 0 {
			parts = append(parts, n)
		}
	}
	return strings.Join(parts, "|")
}

func (f *Fault) Set(g Fault)   { *f |= g }
func (f *Fault) Clear(g Fault) { *f &^= g }

func main() {
	var f Fault
	fmt.Println(f)
	f.Set(Heads | Scorched)
	fmt.Println(f, uint8(f))
	f.Clear(Heads)
	f ^= Cloudy
	fmt.Println(f, f&Cloudy != 0, f&Tails != 0)
	fmt.Println([]Fault{0, Cloudy, Tails | Heads, 15})
	fmt.Printf("%v %d %b %08b %x\n", f, f, f, f, uint8(f))
	fmt.Println(map[Fault]int{Heads: 1, Cloudy: 2})
}
