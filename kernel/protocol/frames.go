package protocol

import (
	"encoding/binary"
	"errors"
)

var errTooLarge = errors.New("protocol: a message is larger than allowed")

// framer follows the bytes of a connection in one direction and knows where frames and messages begin and end.
type framer struct {
	most    uint64 // bytes of a message, its frames together; 0 is no limit
	onFrame func(first []byte, more bool)

	greeted  int // bytes of the greeting that went by, where it is followed
	head     [9]byte
	headLen  int
	left     uint64 // bytes of the body of the frame that are still to come
	inBody   bool
	more     bool
	command  bool
	size     uint64 // of the message so far
	body     []byte // of a short frame, up to keepBody bytes
	messages uint64 // whole messages so far
}

// keepBody is how many bytes of a frame are kept for onFrame.
const keepBody = 512

// follow takes the next bytes.
func (f *framer) follow(p []byte) error {
	for len(p) > 0 {
		if f.inBody {
			n := min(f.left, uint64(len(p)))
			if f.onFrame != nil {
				f.body = append(f.body, p[:min(n, uint64(keepBody-len(f.body)))]...)
			}
			f.left -= n
			p = p[n:]
			if f.left == 0 {
				f.endFrame()
			}
			continue
		}
		f.head[f.headLen] = p[0]
		f.headLen++
		p = p[1:]
		want := 2
		if f.head[0]&flagLong != 0 {
			want = 9
		}
		if f.headLen < want {
			continue
		}
		f.left = uint64(f.head[1])
		if want == 9 {
			f.left = binary.BigEndian.Uint64(f.head[1:])
		}
		f.headLen = 0
		f.more = f.head[0]&flagMore != 0
		f.command = f.head[0]&flagCommand != 0
		// Each frame costs something beside its bytes.
		if f.most > 0 && (f.left > f.most || f.size+f.left+64 > f.most) {
			return errTooLarge
		}
		f.size += f.left + 64
		f.inBody = true
		if f.left == 0 {
			f.endFrame()
		}
	}
	return nil
}

func (f *framer) endFrame() {
	f.inBody = false
	if f.onFrame != nil {
		if !f.command {
			f.onFrame(f.body, f.more)
		}
		f.body = f.body[:0]
	}
	if !f.more {
		f.size = 0
		f.messages++
	}
}

// between says that no frame and no message is under way.
func (f *framer) between() bool { return !f.inBody && f.headLen == 0 && f.size == 0 }
