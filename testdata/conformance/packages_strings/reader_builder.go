// Go specification, "Qualified identifiers" (package strings): Reader and Builder.

package main

import (
	"fmt"
	"io"
	"strings"
)

func main() {
	r := strings.NewReader("héllo wörld")
	b, err := r.ReadByte()
	fmt.Println(string(b), err, r.Len(), r.Size())
	ru, n, err := r.ReadRune()
	fmt.Println(string(ru), n, err)
	if err := r.UnreadRune(); err != nil {
		fmt.Println(err)
	}
	buf := make([]byte, 5)
	k, err := io.ReadFull(r, buf)
	fmt.Printf("%d %v %q\n", k, err, buf)
	rest, err := io.ReadAll(r)
	fmt.Printf("%q %v\n", rest, err)
	_, err = r.ReadByte()
	fmt.Println(err == io.EOF)
	pos, err := r.Seek(0, io.SeekStart)
	fmt.Println(pos, err, r.Len())
	var sb strings.Builder
	sb.Grow(64)
	for i := 3; i >= 1; i-- {
		fmt.Fprintf(&sb, "%d...", i)
	}
	sb.WriteString("start")
	sb.WriteRune('é')
	sb.WriteByte('!')
	fmt.Println(sb.String(), sb.Len(), sb.Cap() >= 64)
	sb.Reset()
	fmt.Printf("%q\n", sb.String())
}
