// Go specification, "Defer statements": unlocking with defer on every path.

package main

import (
	"fmt"
	"sync"
)

type Safe struct {
	mu   sync.Mutex
	vals map[string]int
	log  []string
}

func (s *Safe) enter(what string) func() {
	s.mu.Lock()
	s.log = append(s.log, "+"+what)
	return func() {
		s.log = append(s.log, "-"+what)
		s.mu.Unlock()
	}
}

func (s *Safe) Take(k string, n int) (left int, err error) {
	defer s.enter("take")()
	have, ok := s.vals[k]
	if !ok {
		return 0, fmt.Errorf("no %s", k)
	}
	if have < n {
		return have, fmt.Errorf("only %d %s", have, k)
	}
	s.vals[k] -= n
	return s.vals[k], nil
}

func main() {
	s := Safe{vals: map[string]int{"cork": 3}}
	for _, req := range []struct {
		k string
		n int
	}{{"cork", 2}, {"cork", 2}, {"wax", 1}} {
		left, err := s.Take(req.k, req.n)
		fmt.Println(left, err)
	}
	fmt.Println(s.log, s.mu.TryLock())
}
