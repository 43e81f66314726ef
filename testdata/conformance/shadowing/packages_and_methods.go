// Go specification, "Declarations and scope": locals hiding package names, fields and methods beside them.

package main

import (
	"fmt"
	"strings"
)

type Still struct {
	name   string
	fmt    string
	length int
}

func (s Still) len() int { return s.length + len(s.name) }

func (s *Still) name2() string {
	name := s.name + "!"
	s.name = name
	return name
}

func join(strings []string) string {
	out := ""
	for i, s := range strings {
		if i > 0 {
			out += "/"
		}
		out += s
	}
	return out
}

func main() {
	s := Still{"pot", "%v", 4}
	fmt.Println(s.len(), s.name2(), s.fmt)
	fmt.Println(join([]string{"a", "b"}), strings.Join([]string{"a", "b"}, "/"))
	{
		strings := []string{"x"}
		fmt.Println(len(strings), join(strings))
	}
	math := func(n float64) float64 { return n * 2 }
	fmt.Println(math(2), strings.ToUpper("ok"))
	sort := struct{ Ints []int }{[]int{2, 1}}
	fmt.Println(sort.Ints)
	main := "main"
	fmt.Println(main)
	time := 12
	time++
	fmt.Println(time)
}
