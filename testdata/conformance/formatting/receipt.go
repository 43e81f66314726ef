// Go specification, "Package fmt in ordinary use": an aligned receipt with totals.

package main

import (
	"fmt"
	"strings"
)

type item struct {
	name  string
	qty   int
	price float64
}

const line = "%-12.12s %3d × %7.2f = %8.2f\n"

func (it item) total() float64 { return float64(it.qty) * it.price }

func receipt(items []item, vat float64) string {
	var sb strings.Builder
	var sum float64
	for _, it := range items {
		sum += it.total()
		fmt.Fprintf(&sb, line, it.name, it.qty, it.price, it.total())
	}
	sb.WriteString(strings.Repeat("-", 38) + "\n")
	for _, row := range []struct {
		label string
		v     float64
	}{{"net", sum}, {fmt.Sprintf("tax %g%%", vat*100), sum * vat}, {"TOTAL", sum * (1 + vat)}} {
		fmt.Fprintf(&sb, "%28s %9.2f\n", row.label, row.v)
	}
	return sb.String()
}

func main() {
	fmt.Print(receipt([]item{{"Sloe gin", 6, 24.5}, {"Angelica liqueur", 12, 18.25}, {"Cork", 250, 0.04}}, 0.19))
	fmt.Print(receipt(nil, 0))
}
