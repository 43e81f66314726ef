//go:build race

package engine

// raceEnv keeps a worker under the race detector from waiting a second before it ends.
var raceEnv = []string{"GORACE=atexit_sleep_ms=0"}
