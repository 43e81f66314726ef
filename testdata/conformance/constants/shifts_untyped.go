// Go specification, "Operators": the type of an untyped constant shift comes from its context.

package main

import "fmt"

func main() {
	var s uint = 4
	var i = 1 << s
	var j int32 = 1 << s
	var k = uint64(1 << s)
	var w int64 = 1.0 << 3
	var u8 uint8 = 255
	fmt.Println(i, j, k, w)
	fmt.Println(u8<<1, u8>>1, uint16(u8)<<1, -1>>s)
	fmt.Printf("%T %T %T\n", i, j, k)
	var b = make([]byte, 1<<s)
	fmt.Println(len(b), b[1<<2])
	var big uint = 70
	fmt.Println(1<<big == 0, int32(1)<<(big-39), u8*2*128)
	const c = 1 << 3.0
	fmt.Println(c, u8&^(1<<s))
}
