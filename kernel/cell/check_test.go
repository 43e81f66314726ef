package cell

import (
	"errors"
	"go/types"
	"strings"
	"testing"
)

// run checks cells one after the other and commits each; the last one's result is returned.
func run(t *testing.T, cells ...string) (*Checked, error) {
	t.Helper()
	s := NewSession(toy)
	for i, src := range cells {
		c, err := s.Check("cell", src)
		if i == len(cells)-1 {
			return c, err
		}
		if err != nil {
			t.Fatalf("cell %d: %v", i+1, err)
		}
		c.Commit(len(c.Chunks), 0)
	}
	return nil, nil
}

func TestAccepted(t *testing.T) {
	for name, cells := range map[string][]string{
		"empty":                        {""},
		"comment":                      {"// nothing"},
		"expression":                   {"1 + 1"},
		"statements":                   {"x := 1\nx++\nx"},
		"later cell":                   {"x := 1", "x + 1"},
		"another type":                 {"x := 1", "x := \"s\"", "x + \"t\""},
		"the old in the new":           {"x := 1", "x := float64(x) + 0.5", "x"},
		"unused variable":              {"x, y := 1, 2"},
		"unused import":                {"import \"bytes\""},
		"import of an earlier cell":    {"import b \"bytes\"", "b.NewBufferString(\"\")"},
		"ready package":                {"fmt.Println(strings.ToUpper(\"a\"))"},
		"predeclared":                  {"Reduce(ABV(70), ABV(40))"},
		"shadowed predeclared":         {"ABV := 3", "ABV + 1"},
		"shadowed universe":            {"len := 3; len"},
		"shadowed package":             {"fmt := 3", "fmt + 1"},
		"function before declaration":  {"f()\nfunc f() int { return 1 }"},
		"function sees the cell's var": {"n := 3\nfunc f() int { return n }\nf()"},
		"and by way of another":        {"n := 3\nfunc f() int { return g() }\nfunc g() int { return n }\nf()"},
		"method":                       {"type T struct{ a int }\nfunc (t T) M() int { return t.a }", "T{1}.M()"},
		"late method":                  {"type T int", "func (t T) Twice() int { return int(2 * t) }\nT(2).Twice()", "T(3).Twice()"},
		"late method without names":    {"type T int", "func (T) M(int, ...string) int { return 1 }\nT(2).M(1, \"a\")"},
		"late method, pointer":         {"type T struct{ n int }\nt := T{}", "func (t *T) Add(k int) { t.n += k }", "t.Add(2)"},
		"late method again":            {"type T int\nfunc (T) M() int { return 1 }", "func (T) M() int { return 2 }", "T(1).M()"},
		"method whose receiver is a variable's name": {"type T struct{ a int }\nfunc (t T) String() string { return strconv.Itoa(t.a) }\nt := T{a: 3}\nt"},
		"method that uses a variable":                {"k := 2\ntype T int\nfunc (t T) Times() int { return int(t) * k }\nT(3).Times()"},
		"type again":                                 {"type T struct{ a int }", "type T struct{ b string }", "T{b: \"\"}.b"},
		"generic":                                    {"func m[T any](x T) T { return x }", "m(1); m(\"s\")"},
		"constants":                                  {"const (\n\ta = iota\n\tb\n)", "[b]int{1}"},
		"func literal statement":                     {"func() { fmt.Println() }()"},
		"braces on lines":                            {"if true {\n\tfmt.Println(1)\n} else {\n\tfmt.Println(2)\n}"},
		"head of a for":                              {"for i := 0; i < 3; i++ {\n\tfmt.Println(i)\n}; x := 1\nx"},
		"head without a condition":                   {"for i := 0; ; i++ {\n\tbreak\n}"},
		"head of an if":                              {"if x := 1; x > 0 {\n} else if y := 2; y > x {\n} else {\n}"},
		"literal in a head":                          {"if f := func() int { return 1 }; f() > 0 {\n}"},
		"head of a switch":                           {"switch x := 1; {\ncase x > 0:\n}\nswitch y := any(1); z := y.(type) {\ncase int:\n\t_ = z\n}"},
		"labelled for":                               {"L:\n\tfor i := 0; i < 3; i++ {\n\t\tcontinue L\n\t}\n1"},
		"label":                                      {"L:\n\tfor {\n\t\tbreak L\n\t}"},
		"multi-value shown":                          {"strconv.Atoi(\"1\")"},
		"whole program":                              {"package main\n\nimport \"fmt\"\n\nvar x = f()\n\nfunc f() int { return 1 }\n\nfunc main() { fmt.Println(x) }"},
		"builder's error":                            {"var b strings.Builder\nb.WriteString(\"x\")\nb.String()"},
		"error put away":                             {"_, _ = strconv.Atoi(\"1\")"},
		"println":                                    {"println(1)"},
		"dot import":                                 {"import . \"strings\"", "ToUpper(\"a\")"},
		"vars in the order of need":                  {"var a = b + 1\nvar b = f()\nfunc f() int { return 2 }\na"},
		"var of its old self":                        {"x := 1", "var x = x + 1\nx"},
		"field with a variable's name":               {"type T struct{ n int }\nfunc mk() T { return T{n: 1} }\nk := mk().n\nn := 2\nn + k"},
		"key that is a variable":                     {"n := 2\nfunc mk() map[int]int { return map[int]int{n: 1} }\nmk()[2]"},
		"builtin in a function, hidden in the body": {"func f() int { return len(\"abc\") }\nx := f()\nlen := 2\nlen + x"},
		"var block": {"var (\n\ta, b = 1, 2\n\tc int\n)\nfunc f() int { return a + b + c }\nf()"},
	} {
		if _, err := run(t, cells...); err != nil {
			t.Errorf("%s: %q: %v", name, cells, err)
		}
	}
}

