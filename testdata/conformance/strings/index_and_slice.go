// Go specification, "String types": indexing gives bytes, slicing gives strings.

package main

import "fmt"

func main() {
	s := "café noir"
	fmt.Println(len(s), s[3], s[0] == 'c')
	fmt.Println(s[:3], s[3:5], s[5:], s[len(s):] == "")
	fmt.Printf("%q %q %T %T\n", s[3:4], s[4:5], s[0], s[0:1])
	for i := 0; i < len(s); i++ {
		fmt.Printf("%02x ", s[i])
	}
	fmt.Println()
	for i, r := range s {
		if r > 127 {
			fmt.Printf("%d:%c:%U\n", i, r, r)
		}
	}
	t := s
	s += "!"
	fmt.Println(t, s, t < s, t+"!" == s)
}
