//go:build !unix

package engine

// limitSelf does nothing here: there are no such limits. watchMemory works everywhere.
func limitSelf(int) error { return nil }

func limitsInForce() []string {
	return []string{"limits: none on this system; only the watch on memory"}
}
