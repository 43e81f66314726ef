// Go specification, "Qualified identifiers" (package regexp): replacing with templates and functions, splitting.

package main

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
)

func main() {
	re := regexp.MustCompile(`(\w+)@(\w+)`)
	s := "ida@north ben@south"
	fmt.Println(re.ReplaceAllString(s, "$2:$1"), re.ReplaceAllString(s, "${1}_x"), re.ReplaceAllLiteralString(s, "$1"))
	fmt.Println(re.ReplaceAllStringFunc(s, strings.ToUpper))
	nums := regexp.MustCompile(`\d+`)
	doubled := nums.ReplaceAllStringFunc("3 gin, 12 rum", func(d string) string {
		n, err := strconv.Atoi(d)
		if err != nil {
			return "?"
		}
		return strconv.Itoa(n * 2)
	})
	fmt.Println(doubled)
	sep := regexp.MustCompile(`\s*[,;]\s*`)
	fmt.Printf("%q %q\n", sep.Split("a , b;c;;d", -1), sep.Split("a,b,c", 2))
	spaces := regexp.MustCompile(` {2,}`)
	fmt.Println(spaces.ReplaceAllString("a  b     c d", " "))
	fmt.Println(string(nums.ReplaceAll([]byte("x1y22"), []byte("#"))))
	var out []byte
	tmpl := "$who at $where\n"
	named := regexp.MustCompile(`(?P<who>\w+)@(?P<where>\w+)`)
	for _, m := range named.FindAllStringSubmatchIndex(s, -1) {
		out = named.ExpandString(out, tmpl, s, m)
	}
	fmt.Print(string(out))
}
