// Go specification, "Qualified identifiers" (package bytes): Buffer as reader and writer.

package main

import (
	"bytes"
	"fmt"
	"strings"
)

func main() {
	var buf bytes.Buffer
	buf.WriteString("one\ntwo\n")
	buf.WriteByte('3')
	buf.WriteRune('é')
	fmt.Fprintf(&buf, " %03d", 7)
	fmt.Printf("%q %d\n", buf.String(), buf.Len())
	for {
		line, err := buf.ReadString('\n')
		fmt.Printf("%q %v\n", line, err)
		if err != nil {
			break
		}
	}
	fmt.Println(buf.Len(), buf.String() == "")
	buf.Write([]byte("abcdef"))
	p := buf.Next(2)
	c, err := buf.ReadByte()
	fmt.Println(string(p), string(c), err, buf.String())
	if err := buf.UnreadByte(); err != nil {
		fmt.Println(err)
	}
	buf.Truncate(2)
	fmt.Println(buf.String(), string(buf.Bytes()))
	other := bytes.NewBufferString("xyz")
	n, err := buf.ReadFrom(other)
	fmt.Println(n, err, buf.String())
	var sb strings.Builder
	m, err := buf.WriteTo(&sb)
	fmt.Println(m, err, sb.String(), buf.Len())
	var nilBuf *bytes.Buffer
	fmt.Println(nilBuf.String())
	buf.Reset()
	_, err = buf.ReadByte()
	fmt.Println(err)
}