func TestRefused(t *testing.T) {
	for _, c := range []struct {
		name  string
		cells []string
		want  string // the start of the message, with its place
		hint  string
	}{
		{"undefined", []string{"x := 1\ny := x + z"}, "2:10: undefined: z", ""},
		{"column after text", []string{"a, b := 1, 2\nif a == b {\n\tfmt.Println(q)\n}"}, "3:14: undefined: q", ""},
		{"several", []string{"p\nq"}, "1:1: undefined: p\n2:1: undefined: q", ""},
		{"number for strength", []string{"Reduce(ABV(70), 43)"}, "1:17: cannot use 43", "write ABV(43)"},
		{"strengths added", []string{"ABV(40) + ABV(50)"}, "1:1: invalid operation: operator + not defined", "use Blend"},
		{"int and float", []string{"n := 2\nx := 1.5\nn * x"}, "3:1: invalid operation: n * x (mismatched types int and float64)", "float64("},
		{"dropped error", []string{"strconv.Atoi(\"x\")\n1"}, "1:1: the error of strconv.Atoi is dropped", "_ ="},
		{"dropped in a function", []string{"func f() {\n\tstrconv.Atoi(\"x\")\n}"}, "2:2: the error of strconv.Atoi is dropped", ""},
		{"dropped by defer", []string{"func f() error { return nil }\nfunc g() { defer f() }"}, "2:18: the error of f is dropped by defer", ""},
		{"dropped by go", []string{"func f() error { return nil }\ngo f()"}, "2:4: the error of f is dropped by go", ""},
		{"two values for one", []string{"v := strconv.Atoi(\"1\")"}, "1:6: assignment mismatch", "take the error too"},
		{"import", []string{"import \"os\""}, "1:8: not supported in cells: import \"os\"", ""},
		{"import in a block", []string{"import (\n\t\"fmt\"\n\t\"net\"\n)"}, "3:2: not supported in cells: import \"net\"", ""},
		{"unused in the middle", []string{"x := 1\nx + 1\nx"}, "2:1: x + 1 (value of type int) is not used", ""},
		{"open brace", []string{"if true {\n"}, "1:9: syntax error: this { is never closed", ""},
		{"closing brace", []string{"}\nfunc evil() {"}, "1:1: syntax error: unexpected }", ""},
		{"wrong partner", []string{"f(1]"}, "1:4: syntax error: unexpected ]", ""},
		{"open string", []string{"x := \"abc"}, "1:6: syntax error: string literal not terminated", ""},
		{"redeclared", []string{"x := 1\nx := 2"}, "2:3: no new variables", "use ="},
		{"return type", []string{"func f() int { return \"s\" }"}, "1:23: cannot use \"s\"", ""},
		{"other package", []string{"package still\nx := 1"}, "1:1: not supported in cells: a package other than main", ""},
		{"late method of another signature", []string{"type T int\nfunc (T) M() {}", "func (T) M() int { return 1 }"}, "1:10: not supported in cells: another signature for method M of T", "in one cell"},
		{"late method that does not check", []string{"type T int", "func (t T) M() int { return \"s\" }"}, "1:29: cannot use", ""},
		{"late method named as a field", []string{"type T struct{ a int }", "func (t T) a() {}"}, "1:12: field and method", ""},
		{"type as value", []string{"int"}, "1:1: int (type) is not an expression", ""},
		{"missing return", []string{"func f() int {\n}"}, "2:1: missing return", ""},
		{"line comment", []string{"x := 1\n//line other.go:100\ny"}, "2:1: not supported in cells: a comment", ""},
		{"unused within the shown", []string{"func() int { 1; return 2 }()"}, "1:14: 1 (untyped", ""},
		{"function not called", []string{"strings.ToUpper"}, "1:1: strings.ToUpper is a function", "write strings.ToUpper(…)"},
		{"constant too large to show", []string{"1 << 63"}, "1:1: cannot use 1 << 63", ""},
		{"error unread in a function", []string{"func f() int {\n\tn, err := strconv.Atoi(\"1\")\n\treturn n\n}"}, "2:5: declared and not used: err", "look at the error"},
		{"near miss", []string{"Redcue(ABV(60), ABV(40))"}, "1:1: undefined: Redcue", "is Reduce meant?"},
		{"decimal comma", []string{"litres := 390,5"}, "1:11: assignment mismatch", "390.5"},
		{"bad token", []string{"x := 1 @ 2"}, "1:8: syntax error: illegal character", ""},
	} {
		_, err := run(t, c.cells...)
		var list ErrorList
		if !errors.As(err, &list) {
			t.Errorf("%s: %q was accepted; want %s", c.name, c.cells, c.want)
			continue
		}
		if !strings.HasPrefix(err.Error(), c.want) || !strings.Contains(err.Error(), c.hint) {
			t.Errorf("%s: %q:\n%v\nwant %s … %s", c.name, c.cells, err, c.want, c.hint)
		}
	}
}

