// Go specification, "String types": strings do not change; byte copies do.

package main

import "fmt"

func upperFirst(s string) string {
	if s == "" {
		return s
	}
	b := []byte(s)
	if 'a' <= b[0] && b[0] <= 'z' {
		b[0] -= 'a' - 'A'
	}
	return string(b)
}

func reverse(s string) string {
	r := []rune(s)
	for i, j := 0, len(r)-1; i < j; i, j = i+1, j-1 {
		r[i], r[j] = r[j], r[i]
	}
	return string(r)
}

func main() {
	s := "elder"
	b := []byte(s)
	b[0] = 'E'
	fmt.Println(s, string(b), upperFirst(s), upperFirst(""), reverse("añejo"))
	sub := s[1:3]
	s = "other"
	fmt.Println(sub, s)
	m := map[string]int{string(b): 1}
	b[0] = 'X'
	fmt.Println(m, m["Elder"])
	fmt.Println(string(append([]byte("ab"), "cd"...)))
	n := copy(b, "zz")
	fmt.Println(n, string(b))
}
