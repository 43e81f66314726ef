package engine_test

import (
	"context"
	"fmt"
	"strings"
	"testing"

	"swanneck/kernel/display"
	"swanneck/kernel/engine"
)

// merged joins what a cell says as a terminal would, and counts the pieces.
type merged struct {
	strings.Builder
	pieces int
}

func (m *merged) Stream(name, text string) {
	m.pieces++
	if name == "stderr" {
		text = strings.ReplaceAll(text, "\n", "!\n")
	}
	m.WriteString(text)
}

func (m *merged) Display(b display.Bundle) {
	m.pieces++
	fmt.Fprintf(m, "%v?\n", b[display.Plain])
}

func (m *merged) Value(display.Bundle) {}

// Much output comes whole and in order, whatever it goes through.
func TestPrintsInOrder(t *testing.T) {
	e := start(t, engine.Options{})
	var got merged
	err := e.Run(context.Background(), "cell", "for i := range 3000 {\n\tfmt.Println(i)\n\tif i%3 == 0 {\n\t\tprintln(i)\n\t}\n\tif i%7 == 0 {\n\t\tShow(i)\n\t}\n}", &got)
	if err != nil {
		t.Fatal(err)
	}
	var want strings.Builder
	for i := range 3000 {
		fmt.Fprintln(&want, i)
		if i%3 == 0 {
			fmt.Fprintf(&want, "%d!\n", i)
		}
		if i%7 == 0 {
			fmt.Fprintf(&want, "%d?\n", i)
		}
	}
	if got.String() != want.String() {
		t.Errorf("%d bytes came in another order than the %d that were said", got.Len(), want.Len())
	}
}

// A rune whose bytes are printed one by one is that rune, even if the pause between them is long.
func TestRuneInPieces(t *testing.T) {
	e := start(t, engine.Options{})
	const text = "Ä €\U0001F33F"
	src := fmt.Sprintf("s := %q\nfor i := range len(s) {\n\tfmt.Print(s[i:i+1])\n\tif i%%2 == 0 {\n\t\ttime.Sleep(30*time.Millisecond)\n\t}\n}", text)
	for _, c := range []struct{ src, want string }{
		{src, text},
		{`fmt.Print("a\xc3"); println("b"); fmt.Print("\xa4")`, "a\uFFFDb!\n\uFFFD"}, // cut by the other stream
		{`fmt.Print("c\xe2\x82")`, "c\uFFFD"},                                        // and by the end
		{`fmt.Print("\xff\xfe\x80\x80\x80\x80")`, "\uFFFD"},
	} {
		var got merged
		if err := e.Run(context.Background(), "cell", c.src, &got); err != nil || got.String() != c.want {
			t.Errorf("%s said %q, %v; want %q", c.src, got.String(), err, c.want)
		}
	}
}

// Ten thousand lines: what they cost, and in how many pieces they come.
func BenchmarkPrints(b *testing.B) {
	e := start(b, engine.Options{})
	var got merged
	for b.Loop() {
		got = merged{}
		if err := e.Run(context.Background(), "cell", "for i := range 10000 {\n\tfmt.Println(i)\n}", &got); err != nil {
			b.Fatal(err)
		}
	}
	if n := strings.Count(got.String(), "\n"); n != 10_000 {
		b.Fatalf("%d lines came", n)
	}
	b.ReportMetric(float64(got.pieces), "pieces")
}
