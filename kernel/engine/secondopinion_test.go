package engine_test

import (
	"bytes"
	"flag"
	"fmt"
	"reflect"
	"strings"
	"testing"

	"github.com/traefik/yaegi/interp"
	"pgregory.net/rapid"

	"swanneck/kernel/engine"
	"swanneck/kernel/symbols"
)

// An independent interpreter of Go must agree with ours on plain arithmetic and control flow: programs are drawn at
// random, so that this check does not depend on what somebody thought of. What that interpreter is known to get wrong
// (see DEVELOPERS.md) is not drawn.
func TestSecondOpinion(t *testing.T) {
	e := start(t, engine.Options{})
	table := map[string]reflect.Value{}
	for name, v := range symbols.Values("fmt") {
		if !strings.HasPrefix(name, "_") {
			table[name] = v
		}
	}
	if err := flag.Set("rapid.seed", "1512"); err != nil { // the same programs in every run
		t.Fatal(err)
	}
	opinions := 0
	rapid.Check(t, func(rt *rapid.T) {
		src := (&program{t: rt}).text()
		ours, f := run(t, e, src)
		if f != nil {
			rt.Fatalf("%s\nfailed: %v", src, f)
		}
		theirs, ok := opinion(table, src)
		if !ok {
			return // it could not run a program that Go accepts: that is no opinion
		}
		opinions++
		if want := fmt.Sprintf("stdout:%q", theirs); ours != want {
			rt.Fatalf("%s\nours:   %s\ntheirs: %s", src, ours, want)
		}
	})
	want := 50
	if testing.Short() {
		want = 10
	}
	if opinions < want {
		t.Errorf("only %d second opinions; there must be %d", opinions, want)
	}
}

// opinion runs a program in the other interpreter.
func opinion(table map[string]reflect.Value, src string) (out string, ok bool) {
	defer func() {
		if recover() != nil {
			ok = false
		}
	}()
	var b bytes.Buffer
	i := interp.New(interp.Options{Stdout: &b})
	if err := i.Use(interp.Exports{"fmt/fmt": table}); err != nil {
		return "", false
	}
	if _, err := i.Eval("import \"fmt\"\nfunc main() {\n" + src + "\n}"); err != nil {
		return "", false
	}
	return b.String(), true
}

// program draws statements over three variables of each type.
type program struct {
	t     *rapid.T
	depth int
}

func (p *program) pick(label string, options ...string) string {
	return rapid.SampledFrom(options).Draw(p.t, label)
}

func (p *program) text() string {
	var b strings.Builder
	b.WriteString("i0, i1, i2 := 3, -7, 1000003\nn7, n3 := 7, -3\nf0, f1, f2 := 0.5, -2.25, 1e6\ns0, s1, s2 := \"a\", \"bc\", \"\"\n")
	b.WriteString("xs := []int{1, 2, 3, 4, 5}\nm := map[string]int{}\n")
	for range rapid.IntRange(1, 8).Draw(p.t, "statements") {
		b.WriteString(p.statement())
	}
	b.WriteString("fmt.Println(i0, i1, i2, f0, f1, f2, s0, s1, len(s2), xs, len(m), m[\"a\"])")
	return b.String()
}

func (p *program) statement() string {
	p.depth++
	defer func() { p.depth-- }()
	kind := rapid.IntRange(0, 8).Draw(p.t, "kind")
	if p.depth > 3 {
		kind %= 5
	}
	n := p.pick("n", "0", "1", "2")
	switch kind {
	case 0, 1:
		return "i" + n + " = " + p.integer() + "\n"
	case 2:
		return "f" + n + " = " + p.float() + "\n"
	case 3:
		return "s" + n + " += " + p.pick("text", `"x"`, `"é"`, "s0[:1]", `string(rune(65+i0&15))`) + "\n"
	case 4:
		return "xs[" + p.pick("index", "0", "2", "i0&3") + "] += " + p.integer() + "\nm[" + p.pick("key", `"a"`, "s1", "s0") + "] ^= " + p.integer() + "\n"
	case 5:
		return "if " + p.condition() + " {\n" + p.statement() + "} else {\n" + p.statement() + "}\n"
	case 6:
		return "for k := 0; k < " + p.pick("times", "2", "5", "len(xs)") + "; k++ {\n" + p.pick("skip", "", "if k == 1 {\ncontinue\n}\n", "if k == 3 {\nbreak\n}\n") + p.statement() + "}\n"
	case 7:
		return "for _, x := range xs {\ni" + n + " += x % 17\n" + p.statement() + "}\n"
	default:
		return "switch {\ncase " + p.condition() + ":\n" + p.statement() + "default:\n" + p.statement() + "}\n"
	}
}

func (p *program) integer() string {
	p.depth++
	defer func() { p.depth-- }()
	if p.depth > 5 || rapid.Bool().Draw(p.t, "leaf") {
		return p.pick("int", "i0", "i1", "i2", "n7", "n3", "xs[1]", "len(s0)", `m["a"]`)
	}
	switch op := p.pick("op", "+", "-", "*", "&", "|", "^", "&^", "/", "%", "<<", ">>", "int"); op {
	case "/", "%":
		return "(" + p.integer() + ")" + op + "(1+(" + p.integer() + ")&63)"
	case "<<", ">>":
		return "(" + p.integer() + ")" + op + "uint((" + p.integer() + ")&15)"
	case "int":
		return "int(int8(" + p.integer() + "))"
	default:
		return "((" + p.integer() + ")" + op + "(" + p.integer() + "))"
	}
}

func (p *program) float() string {
	p.depth++
	defer func() { p.depth-- }()
	if p.depth > 5 || rapid.Bool().Draw(p.t, "leaf") {
		return p.pick("float", "f0", "f1", "f2", "0.1", "-3.5", "float64(i0)")
	}
	op := p.pick("op", "+", "-", "*", "/")
	return "((" + p.float() + ")" + op + "(" + p.float() + "))"
}

func (p *program) condition() string {
	return p.pick("condition", "i0 < i1", "f0 >= f1", "s0 == s1", "i2&1 == 0 && f1 < 1", "i1 > 5 || s1 != \"\"", "!(i0 != i2)")
}
