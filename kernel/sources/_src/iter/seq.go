// Package iter has the types of iterators and turns an iterator into one that is asked for each value.
package iter

// Seq hands its values to yield, one after the other, until yield returns false.
type Seq[V any] func(yield func(V) bool)

// Seq2 hands its pairs of values to yield, one after the other, until yield returns false.
type Seq2[K, V any] func(yield func(K, V) bool)
