package protocol

import "sync"

// requests is the queue of the shell. Requests are taken in their order.
type requests struct {
	mu     sync.Mutex
	cond   *sync.Cond
	list   []*Message
	closed bool
}

func newRequests() *requests {
	q := &requests{}
	q.cond = sync.NewCond(&q.mu)
	return q
}

func (q *requests) put(m *Message) {
	q.mu.Lock()
	q.list = append(q.list, m)
	q.cond.Broadcast()
	q.mu.Unlock()
}

// take returns the next request, or nil when the queue is closed.
func (q *requests) take() *Message {
	q.mu.Lock()
	defer q.mu.Unlock()
	for len(q.list) == 0 && !q.closed {
		q.cond.Wait()
	}
	if q.closed {
		return nil
	}
	m := q.list[0]
	q.list[0] = nil
	q.list = q.list[1:]
	return m
}

func (q *requests) close() {
	q.mu.Lock()
	q.closed = true
	q.cond.Broadcast()
	q.mu.Unlock()
}
