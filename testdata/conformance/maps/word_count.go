// Go specification, "Map types": a word count with sorted output.

package main

import (
	"fmt"
	"sort"
	"strings"
	"unicode"
)

const text = `The still was cold. The still was small; the worm
was copper, and copper was cold.`

type entry struct {
	word string
	n    int
}

func main() {
	counts := make(map[string]int)
	for _, w := range strings.FieldsFunc(strings.ToLower(text), func(r rune) bool { return !unicode.IsLetter(r) }) {
		counts[w]++
	}
	var list []entry
	for w, n := range counts {
		list = append(list, entry{w, n})
	}
	sort.Slice(list, func(i, j int) bool {
		if list[i].n != list[j].n {
			return list[i].n > list[j].n
		}
		return list[i].word < list[j].word
	})
	for _, e := range list {
		fmt.Printf("%-7s %s %d\n", e.word, strings.Repeat("*", e.n), e.n)
	}
	byLen := map[int][]string{}
	for _, e := range list {
		byLen[len(e.word)] = append(byLen[len(e.word)], e.word)
	}
	fmt.Println(byLen)
}
