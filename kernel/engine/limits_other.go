//go:build !unix || race

package engine

// limitSelf does nothing here: Windows has no such limits, and the race detector needs a large address space.
// watchMemory works everywhere.
func limitSelf(int) error { return nil }
