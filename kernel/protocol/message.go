package protocol

import (
	"bytes"
	"crypto/hmac"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"strconv"
	"sync/atomic"
	"time"

	"github.com/google/uuid"
)

// Version is the version of the protocol that is spoken.
const Version = "5.5"

// Header is the header of a message.
type Header struct {
	MsgID    string `json:"msg_id"`
	Session  string `json:"session"`
	Username string `json:"username"`
	Date     string `json:"date"`
	MsgType  string `json:"msg_type"`
	Version  string `json:"version"`
}

// Message is a message as received, or as it will be sent.
type Message struct {
	Identities [][]byte // of the peer: who sent it, or who is to get it
	Header     Header
	Parent     json.RawMessage // the header of the request, byte for byte; {} where there is none
	Metadata   json.RawMessage
	Content    json.RawMessage
	Buffers    [][]byte

	rawHeader json.RawMessage
	received  time.Time
}

var delimiter = []byte("<IDS|MSG>")

var emptyObject = json.RawMessage("{}")

// Why a message is refused.
var (
	errShape     = errors.New("protocol: the frames are no message: want identities, <IDS|MSG>, a signature and four parts")
	errSignature = errors.New("protocol: the signature does not fit the message")
	errReplay    = errors.New("protocol: a message with this signature came before")
)

// remembered is how many signatures are remembered in order to refuse replays.
const remembered = 1 << 16

// codec signs, verifies, encodes and decodes the messages of one session. Encoding is safe for several goroutines;
// decoding goes through a signature list of its own for each socket (see receiver).
type codec struct {
	key      []byte
	session  string
	username string
	next     atomic.Uint64
}

func newCodec(key string) *codec {
	name := os.Getenv("USER")
	if name == "" {
		name = "kernel"
	}
	return &codec{key: []byte(key), session: uuid.NewString(), username: name}
}

func (c *codec) signature(parts [][]byte) []byte {
	if len(c.key) == 0 {
		return nil
	}
	h := hmac.New(sha256.New, c.key)
	for _, p := range parts {
		h.Write(p)
	}
	return hex.AppendEncode(nil, h.Sum(nil))
}

// header makes the header of a new message.
func (c *codec) header(msgType string) Header {
	return Header{
		MsgID:   c.session + "_" + strconv.FormatUint(c.next.Add(1), 10),
		Session: c.session, Username: c.username, MsgType: msgType, Version: Version,
		Date: time.Now().UTC().Format("2006-01-02T15:04:05.000000Z"),
	}
}

// encode returns the frames of a message, identities first.
func (c *codec) encode(m *Message) ([][]byte, error) {
	header, err := json.Marshal(m.Header)
	if err != nil {
		return nil, fmt.Errorf("protocol: header of %s: %w", m.Header.MsgType, err)
	}
	parts := [][]byte{header, orEmpty(m.Parent), orEmpty(m.Metadata), orEmpty(m.Content)}
	frames := make([][]byte, 0, len(m.Identities)+6+len(m.Buffers))
	frames = append(frames, m.Identities...)
	frames = append(frames, delimiter, c.signature(parts))
	frames = append(frames, parts...)
	return append(frames, m.Buffers...), nil
}

func orEmpty(r json.RawMessage) []byte {
	if len(r) == 0 {
		return emptyObject
	}
	return r
}

// decode reads the frames of a message and verifies the bytes as they came.
func (c *codec) decode(frames [][]byte) (*Message, error) {
	at := -1
	for i, f := range frames {
		if bytes.Equal(f, delimiter) {
			at = i
			break
		}
	}
	if at < 0 || len(frames) < at+6 {
		return nil, errShape
	}
	parts := frames[at+2 : at+6]
	if len(c.key) > 0 && !hmac.Equal(frames[at+1], c.signature(parts)) {
		return nil, errSignature
	}
	m := &Message{
		Identities: frames[:at], rawHeader: parts[0], Parent: parts[1], Metadata: parts[2], Content: parts[3],
		Buffers: frames[at+6:], received: time.Now(),
	}
	if err := json.Unmarshal(parts[0], &m.Header); err != nil {
		return nil, fmt.Errorf("protocol: header: %w", err)
	}
	if m.Header.MsgType == "" {
		return nil, errors.New("protocol: header: msg_type is empty")
	}
	for i, name := range []string{"parent_header", "metadata", "content"} {
		if p := bytes.TrimSpace(parts[i+1]); !json.Valid(p) || len(p) == 0 || p[0] != '{' {
			return nil, fmt.Errorf("protocol: %s of %s is no JSON object", name, m.Header.MsgType)
		}
	}
	return m, nil
}

// signatures remembers the latest signatures.
type signatures struct {
	seen map[string]bool
	ring []string
	next int
}

// fresh says whether a signature is new, and remembers it.
func (s *signatures) fresh(signature []byte) bool {
	if s.seen == nil {
		s.seen = map[string]bool{}
	}
	text := string(signature)
	if s.seen[text] {
		return false
	}
	s.seen[text] = true
	if len(s.ring) < remembered {
		s.ring = append(s.ring, text)
		return true
	}
	delete(s.seen, s.ring[s.next])
	s.ring[s.next] = text
	s.next = (s.next + 1) % remembered
	return true
}
