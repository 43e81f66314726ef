// Go specification, "Goto statements": backward and forward jumps.

package main

import "fmt"

func count(n int) (steps int) {
again:
	if n == 1 {
		return
	}
	steps++
	if n%2 == 0 {
		n /= 2
		goto again
	}
	n = 3*n + 1
	goto again
}

func parse(s string) (kind string) {
	i := 0
start:
	if i == len(s) {
		goto end
	}
	switch c := s[i]; {
	case c >= '0' && c <= '9':
		kind += "d"
	case c == ' ':
		i++
		goto start
	case c == '#':
		goto end
	default:
		kind += "?"
	}
	i++
	goto start
end:
	return kind + "."
}

func main() {
	fmt.Println(count(27), count(1), count(8))
	fmt.Println(parse("12 a4"), parse("1#99"), parse(""))
	i := 0
loop:
	if i < 3 {
		fmt.Print(i, " ")
		i++
		goto loop
	}
	fmt.Println("out")
	for j := range 10 {
		if j == 4 {
			goto done
		}
	}
	fmt.Println("not printed")
done:
	fmt.Println("done")
}
