package yield_test

import "flag"

// Random tests draw the same in every run, so that a run can be repeated; -rapid.seed draws otherwise.
func init() {
	if err := flag.Set("rapid.seed", "1512"); err != nil {
		panic(err)
	}
}

// the takes a value and the error that came with it, which must be nil.
func the[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}
