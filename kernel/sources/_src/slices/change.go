package slices

// Insert puts v before element i. It panics if i > len(s).
func Insert[S ~[]E, E any](s S, i int, v ...E) S {
	tail := s[i:]
	if len(v) == 0 {
		return s
	}
	n := len(s) + len(v)
	var r S
	if n > cap(s) {
		r = stretch(s, n)
	} else {
		r = s[:n]
		v = append([]E(nil), v...) // it may be a part of s
	}
	copy(r[i+len(v):], tail)
	copy(r[i:], v)
	return r
}

// Replace puts v in the place of s[i:j]. It panics if j > len(s) or i > j.
func Replace[S ~[]E, E any](s S, i, j int, v ...E) S {
	_ = s[i:j]
	tail := s[j:]
	n := i + len(v) + len(tail)
	var r S
	if n > cap(s) {
		r = stretch(s, n)
	} else {
		r = s[:n]
		v = append([]E(nil), v...) // it may be a part of s
	}
	copy(r[i+len(v):], tail)
	copy(r[i:], v)
	if n < len(s) {
		clear(s[n:])
	}
	return r
}

// stretch returns a copy of s, and of what stands behind its end, that is n > cap(s) long. It has the capacity that
// append gives.
func stretch[S ~[]E, E any](s S, n int) S {
	return append(s[:cap(s)], make(S, n-cap(s))...)
}

// Delete takes s[i:j] out and clears what is left over at the end. It panics if j > len(s) or i > j.
func Delete[S ~[]E, E any](s S, i, j int) S {
	_ = s[i:j:len(s)]
	if i == j {
		return s
	}
	n := i + copy(s[i:], s[j:])
	clear(s[n:])
	return s[:n]
}

// DeleteFunc takes out the elements that del returns true for and clears what is left over at the end.
func DeleteFunc[S ~[]E, E any](s S, del func(E) bool) S {
	n := 0
	for i, v := range s {
		if del(v) {
			continue
		}
		if n < i {
			s[n] = v
		}
		n++
	}
	clear(s[n:])
	return s[:n]
}

// Compact keeps the first of equal neighbours and clears what is left over at the end.
func Compact[S ~[]E, E comparable](s S) S {
	if len(s) < 2 {
		return s
	}
	n, last := 1, s[0]
	for i := 1; i < len(s); i++ {
		v := s[i]
		if v != last {
			if n < i {
				s[n] = v
			}
			n++
		}
		last = v
	}
	clear(s[n:])
	return s[:n]
}

// CompactFunc is Compact with a function that says which neighbours are equal.
func CompactFunc[S ~[]E, E any](s S, eq func(E, E) bool) S {
	if len(s) < 2 {
		return s
	}
	n, last := 1, s[0]
	for i := 1; i < len(s); i++ {
		v := s[i]
		if !eq(v, last) {
			if n < i {
				s[n] = v
			}
			n++
		}
		last = v
	}
	clear(s[n:])
	return s[:n]
}

// Reverse turns the order of the elements round.
func Reverse[S ~[]E, E any](s S) {
	for i, j := 0, len(s)-1; i < j; i, j = i+1, j-1 {
		s[i], s[j] = s[j], s[i]
	}
}
