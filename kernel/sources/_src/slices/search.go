package slices

import "cmp"

// Index returns the index of the first element equal to v, or -1.
func Index[S ~[]E, E comparable](s S, v E) int {
	for i, w := range s {
		if v == w {
			return i
		}
	}
	return -1
}

// IndexFunc returns the index of the first element that f returns true for, or -1.
func IndexFunc[S ~[]E, E any](s S, f func(E) bool) int {
	for i, v := range s {
		if f(v) {
			return i
		}
	}
	return -1
}

// Contains says whether an element equals v.
func Contains[S ~[]E, E comparable](s S, v E) bool {
	for _, w := range s {
		if v == w {
			return true
		}
	}
	return false
}

// ContainsFunc says whether f returns true for an element.
func ContainsFunc[S ~[]E, E any](s S, f func(E) bool) bool {
	for _, v := range s {
		if f(v) {
			return true
		}
	}
	return false
}

// BinarySearch returns where target stands first in a sorted slice, or would stand, and whether it is there.
func BinarySearch[S ~[]E, E cmp.Ordered](x S, target E) (int, bool) {
	lo, hi := 0, len(x)
	number := target == target
	for lo < hi {
		mid := lo + (hi-lo)/2
		v := x[mid]
		if v < target || v != v && number {
			lo = mid + 1
		} else {
			hi = mid
		}
	}
	if lo == len(x) {
		return lo, false
	}
	v := x[lo]
	return lo, v == target || v != v && !number
}

// BinarySearchFunc is BinarySearch with a function that orders elements and targets.
func BinarySearchFunc[S ~[]E, E, T any](x S, target T, cmp func(E, T) int) (int, bool) {
	lo, hi := 0, len(x)
	for lo < hi {
		mid := lo + (hi-lo)/2
		if cmp(x[mid], target) < 0 {
			lo = mid + 1
		} else {
			hi = mid
		}
	}
	return lo, lo < len(x) && cmp(x[lo], target) == 0
}
