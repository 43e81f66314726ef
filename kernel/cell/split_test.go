package cell

import (
	"fmt"
	"strings"
	"testing"
)

var kindNames = map[kind]string{statement: "stmt", importDecl: "import", typeDecl: "type", constDecl: "const", funcDecl: "func", packageClause: "package", varDecl: "var"}

func TestSplit(t *testing.T) {
	for src, want := range map[string]string{
		"x := 1; y := 2\nx + y":                     "stmt[x := 1] stmt[y := 2] stmt[x + y]",
		"import \"bytes\"\ntype T int\nconst c = 1": "import[import \"bytes\"] type[type T int] const[const c = 1]",
		"func f() {\n\ta; b\n}\nf()":                "func[func f() {|\ta; b|}] stmt[f()]",
		"func (t T) M() {}":                         "func[func (t T) M() {}]",
		"func() { a() }()":                          "stmt[func() { a() }()]",
		"func(x int) T { return T(x) }(3)":          "stmt[func(x int) T { return T(x) }(3)]",
		"for i := 0; i < 3; i++ {\n}\nx":            "stmt[for i := 0; i < 3; i++ {|}] stmt[x]",
		"if a := f(); a > 0 {\n} else {\n}; b()":    "stmt[if a := f(); a > 0 {|} else {|}] stmt[b()]",
		"L:\n\tfor ; ; {\n\t\tbreak L\n\t}":         "stmt[L:|\tfor ; ; {|\t\tbreak L|\t}]",
		"var a = b\nvar b = 1\na = 2\nvar c = a":    "var[var a = b] var[var b = 1] stmt[a = 2] stmt[var c = a]",
		"var x = x + 1\nvar y = 2":                  "stmt[var x = x + 1] stmt[var y = 2]",
		"package main\nfunc main() {}":              "package[package main] func[func main() {}]",
		"a(\n\t1,\n\t2,\n)":                         "stmt[a(|\t1,|\t2,|)]",
		"// only a comment":                         "",
		"x := `a;\nb`; y":                           "stmt[x := `a;|b`] stmt[y]",
	} {
		l, errs := lex(src)
		if len(errs) > 0 {
			t.Errorf("%q: %v", src, errs)
		}
		var got []string
		for _, it := range split(src, l) {
			got = append(got, fmt.Sprintf("%s[%s]", kindNames[it.kind], strings.ReplaceAll(src[it.start:it.end], "\n", "|")))
		}
		if s := strings.Join(got, " "); s != want {
			t.Errorf("%q splits into\n%s; want\n%s", src, s, want)
		}
	}
}

// Before: the items of a cell. After: chunks, as declarations / statements.
func TestArrange(t *testing.T) {
	names := meaning{
		isType:  func(n string) bool { return n == "Old" },
		outside: func(n string) bool { return n == "len" || n == "fmt" },
	}
	for src, want := range map[string]string{
		"a(); func a() {}; b()":                                          "func a() {} / a(), b()",
		"n := 1; func f() int { return n }; f()":                         " / n := 1 | func f() int { return n } / f()",
		"n := 1; func f() int { return g() }; func g() int { return n }": " / n := 1 | func f() int { return g() }, func g() int { return n } / ",
		"len := 1; func f() int { return len(s) }":                       "func f() int { return len(s) } / len := 1",
		"func f(n int) int { return n }; n := 1":                         "func f(n int) int { return n } / n := 1",
		"type T int; k := 1; func (t T) M() int { return k }; T(1)":      " / k := 1 | type T int, func (t T) M() int { return k } / T(1)",
		"func (o Old) M() {}; x.M()":                                     "func (o Old) M() {} /  |  / x.M()",
		"func (o Old) M() {}; func g() { x.M() }":                        "func (o Old) M() {} /  | func g() { x.M() } / ",
		"func mk() T { return T{n: 1} }; n := 2":                         "func mk() T { return T{n: 1} } / n := 2",
	} {
		l, _ := lex(src)
		var got []string
		for _, c := range arrange(src, split(src, l), names, false) {
			text := func(items []item) string {
				var s []string
				for _, it := range items {
					s = append(s, src[it.start:it.end])
				}
				return strings.Join(s, ", ")
			}
			got = append(got, text(c.decls)+" / "+text(c.stmts))
		}
		if s := strings.Join(got, " | "); s != want {
			t.Errorf("%q is arranged as\n%s; want\n%s", src, s, want)
		}
	}
}

// Before: a method. After: the function that go/types is shown in its place.
func TestAsFunction(t *testing.T) {
	for before, after := range map[string]string{
		"func (t T) M() int { return 1 }":       "func Mˑlateˑ" + "T(t T) int { return 1 }",
		"func (t *T) Add(a, b int) { t.n = a }": "func Addˑlateˑ" + "T(t *T, a, b int) { t.n = a }",
		"func (T) M(int, ...string) {}":         "func Mˑlateˑ" + "T(_ T, _ int, _ ...string) {}",
		"func (T) M() {}":                       "func Mˑlateˑ" + "T(_ T) {}",
	} {
		if got := asFunction(before, 0, func(int) string { return "" }); got != after {
			t.Errorf("%s becomes\n%s; want\n%s", before, got, after)
		}
	}
}
