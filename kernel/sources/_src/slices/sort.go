package slices

import "cmp"

// runLen is the length of the pieces that are sorted by insertion before they are merged.
const runLen = 16

// Sort sorts in ascending order, NaN first.
func Sort[S ~[]E, E cmp.Ordered](x S) {
	nans := 0
	for i, v := range x {
		if v != v {
			x[i], x[nans] = x[nans], v
			nans++
		}
	}
	x = x[nans:]
	n := len(x)
	for lo := 0; lo < n; lo += runLen {
		insertionSort(x[lo:min(lo+runLen, n)])
	}
	if n <= runLen {
		return
	}
	buf := make(S, n)
	for width := runLen; width < n; width *= 2 {
		for lo := 0; lo < n-width; lo += 2 * width {
			mid := lo + width
			hi := min(mid+width, n)
			if x[mid] < x[mid-1] {
				mergeRuns(x[lo:hi], width, buf)
			}
		}
	}
}

// insertionSort finds each place by halving; the elements move there in one copy.
func insertionSort[S ~[]E, E cmp.Ordered](x S) {
	for i := 1; i < len(x); i++ {
		v := x[i]
		if v >= x[i-1] {
			continue
		}
		lo, hi := 0, i-1
		for lo < hi {
			mid := (lo + hi) / 2
			if v < x[mid] {
				hi = mid
			} else {
				lo = mid + 1
			}
		}
		copy(x[lo+1:i+1], x[lo:i])
		x[lo] = v
	}
}

// mergeRuns merges x[:mid] and x[mid:], both sorted and not empty.
func mergeRuns[S ~[]E, E cmp.Ordered](x S, mid int, buf S) {
	left := buf[:mid]
	copy(left, x)
	i, j := 0, mid
	a, b := left[0], x[mid]
	for k := 0; ; k++ {
		if b < a {
			x[k] = b
			j++
			if j == len(x) {
				copy(x[k+1:], left[i:])
				return
			}
			b = x[j]
		} else {
			x[k] = a
			i++
			if i == mid {
				return // the rest of the right run stands where it belongs
			}
			a = left[i]
		}
	}
}

// IsSorted says whether x is in ascending order, NaN first.
func IsSorted[S ~[]E, E cmp.Ordered](x S) bool {
	for i := 1; i < len(x); i++ {
		a, b := x[i-1], x[i]
		if b < a || b != b && a == a {
			return false
		}
	}
	return true
}
