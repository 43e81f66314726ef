package protocol

import (
	"errors"
	"fmt"
	"io/fs"
	"net"
	"os"
	"path/filepath"
	"time"
)

// listenIPC opens a socket file that only its owner can use. A folder that is not there is made, for its owner alone.
func listenIPC(path string) (net.Listener, error) {
	dir := filepath.Dir(path)
	if err := os.MkdirAll(dir, 0o700); err != nil {
		return nil, fmt.Errorf("protocol: folder of the sockets: %w", err)
	}
	if st, err := os.Lstat(path); err == nil && st.Mode()&fs.ModeSocket != 0 {
		if c, err := net.DialTimeout("unix", path, time.Second); err == nil {
			return nil, errors.Join(fmt.Errorf("protocol: %s: another program listens there", path), c.Close())
		}
		if err := os.Remove(path); err != nil {
			return nil, fmt.Errorf("protocol: a socket left over: %w", err)
		}
	}
	l, err := net.Listen("unix", path)
	if err != nil {
		return nil, fmt.Errorf("protocol: %w", err)
	}
	if err := os.Chmod(path, 0o600); err != nil {
		return nil, errors.Join(fmt.Errorf("protocol: %w", err), l.Close())
	}
	return l, nil
}

// openFolder says whether others than the owner can enter the folder of the sockets.
func openFolder(prefix string) bool {
	st, err := os.Stat(filepath.Dir(prefix))
	return err == nil && st.Mode().Perm()&0o077 != 0
}
