package display

import (
	"fmt"
	"html"
	"io"
	"os"
	"strings"
	"sync"
	"text/tabwriter"
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
	case [][]string:
		b[HTML], b[Plain] = Table(t), columns(t)
	}
	return b, nil
}

// columns writes rows as text, each column as wide as its widest field.
func columns(rows [][]string) string {
	var b strings.Builder
	w := tabwriter.NewWriter(&b, 0, 0, 2, ' ', 0)
	for _, r := range rows {
		fmt.Fprintln(w, strings.Join(r, "\t"))
	}
	w.Flush()
	return strings.TrimSuffix(b.String(), "\n")
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
			align := "" // some front ends set everything to the right
			if i != 1 {
				align = ` align="left"`
			}
			fmt.Fprintf(&b, "<%s%s>%s</%s>", tag, align, html.EscapeString(c), tag)
		}
		b.WriteString("</tr>\n")
	}
	b.WriteString("</table>")
	return b.String()
}

// Face is where values go and answers come from.
type Face struct {
	Show  func(b Bundle, id string, update bool) // an id names a display that can be updated
	Text  func(any) string                       // a value as fmt.Print would write it
	Ask   func(prompt string, secret bool) (string, error)
	Clear func(wait bool)
	Read  func(name string) ([]byte, error)        // a table of the worksheet's folder
	Input func(name string) (text string, ok bool) // what was given in the place of an input's default
}

// face is the one in use. Until a worker sets it, values are printed and answers read: a worksheet as a plain Go program
// prints the same results.
var face = struct {
	sync.Mutex
	Face
}{Face: plainFace}

var plainFace = Face{
	Show: func(b Bundle, _ string, _ bool) { fmt.Println(b[Plain]) },
	Text: func(v any) string { return fmt.Sprint(v) },
	Ask: func(prompt string, _ bool) (string, error) {
		fmt.Print(prompt)
		var b strings.Builder
		for one := make([]byte, 1); ; {
			n, err := os.Stdin.Read(one)
			if n == 1 && one[0] == '\n' || err == io.EOF && b.Len() > 0 {
				return strings.TrimSuffix(b.String(), "\r"), nil
			}
			if err != nil {
				return "", err
			}
			b.Write(one[:n])
		}
	},
	Clear: func(bool) {},
	Read:  os.ReadFile,
	Input: fromFlags,
}

// SetFace says where values go. The worker calls it once. It returns what puts the former face back.
func SetFace(f Face) (restore func()) {
	face.Lock()
	defer face.Unlock()
	old := face.Face
	face.Face = f
	return func() { SetFace(old) }
}

func current() Face {
	face.Lock()
	defer face.Unlock()
	return face.Face
}

// Publish shows a bundle at this point of the running cell.
func Publish(b Bundle) { current().Show(b, "", false) }

// Text writes a value as fmt.Print would, those of types that cells declared included.
func Text(v any) string { return current().Text(v) }

// Show publishes a value.
func Show(v any) error {
	b, err := Of(v, Text(v))
	if err == nil {
		Publish(b)
	}
	return err
}

// Live shows a value under a name, or in the place of what was shown under it before.
func Live(id string, v any, update bool) error {
	b, err := Of(v, Text(v))
	if err == nil {
		current().Show(b, id, update)
	}
	return err
}

// Ask puts a question to the person.
func Ask(prompt string, secret bool) (string, error) { return current().Ask(prompt, secret) }

// Read returns a table of the worksheet's folder.
func Read(name string) ([]byte, error) { return current().Read(name) }

// Input returns what was given in the place of an input's default, if something was.
func Input(name string) (text string, ok bool) { return current().Input(name) }

// fromFlags finds an input among the arguments of a plain Go program: --set "name=value".
func fromFlags(name string) (text string, ok bool) {
	for i, a := range os.Args {
		v, found := strings.CutPrefix(a, "--set=")
		if !found && a == "--set" && i+1 < len(os.Args) {
			v, found = os.Args[i+1], true
		}
		if n, value, is := strings.Cut(v, "="); found && is && strings.TrimSpace(n) == name {
			text, ok = strings.TrimSpace(value), true
		}
	}
	return text, ok
}

// Clear takes away what the cell has shown so far; with wait, when something new is shown.
func Clear(wait bool) { current().Clear(wait) }
