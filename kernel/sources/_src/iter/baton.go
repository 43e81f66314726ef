package iter

// baton lets the caller of next and the goroutine of the sequence run in turn, never both.
type baton struct {
	name     string
	caller   chan struct{} // wakes the caller
	sequence chan struct{} // wakes the sequence
	started  bool
	running  bool // it is the sequence's turn
	over     bool // the sequence has ended, or is asked to end
	failed   any  // the panic that ended the sequence
}

func newBaton(name string) *baton {
	return &baton{name: name, caller: make(chan struct{}), sequence: make(chan struct{})}
}

// mayPull says whether there may be another value.
func (b *baton) mayPull() bool {
	if b.over {
		return false
	}
	if b.running {
		panic(b.name + ": next called again before yield")
	}
	return true
}

// mayYield says whether another value is wanted.
func (b *baton) mayYield() bool {
	if b.over {
		return false
	}
	if !b.running {
		panic(b.name + ": yield called again before next")
	}
	return true
}

// toCaller ends the sequence's turn, waits for the next one and says whether another value is wanted then.
func (b *baton) toCaller() bool {
	b.caller <- struct{}{}
	<-b.sequence
	return !b.over
}

// toSequence gives the sequence a turn. It starts body in the first.
func (b *baton) toSequence(body func()) {
	b.running = true
	if b.started {
		b.sequence <- struct{}{}
	} else {
		b.started = true
		go b.run(body)
	}
	<-b.caller
	b.running = false
	if b.failed != nil {
		panic(b.failed)
	}
}

// run is the sequence's goroutine.
func (b *baton) run(body func()) {
	defer func() {
		b.failed = recover()
		b.over = true
		b.caller <- struct{}{}
	}()
	body()
}

// stop ends the sequence. Called by the sequence itself it only makes yield return false.
func (b *baton) stop(body func()) {
	if b.over {
		return
	}
	b.over = true
	if b.started && !b.running {
		b.toSequence(body)
	}
}
