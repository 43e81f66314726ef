// Go specification, "Package fmt in ordinary use": Sscan, Sscanf and Sscanln.

package main

import (
	"fmt"
	"strings"
)

func main() {
	var name string
	var n int
	var f float64
	c, err := fmt.Sscan("gin 42 3.5", &name, &n, &f)
	fmt.Println(c, err, name, n, f)
	c, err = fmt.Sscanf("lot:A7 abv=58.5%", "lot:%s abv=%f%%", &name, &f)
	fmt.Println(c, err, name, f)
	c, err = fmt.Sscanf("x12", "y%d", &n)
	fmt.Println(c, err)
	c, err = fmt.Sscan("nope", &n)
	fmt.Println(c, err)
	var a, b int
	c, err = fmt.Sscanf("0x1f-077", "%v-%o", &a, &b)
	fmt.Println(c, err, a, b)
	var r rune
	var h int
	var t bool
	c, err = fmt.Sscanf("é ff true", "%c %x %t", &r, &h, &t)
	fmt.Println(c, err, string(r), h, t)
	rd := strings.NewReader("1 2\n3 4\n")
	for {
		if _, err := fmt.Fscanln(rd, &a, &b); err != nil {
			fmt.Println("end:", err)
			break
		}
		fmt.Println(a*10 + b)
	}
}
