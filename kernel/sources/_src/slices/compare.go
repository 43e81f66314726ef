// Package slices works on slices of any type.
package slices

import "cmp"

// Equal says whether two slices have the same length and equal elements.
func Equal[S ~[]E, E comparable](s1, s2 S) bool {
	if len(s1) != len(s2) {
		return false
	}
	for i, v := range s1 {
		if v != s2[i] {
			return false
		}
	}
	return true
}

// EqualFunc says whether two slices have the same length and elements that eq calls equal.
func EqualFunc[S1 ~[]E1, S2 ~[]E2, E1, E2 any](s1 S1, s2 S2, eq func(E1, E2) bool) bool {
	if len(s1) != len(s2) {
		return false
	}
	for i, v := range s1 {
		if !eq(v, s2[i]) {
			return false
		}
	}
	return true
}

// Compare orders slices by their first elements that differ; else the shorter is the lesser.
func Compare[S ~[]E, E cmp.Ordered](s1, s2 S) int {
	for i, v := range s1 {
		if i >= len(s2) {
			return +1
		}
		w := s2[i]
		if v == w {
			continue
		}
		if c := cmp.Compare(v, w); c != 0 { // both may be NaN
			return c
		}
	}
	if len(s1) < len(s2) {
		return -1
	}
	return 0
}

// CompareFunc is Compare with a function that orders elements.
func CompareFunc[S1 ~[]E1, S2 ~[]E2, E1, E2 any](s1 S1, s2 S2, cmp func(E1, E2) int) int {
	for i, v := range s1 {
		if i >= len(s2) {
			return +1
		}
		if c := cmp(v, s2[i]); c != 0 {
			return c
		}
	}
	if len(s1) < len(s2) {
		return -1
	}
	return 0
}
