package slices

const maxInt = int(^uint(0) >> 1)

// Clone returns a copy, nil for nil.
func Clone[S ~[]E, E any](s S) S {
	if s == nil {
		return nil
	}
	return append(S{}, s...)
}

// Concat returns one new slice of the elements of all, nil if there are none.
func Concat[S ~[]E, E any](slices ...S) S {
	n := 0
	for _, s := range slices {
		n += len(s)
		if n < 0 {
			panic("len out of range")
		}
	}
	if n == 0 {
		return nil
	}
	r := make(S, 0, n)
	for _, s := range slices {
		r = append(r, s...)
	}
	return r
}

// Repeat returns a new slice, never nil, with the elements of x count times. It panics if count is negative or the
// result too long.
func Repeat[S ~[]E, E any](x S, count int) S {
	if count < 0 {
		panic("cannot be negative")
	}
	if len(x) > 0 && count > maxInt/len(x) {
		panic("the result of (len(x) * count) overflows")
	}
	r := make(S, len(x)*count)
	for n := copy(r, x); n > 0 && n < len(r); {
		n += copy(r[n:], r[:n])
	}
	return r
}

// Grow makes room for n more elements. It panics if n is negative or too large.
func Grow[S ~[]E, E any](s S, n int) S {
	if n < 0 {
		panic("cannot be negative")
	}
	if n <= cap(s)-len(s) {
		return s
	}
	return append(s[:cap(s)], make(S, n-cap(s)+len(s))...)[:len(s)]
}

// Clip gives away the room behind the last element.
func Clip[S ~[]E, E any](s S) S {
	return s[:len(s):len(s)]
}
