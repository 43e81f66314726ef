// Go specification, "Conversions": constants converted to typed values.

package main

import (
	"fmt"
	"math"
	"time"
)

type Percent float32
type Code rune
type Flag bool
type ID string

func main() {
	fmt.Println(Percent(43)/2, Code('x'), Flag(1 < 2), ID("a")+"b", Flag(true) && !Flag(false))
	fmt.Printf("%T %T %T %T\n", Percent(1)*2, Code('a')+1, Flag(3 > 2), ID('x'))
	fmt.Println(uint8(255), int8(-128), float32(0.49999999), float64(-1e-1000), complex64(2))
	fmt.Println(string('水'), string(rune(0x10FFFF)) != "", []byte("é"), []rune("é")[0], iconv(3.0))
	const big = 1 << 40
	fmt.Println(float32(big), int64(big), big>>38, uint16(big>>30))
	var f Percent = 12.5
	fmt.Println(int(f), float64(f)*2, int(f*10)%10, uint8(int(f)))
	fmt.Println(math.Float32frombits(uint32(0x40490fdb)), time.Duration(2.5e9), time.Month(3))
}

func iconv(i int) string { return fmt.Sprint(i, float64(i)/2) }