// A refused cell changes nothing; a cell that stops half-way keeps what ran.
func TestCommit(t *testing.T) {
	s := NewSession(toy)
	if _, err := s.Check("cell 1", "a := 1\nb := undefinedName"); err == nil {
		t.Fatal("accepted")
	}
	if n := s.Names(); len(n) != 0 {
		t.Errorf("after a refused cell: %v; want no names", n)
	}
	c, err := s.Check("cell 2", "func f() {}\na := 1\nb := 2\nc := 3")
	if err != nil {
		t.Fatal(err)
	}
	c.Commit(0, 2) // two statements came to their end
	if got := strings.Join(s.Names(), " "); got != "a b f" {
		t.Errorf("after two of three statements: %s; want a b f", got)
	}
	old := s.Lookup("a")
	c, err = s.Check("cell 3", "a := \"text\"")
	if err != nil {
		t.Fatal(err)
	}
	c.Commit(1, 0)
	if s.Lookup("a") == old || s.Lookup("a").Type() != types.Typ[types.String] {
		t.Errorf("a is %v; want a new variable of type string", s.Lookup("a"))
	}
}

func TestLastExpression(t *testing.T) {
	for src, want := range map[string]bool{
		"1":                         true,
		"x := 1":                    false,
		"x := 1; x":                 true,
		"fmt.Println(1)":            false,
		"func() {}()":               false,
		"for {\n\tbreak\n}":         false,
		"func f() {}\nf()":          false,
		"x := []int{1}\nx[0]":       true,
		"strconv.Itoa(2) // text":   true,
		"var x = 3\nfunc g() {}\nx": true,
	} {
		c, err := run(t, src)
		if err != nil {
			t.Errorf("%q: %v", src, err)
			continue
		}
		if got := c.Chunks[len(c.Chunks)-1].Last != nil; got != want {
			t.Errorf("%q: an expression to show: %v; want %v", src, got, want)
		}
	}
}

func FuzzCheck(f *testing.F) {
	for _, s := range []string{"x := 1", "func f() {", "import (", "L: for {}", "type T struct{}\nfunc (T) M() {}", "`", "/*", "x, y = y, x", "var (a=1;b)", "package main\nfunc main(){}", "/*line x:1:1*/ 3"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, src string) {
		s := NewSession(toy)
		c, err := s.Check("cell", src)
		if err != nil {
			var list ErrorList
			if !errors.As(err, &list) || len(list) == 0 {
				t.Fatalf("%q: %v is no list of errors", src, err)
			}
			return
		}
		c.Commit(len(c.Chunks), 0)
	})
}

// Messages name the types of the trade as a cell writes them.
func TestMessagesNameNoPackageThatIsPredeclared(t *testing.T) {
	s := NewSession(toy)
	for src, want := range map[string]string{
		"Reduce(ABV(60), 40)":       "Strength value",
		"ABV(60).Nothing()":         "type Strength has no field or method",
		"var b strings.Builder = 3": "strings.Builder value",
	} {
		_, err := s.Check("cell", src)
		if err == nil || !strings.Contains(err.Error(), want) || strings.Contains(err.Error(), "sheet.") {
			t.Errorf("%s: %v; want %q and no name of a package", src, err, want)
		}
	}
}
