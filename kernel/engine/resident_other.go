//go:build !linux

package engine

// residentMiB is not known here; the worker's own watch remains.
func residentMiB(int) (mib int, ok bool) { return 0, false }
