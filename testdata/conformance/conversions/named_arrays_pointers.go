// Go specification, "Conversions": named slices, arrays and array pointers back and forth.

package main

import "fmt"

type Grams []int
type Four [4]int
type FourPtr *[4]int
type Row struct{ cells Four }

func (f Four) Sum() (t int) {
	for _, v := range f {
		t += v
	}
	return
}

func (g Grams) Total() int { return Four(g[:4]).Sum() + Grams(g[4:]).rest() }
func (g Grams) rest() (t int) {
	for _, v := range g {
		t += v
	}
	return
}

func main() {
	g := Grams{1, 2, 3, 4, 5}
	f := Four(g)
	p := (*Four)(g)
	fp := FourPtr((*[4]int)(g))
	p[0] = 10
	fp[1] = 20
	fmt.Println(g, f, *p, g.Total(), p.Sum())
	plain := [4]int(f)
	plain[3] = 0
	fmt.Println(Four(plain) == f, plain == f, Row{plain}, Row{plain}.cells.Sum())
	s := f[:]
	fmt.Printf("%T %T %T %T\n", s, f, p, Grams(s))
	Grams(s)[2] = 99
	fmt.Println(f, len(p), cap(Grams(s)[:1:2]))
	str := string([]byte{0x67, 0x69, 0x6e})
	arr := [3]byte([]byte(str))
	fmt.Println(arr, string(arr[:]), [3]byte([]byte("rum")) == arr)
}
