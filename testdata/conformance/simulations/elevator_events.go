// Go specification, "Slice types": an event queue ordered by time.

package main

import (
	"fmt"
	"strings"
)

type event struct {
	at   int
	name string
	do   func(*sim)
}

type sim struct {
	now   int
	queue []event
	trace []string
}

func (s *sim) after(d int, name string, do func(*sim)) {
	e := event{s.now + d, name, do}
	i := len(s.queue)
	for i > 0 && s.queue[i-1].at > e.at {
		i--
	}
	s.queue = append(s.queue, event{})
	copy(s.queue[i+1:], s.queue[i:])
	s.queue[i] = e
}

func (s *sim) run(limit int) {
	for len(s.queue) > 0 && s.queue[0].at <= limit {
		e := s.queue[0]
		s.queue = s.queue[1:]
		s.now = e.at
		s.trace = append(s.trace, fmt.Sprintf("%d:%s", e.at, e.name))
		if e.do != nil {
			e.do(s)
		}
	}
}

func main() {
	s := &sim{}
	level := 0
	var drip func(*sim)
	drip = func(s *sim) {
		level += 3
		if level < 12 {
			s.after(4, "drip", drip)
		} else {
			s.after(0, "full", nil)
		}
	}
	s.after(1, "drip", drip)
	s.after(6, "check", func(s *sim) { s.trace = append(s.trace, fmt.Sprint("level ", level)) })
	s.after(100, "late", nil)
	s.run(50)
	fmt.Println(strings.Join(s.trace, ", "))
	fmt.Println(s.now, level, len(s.queue))
}
