package protocol

import (
	"bytes"
	"encoding/binary"
	"errors"
	"fmt"
	"io"
	"net"
	"strings"
	"time"
)

// Handshake of the transport protocol of the sockets.
//
// Source: 23/ZMTP, version 3.0, sections "Connection Lifecycle" and "The NULL Security Mechanism".
const (
	greetingLen   = 64
	mostReady     = 4096 // bytes of a READY command; peers send some 40
	handshakeTime = 10 * time.Second
)

// Bits of the flags octet of a frame.
const (
	flagMore    = 1
	flagLong    = 2
	flagCommand = 4
)

// shake does the peer's half of the handshake before the library sees the connection, within a deadline: the library
// does it in its accept loop, where a silent peer keeps everybody else out, and trusts the lengths a peer claims. It
// returns what was read, for the library to read again.
func shake(c net.Conn, peers []string, within time.Duration) ([]byte, error) {
	if err := c.SetDeadline(time.Now().Add(within)); err != nil {
		return nil, err
	}
	if _, err := c.Write(greeting()); err != nil {
		return nil, fmt.Errorf("protocol: greeting: %w", err)
	}
	seen := make([]byte, greetingLen, greetingLen+64)
	if _, err := io.ReadFull(c, seen[:10]); err != nil {
		return nil, fmt.Errorf("protocol: greeting: %w", err)
	}
	if seen[0] != 0xFF || seen[9] != 0x7F {
		return nil, errors.New("protocol: greeting: the peer speaks something else")
	}
	if _, err := io.ReadFull(c, seen[10:]); err != nil {
		return nil, fmt.Errorf("protocol: greeting: %w", err)
	}
	if seen[10] < 3 {
		return nil, fmt.Errorf("protocol: greeting: version %d of the transport protocol; want 3 or later", seen[10])
	}
	if m := string(bytes.TrimRight(seen[12:32], "\x00")); m != "NULL" {
		return nil, fmt.Errorf("protocol: greeting: security mechanism %q; want NULL", m)
	}
	if seen[32] > 1 {
		return nil, errors.New("protocol: greeting: the as-server octet is neither 0 nor 1")
	}
	body, raw, err := readReady(c)
	if err != nil {
		return nil, err
	}
	socket, err := readyProperties(body)
	if err != nil {
		return nil, err
	}
	fits := false
	for _, p := range peers {
		fits = fits || p == socket
	}
	if !fits {
		return nil, fmt.Errorf("protocol: READY: the peer is a %.20q socket; want one of %v", socket, peers)
	}
	return append(seen, raw...), c.SetDeadline(time.Time{})
}

func greeting() []byte {
	g := make([]byte, greetingLen)
	g[0], g[9], g[10] = 0xFF, 0x7F, 3
	copy(g[12:], "NULL")
	return g
}

// readReady reads the frame of a READY command; raw is the whole frame.
func readReady(r io.Reader) (body, raw []byte, err error) {
	head := make([]byte, 2, 9)
	if _, err := io.ReadFull(r, head); err != nil {
		return nil, nil, fmt.Errorf("protocol: READY: %w", err)
	}
	if head[0]&^flagLong != flagCommand {
		return nil, nil, errors.New("protocol: READY: the first frame is no command")
	}
	size := uint64(head[1])
	if head[0]&flagLong != 0 {
		head = head[:9]
		if _, err := io.ReadFull(r, head[2:]); err != nil {
			return nil, nil, fmt.Errorf("protocol: READY: %w", err)
		}
		size = binary.BigEndian.Uint64(head[1:])
	}
	if size > mostReady {
		return nil, nil, fmt.Errorf("protocol: READY of %d bytes; at most %d are allowed", size, mostReady)
	}
	body = make([]byte, size)
	if _, err := io.ReadFull(r, body); err != nil {
		return nil, nil, fmt.Errorf("protocol: READY: %w", err)
	}
	return body, append(head, body...), nil
}

// readyProperties checks the properties of a READY command and returns the peer's kind of socket.
func readyProperties(body []byte) (socket string, err error) {
	bad := errors.New("protocol: READY: a length goes beyond the end")
	rest, ok := bytes.CutPrefix(body, []byte("\x05READY"))
	if !ok {
		return "", errors.New("protocol: READY: another command came first")
	}
	for len(rest) > 0 {
		n := int(rest[0])
		if len(rest) < 1+n+4 {
			return "", bad
		}
		name := string(rest[1 : 1+n])
		size := uint64(binary.BigEndian.Uint32(rest[1+n:]))
		rest = rest[1+n+4:]
		if uint64(len(rest)) < size {
			return "", bad
		}
		if strings.EqualFold(name, "Socket-Type") {
			socket = string(rest[:size])
		}
		rest = rest[size:]
	}
	return socket, nil
}
