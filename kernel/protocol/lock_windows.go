package protocol

import (
	"errors"
	"os"

	"golang.org/x/sys/windows"
)

// lockFile locks an open file against other processes, and against other openings in this one, until it is closed. The
// error is errBusy if somebody else holds it. A process that dies gives its locks back. What is locked is a byte far
// behind the text, which stays readable.
func lockFile(f *os.File) error {
	at := windows.Overlapped{OffsetHigh: 1}
	err := windows.LockFileEx(windows.Handle(f.Fd()), windows.LOCKFILE_EXCLUSIVE_LOCK|windows.LOCKFILE_FAIL_IMMEDIATELY, 0, 1, 0, &at)
	if errors.Is(err, windows.ERROR_LOCK_VIOLATION) || errors.Is(err, windows.ERROR_IO_PENDING) {
		return errBusy
	}
	return err
}
