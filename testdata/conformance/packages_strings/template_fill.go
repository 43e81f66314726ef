// Go specification, "Qualified identifiers" (package strings): filling names between braces, with errors for unknown names.

package main

import (
	"fmt"
	"strings"
)

func fill(t string, vars map[string]string) (string, error) {
	var sb strings.Builder
	for {
		before, rest, ok := strings.Cut(t, "{{")
		sb.WriteString(before)
		if !ok {
			return sb.String(), nil
		}
		name, after, ok := strings.Cut(rest, "}}")
		if !ok {
			return "", fmt.Errorf("unclosed braces after %q", before)
		}
		name, filter, _ := strings.Cut(strings.TrimSpace(name), "|")
		v, known := vars[name]
		if !known {
			return "", fmt.Errorf("unknown name %q", name)
		}
		switch filter {
		case "upper":
			v = strings.ToUpper(v)
		case "":
		default:
			return "", fmt.Errorf("unknown filter %q", filter)
		}
		sb.WriteString(v)
		t = after
	}
}

func main() {
	vars := map[string]string{"name": "Sloe Gin", "abv": "26", "empty": ""}
	for _, t := range []string{"{{name}} at {{ abv }} %", "[{{empty}}]{{name|upper}}", "plain", "{{nope}}", "x {{name", "{{name|lower}}"} {
		s, err := fill(t, vars)
		fmt.Printf("%q %v\n", s, err)
	}
}
