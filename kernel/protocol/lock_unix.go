//go:build darwin || dragonfly || freebsd || linux || netbsd || openbsd

package protocol

import (
	"errors"
	"os"

	"golang.org/x/sys/unix"
)

// lockFile locks an open file against other processes, and against other openings in this one, until it is closed. The
// error is errBusy if somebody else holds it. A process that dies gives its locks back.
func lockFile(f *os.File) error {
	for {
		err := unix.Flock(int(f.Fd()), unix.LOCK_EX|unix.LOCK_NB)
		switch {
		case errors.Is(err, unix.EINTR):
		case errors.Is(err, unix.EWOULDBLOCK):
			return errBusy
		default:
			return err
		}
	}
}
