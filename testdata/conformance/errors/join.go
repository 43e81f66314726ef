// Go specification, "Errors": errors.Join, its text, and searching in the tree.

package main

import (
	"errors"
	"fmt"
	"strconv"
)

type fieldError struct{ field, msg string }

func (f fieldError) Error() string { return f.field + ": " + f.msg }

type form struct {
	name string
	abv  float64
	year int
}

func (f form) Validate() error {
	var errs []error
	if f.name == "" {
		errs = append(errs, fieldError{"name", "empty"})
	}
	if f.abv < 0 || f.abv > 100 {
		errs = append(errs, fieldError{"abv", fmt.Sprintf("%g out of range", f.abv)})
	}
	if f.year < 1900 {
		errs = append(errs, fmt.Errorf("old: %w", fieldError{"year", strconv.Itoa(f.year)}))
	}
	return errors.Join(errs...)
}

func main() {
	for _, f := range []form{{"gin", 43, 2020}, {"", 143, 12}, {"x", -1, 2000}} {
		err := f.Validate()
		fmt.Printf("%v\n%q\n", err, fmt.Sprint(err))
		var fe fieldError
		found := errors.As(err, &fe)
		fmt.Println(found, fe.field, errors.Is(err, fieldError{"abv", "-1 out of range"}))
		if m, ok := err.(interface{ Unwrap() []error }); ok {
			fmt.Println(len(m.Unwrap()))
		}
	}
	fmt.Println(errors.Join(nil, nil) == nil, errors.Join() == nil)
}
