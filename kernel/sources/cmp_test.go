package sources_test

import (
	"cmp"
	"fmt"
	"math"
	"testing"

	own "swanneck/kernel/sources/_src/cmp"
)

type grade string

func pairs[T cmp.Ordered](t *testing.T, vals ...T) {
	t.Helper()
	for _, x := range vals {
		for _, y := range vals {
			compare(t, fmt.Sprintf("Compare(%#v, %#v)", x, y), func() any { return own.Compare(x, y) }, func() any { return cmp.Compare(x, y) })
			compare(t, fmt.Sprintf("Less(%#v, %#v)", x, y), func() any { return own.Less(x, y) }, func() any { return cmp.Less(x, y) })
			compare(t, fmt.Sprintf("Or(%#v, %#v)", x, y), func() any { return own.Or(x, y) }, func() any { return cmp.Or(x, y) })
		}
	}
}

func TestCmp(t *testing.T) {
	allTested(t, "cmp", map[string]bool{"Compare": true, "Less": true, "Or": true})
	pairs(t, math.NaN(), math.Inf(-1), -1.5, math.Copysign(0, -1), 0, math.SmallestNonzeroFloat64, 1.5, math.Inf(1))
	pairs(t, float32(math.NaN()), 0, 1)
	pairs(t, math.MinInt, -1, 0, 1, math.MaxInt)
	pairs(t, uint8(0), 1, 255)
	pairs[grade](t, "", "a", "ab", "b")
	compare(t, "Or()", func() any { return own.Or[int]() }, func() any { return cmp.Or[int]() })
	compare(t, "Or of interfaces", func() any { return own.Or[any](nil, 0, 1) }, func() any { return cmp.Or[any](nil, 0, 1) })
	compare(t, "Or of slices", func() any { return own.Or[any]([]int{1}) }, func() any { return cmp.Or[any]([]int{1}) })
}
