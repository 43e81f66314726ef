// Go specification, "Qualified identifiers" (package encoding/csv): writing records with quoting.

package main

import (
	"encoding/csv"
	"fmt"
	"strconv"
	"strings"
)

type lot struct {
	id      string
	abv     float64
	comment string
}

func (l lot) record() []string {
	return []string{l.id, strconv.FormatFloat(l.abv, 'f', 1, 64), l.comment}
}

func write(lots []lot, comma rune) (string, error) {
	var sb strings.Builder
	w := csv.NewWriter(&sb)
	w.Comma = comma
	if err := w.Write([]string{"id", "abv", "comment"}); err != nil {
		return "", err
	}
	for _, l := range lots {
		if err := w.Write(l.record()); err != nil {
			return "", err
		}
	}
	w.Flush()
	return sb.String(), w.Error()
}

func main() {
	lots := []lot{{"A", 43, "plain"}, {"B,2", 58.55, `a "quote"`}, {"C", 0, "two\nlines"}, {"", 1, " lead"}}
	for _, c := range []rune{',', ';', '\t'} {
		s, err := write(lots, c)
		fmt.Print(s, err, "\n")
	}
	_, err := write(lots, '"')
	fmt.Println(err)
	s, err := write(lots, ',')
	if err != nil {
		fmt.Println(err)
	}
	back, err := csv.NewReader(strings.NewReader(s)).ReadAll()
	fmt.Println(len(back), back[3][2] == lots[2].comment, err)
}
