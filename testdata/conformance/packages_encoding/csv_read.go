// Go specification, "Qualified identifiers" (package encoding/csv): reading records with quotes, comments and errors.

package main

import (
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"strconv"
	"strings"
)

const data = `# stock list
name,ml,note
"Gin, dry",500,"says ""hello"""
Rum,700,two
"multi
line",1,
`

type row struct {
	name string
	ml   int
}

func main() {
	r := csv.NewReader(strings.NewReader(data))
	r.Comment = '#'
	recs, err := r.ReadAll()
	fmt.Printf("%q %v\n", recs, err)
	var rows []row
	for _, rec := range recs[1:] {
		n, err := strconv.Atoi(rec[1])
		if err != nil {
			fmt.Println(err)
			continue
		}
		rows = append(rows, row{rec[0], n})
	}
	fmt.Printf("%+v\n", rows)
	for _, bad := range []string{"a,b\n1,2,3\n", "a,\"b\nc", "a\"b,c\n", "\"a\"b\n"} {
		_, err := csv.NewReader(strings.NewReader(bad)).ReadAll()
		var pe *csv.ParseError
		fmt.Println(err, errors.As(err, &pe), errors.Is(err, csv.ErrFieldCount))
	}
	s := csv.NewReader(strings.NewReader("x; y ;z\n1;;3\n"))
	s.Comma = ';'
	s.TrimLeadingSpace = true
	for {
		rec, err := s.Read()
		if err == io.EOF {
			break
		}
		line, col := s.FieldPos(1)
		fmt.Printf("%q %v %d:%d\n", rec, err, line, col)
	}
}
