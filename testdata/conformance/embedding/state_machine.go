// Go specification, "Struct types": shared behaviour through embedding, specialised by an interface field.

package main

import "fmt"

type State int

const (
	Idle State = iota
	Heating
	Running
	Done
)

func (s State) String() string { return [...]string{"idle", "heating", "running", "done"}[s] }

type Machine struct {
	State
	log   []State
	rules map[State]map[string]State
}

func (m *Machine) Fire(event string) error {
	next, ok := m.rules[m.State][event]
	if !ok {
		return fmt.Errorf("%v: no event %q", m.State, event)
	}
	m.log = append(m.log, m.State)
	m.State = next
	return nil
}

type Still struct {
	Machine
	name string
}

func (s *Still) Fire(event string) error {
	if err := s.Machine.Fire(event); err != nil {
		return fmt.Errorf("%s: %w", s.name, err)
	}
	return nil
}

func main() {
	s := &Still{name: "No 2"}
	s.rules = map[State]map[string]State{
		Idle:    {"light": Heating},
		Heating: {"boil": Running, "quench": Idle},
		Running: {"tails": Done},
	}
	for _, e := range []string{"boil", "light", "quench", "light", "boil", "tails", "light"} {
		if err := s.Fire(e); err != nil {
			fmt.Println(err)
		}
	}
	fmt.Println(s.State, s.log, s.Machine.State == Done)
	fmt.Println(s.String(), s.name)
}
