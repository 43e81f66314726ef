// Go specification, "Qualified identifiers" (package strings): acronyms, anagrams and camel case.

package main

import (
	"fmt"
	"sort"
	"strings"
	"unicode"
)

func acronym(s string) string {
	var sb strings.Builder
	for _, w := range strings.FieldsFunc(s, func(r rune) bool { return r == ' ' || r == '-' }) {
		sb.WriteString(strings.ToUpper(w[:1]))
	}
	return sb.String()
}

func key(s string) string {
	r := strings.Split(strings.ToLower(s), "")
	sort.Strings(r)
	return strings.Join(r, "")
}

func snake(s string) string {
	var sb strings.Builder
	for i, r := range s {
		if unicode.IsUpper(r) && i > 0 {
			sb.WriteByte('_')
		}
		sb.WriteRune(unicode.ToLower(r))
	}
	return sb.String()
}

func main() {
	fmt.Println(acronym("alcohol by volume"), acronym("first-in first-out"))
	groups := map[string][]string{}
	for _, w := range strings.Fields("listen Silent enlist gin still tills google") {
		groups[key(w)] = append(groups[key(w)], w)
	}
	fmt.Println(groups)
	fmt.Println(snake("spiritRunVolume"), snake("A"), snake("already"))
	pangram := "Sphinx of black quartz, judge my vow"
	missing := ""
	for c := 'a'; c <= 'z'; c++ {
		if !strings.ContainsRune(strings.ToLower(pangram), c) {
			missing += string(c)
		}
	}
	fmt.Printf("%q\n", missing)
}
