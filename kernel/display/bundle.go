package display

import (
	"fmt"
	"html"
	"strings"
	"sync"
)

// Of returns the bundle of a value. plain is its text, as fmt.Print would write it.
func Of(v any, plain string) (b Bundle, err error) {
	defer func() {
		if r := recover(); r != nil {
			if e, ok := r.(error); ok {
				err = e
			} else {
				err = fmt.Errorf("display: the value cannot be shown: %v", r)
			}
		}
	}()
	b = Bundle{Plain: plain}
	if c, ok := v.(interface{ SVG() string }); ok {
		b[SVG] = c.SVG()
		if a, ok := v.(interface{ AltText() string }); ok {
			b[Plain] = a.AltText()
		}
	}
	switch t := v.(type) {
	case interface{ HTML() string }:
		b[HTML] = t.HTML()
	case interface{ Rows() [][]string }:
		b[HTML] = Table(t.Rows())
	}
	return b, nil
}

// Table returns rows of label, figure and unit as an HTML table.
func Table(rows [][]string) string {
	var b strings.Builder
	b.WriteString("<table>\n")
	for _, r := range rows {
		b.WriteString("<tr>")
		for i, c := range r {
			tag := "td"
			if i == 0 {
				tag = "th"
			}
			fmt.Fprintf(&b, "<%s>%s</%s>", tag, html.EscapeString(c), tag)
		}
		b.WriteString("</tr>\n")
	}
	b.WriteString("</table>")
	return b.String()
}

// sink is where Publish sends bundles. Until a worker sets it, they are printed: a worksheet as a plain Go program
// prints the same results.
var sink = struct {
	sync.Mutex
	send func(Bundle)
	text func(any) string
}{send: func(b Bundle) { fmt.Println(b[Plain]) }, text: func(v any) string { return fmt.Sprint(v) }}

// SetSink says where published bundles go and how a value is written as text. The worker calls it once.
func SetSink(send func(Bundle), text func(any) string) {
	sink.Lock()
	defer sink.Unlock()
	sink.send, sink.text = send, text
}

// Publish shows a bundle at this point of the running cell.
func Publish(b Bundle) {
	sink.Lock()
	send := sink.send
	sink.Unlock()
	send(b)
}

// Text writes a value as fmt.Print would, those of types that cells declared included.
func Text(v any) string {
	sink.Lock()
	text := sink.text
	sink.Unlock()
	return text(v)
}

// Show publishes a value.
func Show(v any) error {
	b, err := Of(v, Text(v))
	if err == nil {
		Publish(b)
	}
	return err
}
