//go:build unix

package engine

import (
	"fmt"
	"os"
	"strconv"

	"golang.org/x/sys/unix"
)

// openFiles is how many files a worker may hold open: its three pipes and what Go's poller needs.
const openFiles = 16

// limitSelf bounds what this worker may take from the system, for good: the size of its data (somewhat above what
// watchMemory allows), of files that it writes, the number of open files, and core dumps. The address space and the
// number of processes are left alone: Go reserves far more of the first than it uses, and the second counts all
// processes of the user.
func limitSelf(mib int) error {
	closeInherited()
	set := func(what string, resource int, most uint64) error {
		if err := unix.Setrlimit(resource, &unix.Rlimit{Cur: most, Max: most}); err != nil {
			return fmt.Errorf("cannot limit the worker's %s: %w", what, err)
		}
		return nil
	}
	if limitsData {
		if err := set("memory", unix.RLIMIT_DATA, uint64(mib+512)<<20); err != nil {
			return err
		}
	}
	if err := set("core dumps", unix.RLIMIT_CORE, 0); err != nil {
		return err
	}
	if err := set("file size", unix.RLIMIT_FSIZE, 0); err != nil {
		return err
	}
	return set("open files", unix.RLIMIT_NOFILE, openFiles)
}

// closeInherited closes what whoever started this program had left open, so that a cell does not find it. What Go itself
// has opened is marked to be closed at the start of another program; what came from another program cannot be.
func closeInherited() {
	open, err := os.ReadDir("/dev/fd")
	if err != nil {
		return
	}
	for _, entry := range open {
		fd, err := strconv.Atoi(entry.Name())
		if err != nil || fd <= 2 {
			continue
		}
		if flags, err := unix.FcntlInt(uintptr(fd), unix.F_GETFD, 0); err == nil && flags&unix.FD_CLOEXEC == 0 {
			_ = unix.Close(fd)
		}
	}
}

// limitsData says whether the system bounds the size of a worker's data. Memory of the race detector counts as data,
// and it takes far more than the program: under it there is no such limit.
var limitsData = raceEnv == nil

// limitsInForce says in words what limitSelf does.
func limitsInForce() []string {
	out := []string{"limits: a worker writes no file of any size, holds at most 16 files open and leaves no core dump"}
	if limitsData {
		return append(out, "limits: the system bounds the size of a worker's data")
	}
	return append(out, "limits: none on the size of data, because this program was built with the race detector")
}
