package engine

import (
	"fmt"
	"os"
)

// residentMiB returns the memory that a process holds, in MiB.
func residentMiB(pid int) (mib int, ok bool) {
	b, err := os.ReadFile(fmt.Sprintf("/proc/%d/statm", pid))
	if err != nil {
		return 0, false
	}
	var size, resident int
	if _, err := fmt.Sscan(string(b), &size, &resident); err != nil {
		return 0, false
	}
	return resident * os.Getpagesize() >> 20, true
}
