// Go specification, "Qualified identifiers" (package encoding/csv): totals by group from a small table.

package main

import (
	"encoding/csv"
	"errors"
	"fmt"
	"maps"
	"math"
	"slices"
	"strconv"
	"strings"
)

const sales = `day,product,bottles,price
mon,gin,3,28.50
mon,rum,1,31.00
tue,gin,2,28.50
wed,pastis,0,19.90
wed,rum,x,31.00
wed,gin,4,28.50
`

type total struct {
	bottles int
	cents   int
}

func load(s string) (map[string]*total, []error) {
	out := map[string]*total{}
	var errs []error
	recs, err := csv.NewReader(strings.NewReader(s)).ReadAll()
	if err != nil {
		return nil, []error{err}
	}
	col := map[string]int{}
	for i, h := range recs[0] {
		col[h] = i
	}
	for i, rec := range recs[1:] {
		n, err1 := strconv.Atoi(rec[col["bottles"]])
		p, err2 := strconv.ParseFloat(rec[col["price"]], 64)
		if err := errors.Join(err1, err2); err != nil {
			errs = append(errs, fmt.Errorf("row %d: %w", i+2, err))
			continue
		}
		k := rec[col["product"]]
		if out[k] == nil {
			out[k] = &total{}
		}
		out[k].bottles += n
		out[k].cents += n * int(math.Round(p*100))
	}
	return out, errs
}

func main() {
	totals, errs := load(sales)
	for _, k := range slices.Sorted(maps.Keys(totals)) {
		t := totals[k]
		fmt.Printf("%-8s %3d %8.2f\n", k, t.bottles, float64(t.cents)/100)
	}
	fmt.Println(errs)
}
