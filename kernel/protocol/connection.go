package protocol

import (
	"encoding/json"
	"fmt"
	"net"
	"os"
	"strconv"
)

// Connection is what a connection file says: where to listen, and with which key messages are signed.
type Connection struct {
	Transport       string `json:"transport"` // "tcp" or "ipc"
	IP              string `json:"ip"`        // an address, or for ipc the beginning of the sockets' paths
	ShellPort       int    `json:"shell_port"`
	IOPubPort       int    `json:"iopub_port"`
	StdinPort       int    `json:"stdin_port"`
	ControlPort     int    `json:"control_port"`
	HBPort          int    `json:"hb_port"`
	Key             string `json:"key"` // an empty key turns signing off
	SignatureScheme string `json:"signature_scheme"`
}

// ReadConnection reads a connection file.
func ReadConnection(name string) (Connection, error) {
	var c Connection
	b, err := os.ReadFile(name)
	if err != nil {
		return c, fmt.Errorf("protocol: connection file: %w", err)
	}
	if err := json.Unmarshal(b, &c); err != nil {
		return c, fmt.Errorf("protocol: connection file %s: %w", name, err)
	}
	return c, c.check()
}

func (c *Connection) check() error {
	if c.Transport == "" {
		c.Transport = "tcp"
	}
	if c.Transport != "tcp" && c.Transport != "ipc" {
		return fmt.Errorf("protocol: connection file: transport %q; want tcp or ipc", c.Transport)
	}
	if c.SignatureScheme != "" && c.SignatureScheme != "hmac-sha256" {
		return fmt.Errorf("protocol: connection file: signature scheme %q; want hmac-sha256", c.SignatureScheme)
	}
	if c.IP == "" {
		if c.Transport == "ipc" {
			return fmt.Errorf("protocol: connection file: ip is empty; for ipc it is the beginning of the sockets' paths")
		}
		c.IP = "127.0.0.1"
	}
	for name, port := range map[string]int{"shell_port": c.ShellPort, "iopub_port": c.IOPubPort, "stdin_port": c.StdinPort, "control_port": c.ControlPort, "hb_port": c.HBPort} {
		if port < 0 || port > 65535 {
			return fmt.Errorf("protocol: connection file: %s %d; want 1 to 65535", name, port)
		}
	}
	return nil
}

// warning says what is dangerous about the place the kernel listens at, or nothing.
func (c *Connection) warning() string {
	if c.Transport != "tcp" {
		return ""
	}
	if ip := net.ParseIP(c.IP); c.IP == "localhost" || ip != nil && ip.IsLoopback() {
		return ""
	}
	return fmt.Sprintf("listening at %s, which other machines may reach: messages are signed but not encrypted, and what cells print can be read by anyone who connects", c.IP)
}

// listen opens the socket of a port.
func (c *Connection) listen(port int) (net.Listener, error) {
	if c.Transport == "ipc" {
		return listenIPC(c.IP + "-" + strconv.Itoa(port))
	}
	host := c.IP
	if host == "*" {
		host = "0.0.0.0"
	}
	l, err := net.Listen("tcp", net.JoinHostPort(host, strconv.Itoa(port)))
	if err != nil {
		return nil, fmt.Errorf("protocol: %w", err)
	}
	return l, nil
}
