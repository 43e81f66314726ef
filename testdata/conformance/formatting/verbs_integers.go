// Go specification, "Package fmt in ordinary use": integer verbs, flags, width and precision.

package main

import "fmt"

func main() {
	n := '*'
	fmt.Printf("%d|%5d|%-5d|%05d|%+d|% d|%x|%X|%#x|%o|%#o|%O|%b|%c|%q|%U|%#U\n", n, n, n, n, n, n, n, n, n, n, n, n, n, n, n, n, n)
	fmt.Printf("%d %x %b\n", -255, -255, -5)
	fmt.Printf("%8.3d|%-8.3d|%+.2d|%.0d|\n", 7, 7, 7, 0)
	fmt.Printf("%*d|%-*d|\n", 6, n, 6, n)
	fmt.Printf("%[3]*.[2]*[1]f|\n", 12.0, 2, 6)
	fmt.Printf("%[2]d %[1]d %d\n", 1, 2)
	fmt.Printf("%x %X % x %#x\n", []byte("gin"), "gin", "gin", []int{10, 11})
	fmt.Printf("%d %v %s\n", []byte("ab"), []byte("ab"), []byte("ab"))
	fmt.Printf("%t %v %5t|\n", true, false, true)
	fmt.Printf("%08b %o %#X\n", uint8(37), 0o755, uint16(48879))
	fmt.Printf("%c%c %q %+q %U\n", 'G', 0x6c34, '\n', 'é', '⌘')
	fmt.Printf("%3c|%-3c|%03d|%+03d\n", 'x', 'y', -5, 5)
	fmt.Printf("%d%%\n", 40)
}
