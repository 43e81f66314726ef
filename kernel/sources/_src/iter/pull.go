package iter

// Pull returns next, which gives one value of the sequence a call and false when there are no more, and stop, which ends
// the sequence early. A panic of the sequence comes out of the call of next or stop that met it.
func Pull[V any](seq Seq[V]) (next func() (V, bool), stop func()) {
	b := newBaton("iter.Pull")
	var value V
	var given bool
	body := func() {
		seq(func(v V) bool {
			if !b.mayYield() {
				return false
			}
			value, given = v, true
			return b.toCaller()
		})
	}
	next = func() (v V, ok bool) {
		if !b.mayPull() {
			return
		}
		b.toSequence(body)
		if !given {
			return
		}
		var zero V
		v, ok = value, true
		value, given = zero, false
		return
	}
	stop = func() { b.stop(body) }
	return next, stop
}

// Pull2 is Pull for a sequence of pairs.
func Pull2[K, V any](seq Seq2[K, V]) (next func() (K, V, bool), stop func()) {
	b := newBaton("iter.Pull2")
	var key K
	var value V
	var given bool
	body := func() {
		seq(func(k K, v V) bool {
			if !b.mayYield() {
				return false
			}
			key, value, given = k, v, true
			return b.toCaller()
		})
	}
	next = func() (k K, v V, ok bool) {
		if !b.mayPull() {
			return
		}
		b.toSequence(body)
		if !given {
			return
		}
		var zeroK K
		var zeroV V
		k, v, ok = key, value, true
		key, value, given = zeroK, zeroV, false
		return
	}
	stop = func() { b.stop(body) }
	return next, stop
}
