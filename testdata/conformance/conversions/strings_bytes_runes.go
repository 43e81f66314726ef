// Go specification, "Conversions to and from a string type": bytes, runes and code points.

package main

import "fmt"

type Label string
type Raw []byte
type Points []rune

func main() {
	s := "gin é 水"
	fmt.Println([]byte(s))
	fmt.Println([]rune(s))
	fmt.Println(string([]rune{0x6c34, 'a', -1, 0x10ffff + 1}), string(rune(65)))
	l := Label(s)
	r := Raw(l)
	p := Points(l)
	r[0] = 'G'
	p[1] = 'I'
	fmt.Println(l, string(r), string(p), len(l), len(r), len(p))
	fmt.Println(Label(r) == "Gin é 水", string(l)+"!")
	fmt.Printf("%T %T %T %q\n", l, r, p, string(rune(-5)))
	var none []byte
	fmt.Println(string(none) == "", []byte("") == nil, len([]rune("")))
}
