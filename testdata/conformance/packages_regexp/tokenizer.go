// Go specification, "Qualified identifiers" (package regexp): a tokenizer from alternatives.

package main

import (
	"fmt"
	"regexp"
)

type kind int

const (
	number kind = iota + 1
	name
	op
	space
)

func (k kind) String() string { return [...]string{"?", "num", "name", "op", "space"}[k] }

type token struct {
	kind
	text string
}

var re = regexp.MustCompile(`^(?:(\d+(?:\.\d+)?)|([A-Za-z_]\w*)|([-+*/()=])|(\s+))`)

func tokens(s string) (out []token, err error) {
	for pos := 0; pos < len(s); {
		m := re.FindStringSubmatch(s[pos:])
		if m == nil {
			return out, fmt.Errorf("col %d: unexpected %q", pos+1, s[pos])
		}
		for k := number; k <= space; k++ {
			if m[k] != "" && k != space {
				out = append(out, token{k, m[k]})
			}
		}
		pos += len(m[0])
	}
	return
}

func main() {
	for _, s := range []string{"pure = vol*abv/100", "x1+(2.50 - y)", "a ? b", ""} {
		ts, err := tokens(s)
		for _, t := range ts {
			fmt.Print(t.kind, ":", t.text, " ")
		}
		fmt.Println(len(ts), err)
	}
	fmt.Println([]kind{number, op}, token{name, "q"})
}
