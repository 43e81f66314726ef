// Package engine runs cells in a worker process: the same binary, started again. The parent never runs a cell. It
// survives whatever the worker does, says which cell did it, starts another worker and replays the cells that had
// succeeded, with the same clock, seed and limits.
//
// In the worker a cell is checked (kernel/cell), run (kernel/eval) and its values are made into bundles
// (kernel/display). Parent and worker speak over the worker's standard input and output (wire.go).
//
// A program that starts workers calls WorkerIfAsked first of all in main, and in TestMain.
package engine
