// Go specification, "Qualified identifiers" (package strconv): reading typed columns by hand with positions in errors.

package main

import (
	"errors"
	"fmt"
	"strconv"
	"strings"
)

type reading struct {
	tank  string
	tempC float64
	full  bool
	n     int
}

func parse(line string) (r reading, err error) {
	f := strings.Split(line, ";")
	if len(f) != 4 {
		return r, fmt.Errorf("%d fields, want 4", len(f))
	}
	r.tank = f[0]
	if r.tempC, err = strconv.ParseFloat(f[1], 64); err != nil {
		return r, fmt.Errorf("field 2: %w", err)
	}
	if r.full, err = strconv.ParseBool(f[2]); err != nil {
		return r, fmt.Errorf("field 3: %w", err)
	}
	if r.n, err = strconv.Atoi(f[3]); err != nil {
		return r, fmt.Errorf("field 4: %w", err)
	}
	return r, nil
}

func main() {
	for i, l := range []string{"T1;18.5;true;3", "T2;x;true;3", "T3;1;maybe;3", "T4;-4e1;0;9z", "T5", "T6;7;F;12"} {
		r, err := parse(l)
		if err != nil {
			fmt.Printf("line %d: %v (syntax %t)\n", i+1, err, errors.Is(err, strconv.ErrSyntax))
			continue
		}
		fmt.Printf("%+v\n", r)
	}
}
