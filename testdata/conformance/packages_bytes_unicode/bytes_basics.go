// Go specification, "Qualified identifiers" (package bytes): searching, splitting, comparing.

package main

import (
	"bytes"
	"fmt"
)

func main() {
	b := []byte("heads,hearts,tails")
	parts := bytes.Split(b, []byte(","))
	fmt.Printf("%s %d %q\n", parts, len(parts), bytes.Fields([]byte(" a b ")))
	fmt.Println(bytes.Contains(b, []byte("art")), bytes.Index(b, []byte("t")), bytes.Count(b, []byte("s")), bytes.IndexByte(b, 'z'))
	fmt.Println(bytes.Equal([]byte("a"), []byte{97}), bytes.Equal(nil, []byte{}), bytes.Compare([]byte("a"), []byte("b")))
	fmt.Printf("%s %s %s\n", bytes.ToUpper(b), bytes.TrimSuffix(b, []byte("tails")), bytes.ReplaceAll(b, []byte("s"), nil))
	fmt.Printf("%s|%s|%q\n", bytes.Title([]byte("low wines")), bytes.Repeat([]byte("ab"), 2), bytes.Join([][]byte{[]byte("x"), nil, []byte("y")}, []byte("-")))
	c := bytes.Clone(b)
	c[0] = 'H'
	fmt.Println(string(b[:5]), string(c[:5]), bytes.HasPrefix(c, []byte("H")), bytes.EqualFold(b, c))
	parts[0] = append(parts[0], '!')
	fmt.Println(string(b))
	fmt.Println(bytes.Map(func(r rune) rune { return r + 1 }, []byte("HAL")), bytes.Runes([]byte("é")))
	fmt.Printf("%q %v\n", bytes.TrimSpace([]byte("\t x \n")), bytes.ContainsAny(b, "xyz"))
}
