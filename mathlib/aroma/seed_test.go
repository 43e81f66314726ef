package aroma_test

import "flag"

// Random tests draw the same in every run, so that a run can be repeated; -rapid.seed draws otherwise.
func init() {
	if err := flag.Set("rapid.seed", "1512"); err != nil {
		panic(err)
	}
}
