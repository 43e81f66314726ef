//go:build !race

package engine

var raceEnv []string
