// Go specification, "Struct types": nested configuration merged field by field.

package main

import "fmt"

type Limits struct{ min, max int }

type Config struct {
	name   string
	limits *Limits
	tags   map[string]string
	steps  []string
}

func (c Config) merge(over Config) Config {
	if over.name != "" {
		c.name = over.name
	}
	if over.limits != nil {
		l := *over.limits
		if c.limits != nil {
			if l.min == 0 {
				l.min = c.limits.min
			}
			if l.max == 0 {
				l.max = c.limits.max
			}
		}
		c.limits = &l
	}
	tags := map[string]string{}
	for _, m := range []map[string]string{c.tags, over.tags} {
		for k, v := range m {
			if v == "" {
				delete(tags, k)
			} else {
				tags[k] = v
			}
		}
	}
	c.tags = tags
	c.steps = append(c.steps[:len(c.steps):len(c.steps)], over.steps...)
	return c
}

func (c Config) String() string {
	l := "none"
	if c.limits != nil {
		l = fmt.Sprint(*c.limits)
	}
	return fmt.Sprintf("%s %s %v %v", c.name, l, c.tags, c.steps)
}

func main() {
	base := Config{"base", &Limits{1, 10}, map[string]string{"a": "1", "b": "2"}, []string{"mash"}}
	over := Config{limits: &Limits{max: 50}, tags: map[string]string{"a": "", "c": "3"}, steps: []string{"run", "rest"}}
	got := base.merge(over)
	fmt.Println(got)
	fmt.Println(base)
	fmt.Println(Config{}.merge(Config{}), Config{}.merge(base))
	got.limits.min = 99
	fmt.Println(*base.limits, *over.limits, *got.limits)
}
