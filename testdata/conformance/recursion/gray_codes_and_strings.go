// Go specification, "Function declarations": recursion over strings and slices: palindromes, Gray codes, flattening.

package main

import "fmt"

func gray(n int) []string {
	if n == 0 {
		return []string{""}
	}
	prev := gray(n - 1)
	var out []string
	for _, s := range prev {
		out = append(out, "0"+s)
	}
	for i := len(prev) - 1; i >= 0; i-- {
		out = append(out, "1"+prev[i])
	}
	return out
}

func palindrome(s []rune) bool {
	return len(s) < 2 || s[0] == s[len(s)-1] && palindrome(s[1:len(s)-1])
}

func flatten(v any) (out []int) {
	switch v := v.(type) {
	case int:
		return []int{v}
	case []any:
		for _, e := range v {
			out = append(out, flatten(e)...)
		}
	}
	return
}

func lcs(a, b string) string {
	if a == "" || b == "" {
		return ""
	}
	if a[0] == b[0] {
		return a[:1] + lcs(a[1:], b[1:])
	}
	x, y := lcs(a[1:], b), lcs(a, b[1:])
	if len(x) >= len(y) {
		return x
	}
	return y
}

func main() {
	fmt.Println(gray(3))
	fmt.Println(palindrome([]rune("été")), palindrome([]rune("still")), palindrome(nil))
	fmt.Println(flatten([]any{1, []any{2, []any{}, []any{3, "x"}}, 4}))
	fmt.Println(lcs("fermentation", "formation"), lcs("abc", "xyz") == "")
}
