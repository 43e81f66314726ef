// Go specification, "Qualified identifiers" (package text/tabwriter): cells end with tabs, blocks align on their own.

package main

import (
	"fmt"
	"strings"
	"text/tabwriter"
)

func main() {
	var sb strings.Builder
	w := tabwriter.NewWriter(&sb, 5, 0, 1, ' ', tabwriter.AlignRight)
	for i := 1; i <= 4; i++ {
		for j := 1; j <= 4; j++ {
			fmt.Fprintf(w, "%d\t", i*j*j*j)
		}
		fmt.Fprintln(w)
	}
	if err := w.Flush(); err != nil {
		fmt.Println(err)
	}
	fmt.Print(sb.String())
	sb.Reset()
	w.Init(&sb, 0, 8, 1, ' ', 0)
	for _, l := range []string{"a\tb\tc", "aaaa\tbb\tc", "", "x\ty", "xxxxxxxx\ty", "no tabs here", "p\tq"} {
		fmt.Fprintln(w, l)
	}
	if err := w.Flush(); err != nil {
		fmt.Println(err)
	}
	for _, l := range strings.Split(strings.TrimSpace(sb.String()), "\n") {
		fmt.Printf("%q\n", l)
	}
}
