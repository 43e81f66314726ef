// Go specification, "Package fmt in ordinary use": string verbs, width in runes, quoting.

package main

import (
	"fmt"
	"strings"
)

type Label string

func main() {
	s := "crème"
	fmt.Printf("%s|%8s|%-8s|%.3s|%8.2s|%q|%x|% X|%#q\n", s, s, s, s, s, s, s, s, s)
	fmt.Printf("%v %+v %#v %T\n", s, s, s, s)
	fmt.Printf("%q %+q %#q %q\n", "a\"b\n", "é水", "back`tick", []string{"x y", ""})
	fmt.Printf("%s %v %d\n", []string{"a", "b"}, []Label{"c"}, []byte("d"))
	l := Label("dry")
	fmt.Printf("%s %q %v %#v %T %x\n", l, l, l, l, l, l)
	fmt.Printf("%5t|%-7t|%q|%v\n", true, false, 'x', 'x')
	fmt.Printf("[%6.2s][%-6.2s][%06s]\n", "abc", "abc", "abc")
	fmt.Printf("%c|%v|%s\n", []rune("hé"), []rune("hé"), string([]rune("hé")))
	fmt.Print("a", "b", 1, 2, "c", 3.5, true, false, "\n")
	fmt.Println("a", 'b', 1, nil, "c", []byte("hi"), struct{}{}, [0]int{})
	fmt.Println(fmt.Sprint("x", 1, 2, "y", "z", 3), fmt.Sprintln("end", 1) == "end 1\n")
	fmt.Println(strings.Repeat("=", 10), fmt.Sprintf("%-10s|%10s", "left", "right"))
}
