//go:build linux || darwin || freebsd || netbsd || openbsd

package sweep

import (
	"errors"
	"os"
	"syscall"
)

const locks = true

// lock keeps a second sweep from writing the same journal, for as long as the file is open. A file system that knows no
// locks is no mistake.
func lock(f *os.File) error {
	err := syscall.Flock(int(f.Fd()), syscall.LOCK_EX|syscall.LOCK_NB)
	if errors.Is(err, syscall.EWOULDBLOCK) {
		return err
	}
	return nil
}
