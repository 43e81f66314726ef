// Go specification, "Qualified identifiers" (package strconv): parsing numbers and the errors' text.

package main

import (
	"fmt"
	"strconv"
)

func main() {
	for _, s := range []string{"42", "-7", "+5", "0x10", "1_000", "", "99999999999999999999", "3.5", " 1"} {
		n, err := strconv.Atoi(s)
		fmt.Println(n, err)
	}
	for _, s := range []string{"0x1F", "0b101", "0o17", "017", "1_000"} {
		n, err := strconv.ParseInt(s, 0, 64)
		fmt.Print(n, " ", err, "; ")
	}
	fmt.Println()
	n8, err := strconv.ParseInt("300", 10, 8)
	fmt.Println(n8, err)
	u, err := strconv.ParseUint("-1", 10, 64)
	fmt.Println(u, err)
	h, err := strconv.ParseUint("ff", 16, 8)
	fmt.Println(h, err)
	for _, s := range []string{"1e3", "-0", "inf", "NaN", "0x1p-2", "1e400", "1,5", ".5"} {
		f, err := strconv.ParseFloat(s, 64)
		fmt.Print(f, " ", err, "; ")
	}
	fmt.Println()
	for _, s := range []string{"true", "T", "0", "yes"} {
		b, err := strconv.ParseBool(s)
		fmt.Print(b, " ", err, "; ")
	}
	fmt.Println()
	_, err = strconv.ParseInt("7", 99, 64)
	fmt.Println(err)
}
