//go:build unix && !race

package engine

import (
	"fmt"

	"golang.org/x/sys/unix"
)

// limitSelf bounds what this worker may take from the system, for good: the size of its data (somewhat above what
// watchMemory allows), and core dumps.
func limitSelf(mib int) error {
	data := uint64(mib+512) << 20
	if err := unix.Setrlimit(unix.RLIMIT_DATA, &unix.Rlimit{Cur: data, Max: data}); err != nil {
		return fmt.Errorf("cannot limit the worker's memory: %w", err)
	}
	if err := unix.Setrlimit(unix.RLIMIT_CORE, &unix.Rlimit{}); err != nil {
		return fmt.Errorf("cannot switch off core dumps: %w", err)
	}
	return nil
}
