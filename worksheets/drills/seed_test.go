package drills

import "flag"

// Random tests draw the same in every run, so that a run can be repeated; -rapid.seed and -rapid.checks draw otherwise.
func init() {
	for name, value := range map[string]string{"rapid.seed": "1512", "rapid.checks": "2000"} {
		if err := flag.Set(name, value); err != nil {
			panic(err)
		}
	}
}
