// Package protocol speaks the open messaging protocol of notebooks (version 5.5) with front ends: it opens the five
// sockets that a connection file names, verifies and signs messages, and has an engine run the cells.
//
// Who does what:
//
//	shell      one goroutine receives and queues; one runs requests in their order and alone sends replies
//	control    one goroutine of its own: an interrupt or a shutdown never waits for a cell
//	heartbeat  one goroutine of its own, which returns what it gets
//	stdin      one goroutine receives; the shell's goroutine asks
//	output     one goroutine sends everything that goes to subscribers, in order (output.go)
//
// The sockets library is reached through a transport of our own (transport.go), which shakes hands before the library
// sees a connection, knows where messages begin and end, and bounds what a peer can claim or hold up.
//
// What was run is kept in a file that several kernels share (historyfile.go): whoever appends or rewrites holds a lock.
//
// The names of messages and fields are the protocol's; all other names are ours.
package protocol
