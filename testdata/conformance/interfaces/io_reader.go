// Go specification, "Implementing an interface": own readers and writers used by the io package.

package main

import (
	"fmt"
	"io"
	"strings"
)

type rot struct{ r io.Reader }

func (r rot) Read(p []byte) (int, error) {
	n, err := r.r.Read(p)
	for i, c := range p[:n] {
		if c >= 'a' && c <= 'z' {
			p[i] = 'a' + (c-'a'+13)%26
		}
	}
	return n, err
}

type counter struct{ bytes, writes int }

func (c *counter) Write(p []byte) (int, error) {
	c.bytes += len(p)
	c.writes++
	return len(p), nil
}

type zeros int

func (z *zeros) Read(p []byte) (n int, err error) {
	for n < len(p) && *z > 0 {
		p[n] = '0'
		n++
		*z--
	}
	if n == 0 {
		err = io.EOF
	}
	return
}

func main() {
	b, err := io.ReadAll(rot{rot{strings.NewReader("slow still")}})
	fmt.Println(string(b), err)
	b, err = io.ReadAll(rot{strings.NewReader("slow still")})
	fmt.Println(string(b), err)
	var c counter
	n, err := fmt.Fprintf(&c, "%05d|%v", 42, []int{1, 2})
	fmt.Println(n, err, c)
	z := zeros(7)
	n64, err := io.Copy(&c, io.MultiReader(&z, strings.NewReader("xyz")))
	fmt.Println(n64, err, c.bytes)
	var sb strings.Builder
	_, err = io.Copy(io.MultiWriter(&sb, &c), io.LimitReader(strings.NewReader("abcdef"), 4))
	fmt.Println(sb.String(), err, c.bytes)
}
