// Go specification, "Qualified identifiers" (package strconv): formatting and appending.

package main

import (
	"fmt"
	"math"
	"strconv"
)

func main() {
	fmt.Println(strconv.Itoa(-45), strconv.FormatInt(255, 2), strconv.FormatInt(-255, 16), strconv.FormatUint(math.MaxUint64, 36))
	for _, f := range []float64{0.1, 1e21, 123456789, 1.0 / 3, 100} {
		fmt.Println(strconv.FormatFloat(f, 'f', -1, 64), strconv.FormatFloat(f, 'e', 3, 64), strconv.FormatFloat(f, 'g', 5, 64), strconv.FormatFloat(f, 'G', -1, 32))
	}
	b := []byte("x=")
	b = strconv.AppendInt(b, 7, 10)
	b = append(b, ' ')
	b = strconv.AppendBool(b, true)
	b = strconv.AppendQuote(b, "q\n")
	b = strconv.AppendFloat(b, 2.50, 'f', 2, 64)
	fmt.Println(string(b), strconv.FormatBool(false))
	fmt.Println(strconv.FormatFloat(math.Inf(-1), 'f', 1, 64), strconv.FormatFloat(math.NaN(), 'g', 1, 64))
}
