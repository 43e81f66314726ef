// Go specification, "Lexical elements": integer, float, imaginary and rune literals in every notation.

package main

import "fmt"

func main() {
	fmt.Println(42, 0b101010, 0o52, 052, 0x2A, 0x2a, 1_000_000, 0x_ff, 0b_1111_0000)
	fmt.Println(0., 72.40, 072.40, 1.e+0, 6.67428e-11, 1e6, .25, .12345e+5, 1_5., 0.15e+02)
	fmt.Println(0x1p-2, 0x2.p10, 0x1.Fp+0, 0x.8p1, 0x15e-2)
	fmt.Println(0i, 123i, 0o123i, 0xabci, 1.e+0i, 1e6i, .25i)
	fmt.Println('a', 'ä', '本', '\t', '\000', '\007', '\x07', '\xff', '\u12e4', '\U00101234', '\'')
	for _, s := range []string{"日本語", "\u65e5\u672c\u8a9e", "\U000065e5\U0000672c\U00008a9e", "\xe6\x97\xa5\xe6\x9c\xac\xe8\xaa\x9e"} {
		fmt.Print(s, " ", s == "日本語", " ")
	}
	fmt.Println()
	fmt.Printf("%q %q\n", `\n
\n`, "\a\b\f\n\r\t\v\\\"")
}
