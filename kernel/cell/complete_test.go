package cell

import (
	"slices"
	"strings"
	"testing"
)

func (l *toyLibrary) ReadyNames() []string { return []string{"fmt", "math", "strings"} }

func (l *toyLibrary) Docs(path string) (map[string]string, error) {
	return map[string]string{"Reduce": "Reduce waters down.", "Builder": "A Builder builds."}, nil
}

func TestComplete(t *testing.T) {
	s := NewSession(toy)
	c, err := s.Check("cell", "type Still struct{ Litres float64; plates int }\nfunc (s *Still) Fill(l float64) { s.Litres += l }\nstill := Still{}\nlitres := 3.0\nvar b strings.Builder")
	if err != nil {
		t.Fatal(err)
	}
	c.Commit(len(c.Chunks), 0)
	for _, c := range []struct {
		src  string // with | at the cursor
		want string // must be offered
		not  string // must not
	}{
		{"st|", "still strings", "litres"},
		{"x := lit|res + 1", "litres", ""},
		{"still.|", "Litres plates Fill", "still"},
		{"still.F|", "Fill", "Litres"},
		{"math.Sq|", "Sqrt", "Sin"},
		{"fmt.Println(math.|", "Sqrt Pi", "fmt"},
		{"b.Wr|", "WriteString WriteByte", "Len"},
		{"Red|", "Reduce", "Blend"},
		{"Reduce(AB|", "ABV", ""},
		{"for i, value := range []int{1} {\n\tval|", "value", ""},
		{"func f(strength float64) float64 {\n\treturn stren|\n}", "strength", ""},
		{"still2 := Still{|", "Litres plates", ""},
		{"still2 := Still{Lit|}", "Litres litres", "plates"},
		{"ra|", "range", ""},
		{"\"st|\"", "", "still"},
		{"// st|", "", "still"},
		{"q := still\nq.|\nq2 := 3", "Fill", ""},
		{"x.|", "", "still"},
		{"|", "still Reduce fmt func", ""},
		{"ap|", "append", ""},
		{"import \"bytes\"\nbytes.New|", "NewBuffer", ""},
	} {
		at := strings.Index(c.src, "|")
		list, start, end := s.Complete(strings.Replace(c.src, "|", "", 1), at)
		var got []string
		for _, x := range list {
			got = append(got, x.Text)
		}
		for _, w := range strings.Fields(c.want) {
			if !slices.Contains(got, w) {
				t.Errorf("%q: %s is not offered: %v", c.src, w, got)
			}
		}
		for _, w := range strings.Fields(c.not) {
			if slices.Contains(got, w) {
				t.Errorf("%q: %s is offered", c.src, w)
			}
		}
		if start > at || end < at {
			t.Errorf("%q: the stretch to replace is %d to %d", c.src, start, end)
		}
	}
	if n := s.Names(); len(n) != 4 {
		t.Errorf("completion changed the session: %v", n)
	}
}

func TestHover(t *testing.T) {
	s := NewSession(toy)
	c, err := s.Check("cell", "litres := 3.0")
	if err != nil {
		t.Fatal(err)
	}
	c.Commit(len(c.Chunks), 0)
	for _, c := range []struct{ src, decl, doc string }{
		{"Red|uce(ABV(60), ABV(40))", "func Reduce(from Strength, to Strength) float64", "Reduce waters down."},
		{"lit|res + 1", "var litres float64", ""},
		{"x := 3\ny := |x + 1", "var x int", ""},
		{"math.Sq|rt(2)", "func math.Sqrt(x float64) float64", ""},
		{"strings.Bui|lder{}", "type strings.Builder struct", "A Builder builds."},
		{"for i := range 3 { fmt.Println(|i) }", "var i int", ""},
		{"ma|th.Pi", "package math", ""},
		{"Red|uce(", "func Reduce", "Reduce waters down."},
		{"Reduce(ABV(60), |", "func Reduce", "Reduce waters down."},
		{"Reduce(ABV(60), []float64{1, 2|", "func Reduce", "Reduce waters down."},
		{"x := Reduce(ABV(60), |)", "func Reduce", "Reduce waters down."},
	} {
		at := strings.Index(c.src, "|")
		h, ok := s.Hover(strings.Replace(c.src, "|", "", 1), at)
		if !ok || !strings.HasPrefix(h.Decl, c.decl) || h.Doc != c.doc {
			t.Errorf("%q: %v, %+v; want %q and %q", c.src, ok, h, c.decl, c.doc)
		}
	}
	if h, ok := s.Hover("f := 3 + (2", 9); ok {
		t.Errorf("within brackets that call nothing: %+v", h)
	}
	if h, ok := s.Hover("\"litres\"", 3); ok {
		t.Errorf("within a string: %+v", h)
	}
}

func TestIncomplete(t *testing.T) {
	for src, want := range map[string]bool{
		"x := 1": false, "x :=": true, "f(": true, "func f() {": true, "func f() {\n}": false, "`abc": true, "/* abc": true,
		"\"abc": false, "x +": true, "x++": false, "": false, "a.": true, "a,": true, "for i := range 3 {": true, "}": false,
	} {
		if got := Incomplete(src); got != want {
			t.Errorf("Incomplete(%q) = %v; want %v", src, got, want)
		}
	}
}

func BenchmarkCheck(b *testing.B) {
	s := NewSession(toy)
	for i := range 50 {
		c, err := s.Check("cell", strings.ReplaceAll("xN := 1.5\nfunc fN(a float64) float64 { return a * xN }\nyN := fN(2)", "N", string(rune('A'+i%26))+string(rune('a'+i/26))))
		if err != nil {
			b.Fatal(err)
		}
		c.Commit(len(c.Chunks), 0)
	}
	b.ResetTimer()
	for range b.N {
		if _, err := s.Check("cell", "total := 0.0\nfor i := range 10 {\n\ttotal += fAa(float64(i)) * math.Sqrt(yBa)\n}\nfmt.Println(total)\ntotal"); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkComplete(b *testing.B) {
	s := NewSession(toy)
	for range b.N {
		s.Complete("x := 1\nmath.Sq", 14)
	}
}
