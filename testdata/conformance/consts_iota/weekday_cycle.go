// Go specification, "Iota": arithmetic modulo on an enumerated type and a switch over it.

package main

import "fmt"

type Day int

const (
	Mon Day = 1 + iota
	Tue
	Wed
	Thu
	Fri
	Sat
	Sun
)

func (d Day) Next() Day { return d%7 + 1 }
func (d Day) Weekend() bool {
	switch d {
	case Sat, Sun:
		return true
	}
	return false
}

func (d Day) String() string { return "MonTueWedThuFriSatSun"[3*(d-1) : 3*d] }

func main() {
	d := Mon
	for range 9 {
		fmt.Printf("%v(%d,%t) ", d, d, d.Weekend())
		d = d.Next()
	}
	fmt.Println()
	rota := map[Day][]string{Sat: {"Ada"}, Tue: {"Ben", "Cy"}}
	fmt.Println(rota)
	fmt.Printf("%s|%5s|%-5v|%03d\n", Sun, Mon, Tue, Wed)
}
