package slices

import "cmp"

// Min returns the least element, NaN if there is one. It panics if there is none.
func Min[S ~[]E, E cmp.Ordered](x S) E {
	if len(x) == 0 {
		panic("slices.Min: empty list")
	}
	least := x[0]
	for _, v := range x[1:] {
		least = min(least, v)
	}
	return least
}

// Max returns the greatest element, NaN if there is one. It panics if there is none.
func Max[S ~[]E, E cmp.Ordered](x S) E {
	if len(x) == 0 {
		panic("slices.Max: empty list")
	}
	greatest := x[0]
	for _, v := range x[1:] {
		greatest = max(greatest, v)
	}
	return greatest
}

// MinFunc returns the first of the elements that no other comes before. It panics if there is none.
func MinFunc[S ~[]E, E any](x S, cmp func(a, b E) int) E {
	if len(x) == 0 {
		panic("slices.MinFunc: empty list")
	}
	least := x[0]
	for _, v := range x[1:] {
		if cmp(v, least) < 0 {
			least = v
		}
	}
	return least
}

// MaxFunc returns the first of the elements that no other comes after. It panics if there is none.
func MaxFunc[S ~[]E, E any](x S, cmp func(a, b E) int) E {
	if len(x) == 0 {
		panic("slices.MaxFunc: empty list")
	}
	greatest := x[0]
	for _, v := range x[1:] {
		if cmp(v, greatest) > 0 {
			greatest = v
		}
	}
	return greatest
}
