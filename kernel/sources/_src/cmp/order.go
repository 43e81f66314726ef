// Package cmp puts values in order.
package cmp

// Ordered is the constraint of the types that < orders.
type Ordered interface {
	~int | ~int8 | ~int16 | ~int32 | ~int64 |
		~uint | ~uint8 | ~uint16 | ~uint32 | ~uint64 | ~uintptr |
		~float32 | ~float64 |
		~string
}

// Less says whether x comes before y. NaN comes before every number.
func Less[T Ordered](x, y T) bool {
	return x < y || x != x && y == y
}

// Compare is -1 if x comes before y, +1 if it comes after, else 0. NaN comes before every number and equals NaN.
func Compare[T Ordered](x, y T) int {
	switch {
	case x < y:
		return -1
	case x > y:
		return +1
	case x == y:
		return 0
	case y == y: // x alone is NaN
		return -1
	case x == x: // y alone is NaN
		return +1
	}
	return 0
}

// Or returns the first value that is not zero, or zero.
func Or[T comparable](vals ...T) T {
	var zero T
	for _, v := range vals {
		if v != zero {
			return v
		}
	}
	return zero
}
