package slices

import (
	"cmp"
	"iter"
)

// All gives the indices and elements in order.
func All[Slice ~[]E, E any](s Slice) iter.Seq2[int, E] {
	return func(yield func(int, E) bool) {
		for i, v := range s {
			if !yield(i, v) {
				return
			}
		}
	}
}

// Backward gives the indices and elements from the last to the first.
func Backward[Slice ~[]E, E any](s Slice) iter.Seq2[int, E] {
	return func(yield func(int, E) bool) {
		for i := len(s) - 1; i >= 0; i-- {
			if !yield(i, s[i]) {
				return
			}
		}
	}
}

// Values gives the elements in order.
func Values[Slice ~[]E, E any](s Slice) iter.Seq[E] {
	return func(yield func(E) bool) {
		for _, v := range s {
			if !yield(v) {
				return
			}
		}
	}
}

// Chunk gives s in pieces of n elements; the last may be shorter. It panics if n < 1.
func Chunk[Slice ~[]E, E any](s Slice, n int) iter.Seq[Slice] {
	if n < 1 {
		panic("cannot be less than 1")
	}
	return func(yield func(Slice) bool) {
		for rest := s; len(rest) > 0; {
			k := min(n, len(rest))
			if !yield(rest[:k:k]) {
				return
			}
			rest = rest[k:]
		}
	}
}

// AppendSeq appends the values of a sequence.
func AppendSeq[Slice ~[]E, E any](s Slice, seq iter.Seq[E]) Slice {
	for v := range seq {
		s = append(s, v)
	}
	return s
}

// Collect returns the values of a sequence, nil if there are none.
func Collect[E any](seq iter.Seq[E]) []E {
	var s []E
	for v := range seq {
		s = append(s, v)
	}
	return s
}

// Sorted returns the values of a sequence in ascending order, nil if there are none.
func Sorted[E cmp.Ordered](seq iter.Seq[E]) []E {
	s := Collect(seq)
	Sort(s)
	return s
}

// SortedFunc returns the values of a sequence in the order of cmp, nil if there are none.
func SortedFunc[E any](seq iter.Seq[E], cmp func(E, E) int) []E {
	s := Collect(seq)
	SortFunc(s, cmp)
	return s
}

// SortedStableFunc is SortedFunc that leaves equal values in the order of the sequence.
func SortedStableFunc[E any](seq iter.Seq[E], cmp func(E, E) int) []E {
	s := Collect(seq)
	SortStableFunc(s, cmp)
	return s
}
