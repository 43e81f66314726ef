package protocol

import "sync/atomic"

// Counters counts what was survived.
type Counters struct {
	Handshakes atomic.Uint64 // peers turned away before they had introduced themselves
	Oversized  atomic.Uint64 // peers cut off for a message larger than allowed
	Stalled    atomic.Uint64 // peers cut off because they took nothing
	Malformed  atomic.Uint64 // messages that were none
	Forged     atomic.Uint64 // messages whose signature did not fit
	Replayed   atomic.Uint64 // messages that came a second time
}
