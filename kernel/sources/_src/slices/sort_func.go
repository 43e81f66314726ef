package slices

// SortFunc sorts in the order of cmp.
func SortFunc[S ~[]E, E any](x S, cmp func(a, b E) int) {
	SortStableFunc(x, cmp)
}

// SortStableFunc sorts in the order of cmp and leaves equal elements in the order they have. Whenever cmp is called x
// holds all its elements, so that a panic of cmp loses none.
func SortStableFunc[S ~[]E, E any](x S, cmp func(a, b E) int) {
	n := len(x)
	for lo := 0; lo < n; lo += runLen {
		insertionSortFunc(x[lo:min(lo+runLen, n)], cmp)
	}
	if n <= runLen {
		return
	}
	buf := make(S, n)
	for width := runLen; width < n; width *= 2 {
		for lo := 0; lo < n-width; lo += 2 * width {
			mid := lo + width
			hi := min(mid+width, n)
			if cmp(x[mid], x[mid-1]) < 0 {
				mergeRunsFunc(x[lo:hi], width, buf, cmp)
			}
		}
	}
}

// insertionSortFunc finds each place by halving; the elements move there in one copy.
func insertionSortFunc[S ~[]E, E any](x S, cmp func(a, b E) int) {
	for i := 1; i < len(x); i++ {
		v := x[i]
		if cmp(v, x[i-1]) >= 0 {
			continue
		}
		lo, hi := 0, i-1
		for lo < hi {
			mid := (lo + hi) / 2
			if cmp(v, x[mid]) < 0 {
				hi = mid
			} else {
				lo = mid + 1
			}
		}
		copy(x[lo+1:i+1], x[lo:i])
		x[lo] = v
	}
}

// mergeRunsFunc merges x[:mid] and x[mid:], both sorted and not empty, in buf, and copies the whole back.
func mergeRunsFunc[S ~[]E, E any](x S, mid int, buf S, cmp func(a, b E) int) {
	i, j := 0, mid
	a, b := x[0], x[mid]
	for k := 0; ; k++ {
		if cmp(b, a) < 0 {
			buf[k] = b
			j++
			if j == len(x) {
				copy(x[k+1:], x[i:mid]) // cmp is not called any more
				copy(x, buf[:k+1])
				return
			}
			b = x[j]
		} else {
			buf[k] = a
			i++
			if i == mid {
				copy(x, buf[:k+1])
				return
			}
			a = x[i]
		}
	}
}

// IsSortedFunc says whether x is in the order of cmp.
func IsSortedFunc[S ~[]E, E any](x S, cmp func(a, b E) int) bool {
	for i := len(x) - 1; i > 0; i-- {
		if cmp(x[i], x[i-1]) < 0 {
			return false
		}
	}
	return true
}
