//go:build !linux

package engine

import "runtime"

func confineBySystem() error { return nil }

func systemInForce() []string {
	return []string{"system: no confinement by the system on " + runtime.GOOS +
		"; do not run a worksheet whose author you would not let run a program"}
}
