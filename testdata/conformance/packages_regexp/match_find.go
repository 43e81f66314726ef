// Go specification, "Qualified identifiers" (package regexp): matching and finding.

package main

import (
	"fmt"
	"regexp"
)

func main() {
	re := regexp.MustCompile(`([a-z]+)-(\d+)`)
	s := "lot-12 and cask-7, LOT-9, x-"
	fmt.Println(re.MatchString(s), re.FindString(s), re.FindStringIndex(s))
	fmt.Printf("%q\n", re.FindStringSubmatch(s))
	fmt.Printf("%q %q\n", re.FindAllString(s, -1), re.FindAllString(s, 1))
	fmt.Println(re.FindAllStringSubmatchIndex(s, -1), re.NumSubexp(), re.String())
	fmt.Println(re.FindStringSubmatch("none") == nil, re.FindString("none") == "")
	named := regexp.MustCompile(`(?P<y>\d{4})-(?P<m>\d\d)(?:-(?P<d>\d\d))?`)
	m := named.FindStringSubmatch("filled 2024-05, sold")
	fmt.Printf("%q %q %d\n", m, named.SubexpNames(), named.SubexpIndex("m"))
	ci := regexp.MustCompile(`(?i)lot`)
	fmt.Println(len(ci.FindAllString(s, -1)), regexp.QuoteMeta("a.b*c"))
	ok, err := regexp.MatchString(`^\s*$`, "  \t")
	fmt.Println(ok, err)
	_, err = regexp.Compile(`a(b`)
	fmt.Println(err)
	_, err = regexp.Compile(`*x`)
	fmt.Println(err)
	fmt.Printf("%q\n", regexp.MustCompile(`a*`).FindAllString("baaac", -1))
}
