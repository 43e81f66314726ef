// Package maps works on maps of any type.
package maps

// Equal says whether two maps hold the same keys with equal values.
func Equal[M1, M2 ~map[K]V, K, V comparable](m1 M1, m2 M2) bool {
	if len(m1) != len(m2) {
		return false
	}
	for k, v := range m1 {
		w, ok := m2[k]
		if !ok || v != w {
			return false
		}
	}
	return true
}

// EqualFunc says whether two maps hold the same keys with values that eq calls equal.
func EqualFunc[M1 ~map[K]V1, M2 ~map[K]V2, K comparable, V1, V2 any](m1 M1, m2 M2, eq func(V1, V2) bool) bool {
	if len(m1) != len(m2) {
		return false
	}
	for k, v := range m1 {
		w, ok := m2[k]
		if !ok || !eq(v, w) {
			return false
		}
	}
	return true
}

// Clone returns a copy of m, nil for nil.
func Clone[M ~map[K]V, K comparable, V any](m M) M {
	if m == nil {
		return nil
	}
	c := make(M, len(m))
	for k, v := range m {
		c[k] = v
	}
	return c
}

// Copy puts all of src into dst.
func Copy[M1 ~map[K]V, M2 ~map[K]V, K comparable, V any](dst M1, src M2) {
	for k, v := range src {
		dst[k] = v
	}
}

// DeleteFunc removes what del returns true for.
func DeleteFunc[M ~map[K]V, K comparable, V any](m M, del func(K, V) bool) {
	for k, v := range m {
		if del(k, v) {
			delete(m, k)
		}
	}
}
