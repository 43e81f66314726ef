// Go specification, "Slice types": a stack and a queue as named slice types with pointer methods.

package main

import "fmt"

type Stack []rune

func (s *Stack) Push(r rune) { *s = append(*s, r) }
func (s *Stack) Pop() (r rune, ok bool) {
	if len(*s) == 0 {
		return 0, false
	}
	last := len(*s) - 1
	r = (*s)[last]
	*s = (*s)[:last]
	return r, true
}

var pairs = map[rune]rune{')': '(', ']': '[', '}': '{'}

func balanced(text string) (int, bool) {
	var s Stack
	for i, r := range text {
		switch r {
		case '(', '[', '{':
			s.Push(r)
		case ')', ']', '}':
			if open, ok := s.Pop(); !ok || open != pairs[r] {
				return i, false
			}
		}
	}
	return len(text), len(s) == 0
}

type Queue []int

func main() {
	for _, t := range []string{"", "(a[b]{c})", "(]", "((", "x)", "é(ü)]"} {
		at, ok := balanced(t)
		fmt.Printf("%q %d %t\n", t, at, ok)
	}
	q := Queue{1}
	for steps := 0; len(q) > 0 && steps < 7; steps++ {
		head := q[0]
		q = append(q[1:], head*2, head*2+1)
		fmt.Print(head, " ")
	}
	fmt.Println(q)
}
