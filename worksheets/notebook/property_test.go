package notebook

import (
	"bytes"
	"encoding/json"
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func FuzzRead(f *testing.F) {
	for _, name := range append([]string{"version_3.ipynb", "version_4_2.ipynb"}, canonical...) {
		f.Add(fixture(f, name))
	}
	f.Add([]byte(`{"nbformat":4,"nbformat_minor":5,"cells":[{"cell_type":"code","source":["a",null]}]}`))
	f.Fuzz(func(t *testing.T, data []byte) {
		n, err := Read(data)
		if err != nil {
			if strings.Contains(err.Error(), "\n") {
				t.Errorf("more than one line: %q", err)
			}
			return
		}
		once, err := n.Bytes()
		if err != nil {
			t.Fatalf("read, but not written: %v", err)
		}
		again, err := Read(once)
		if err != nil {
			t.Fatalf("written, but not read: %v", err)
		}
		if !reflect.DeepEqual(n, again) {
			t.Errorf("read differs from read after write:\n%#v\n%#v", n, again)
		}
		twice, err := again.Bytes()
		if err != nil || !bytes.Equal(once, twice) {
			t.Errorf("written twice, different: %v\n%s\n%s", err, once, twice)
		}
	})
}

// Any notebook in the form that Read leaves comes back from its bytes as it was.
func TestReadAfterBytesIsIdentity(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := drawNotebook(t)
		n.EnsureIDs()
		data, err := n.Bytes()
		if err != nil {
			t.Fatal(err)
		}
		back, err := Read(data)
		if err != nil {
			t.Fatal(err)
		}
		if !reflect.DeepEqual(n, back) {
			t.Fatalf("Read(n.Bytes()) differs:\n%#v\n%#v", n, back)
		}
	})
}

var (
	drawText  = rapid.StringOf(rapid.OneOf(rapid.Rune(), rapid.SampledFrom([]rune("\n\r\v\f\x1c\x85\u2028\u2029\x00\"\\<&>\u007f"))))
	drawField = rapid.StringMatching(`x_[a-z]{0,3}`)
)

func drawNotebook(t *rapid.T) *Notebook {
	n := &Notebook{Major: Major, Minor: Minor, Metadata: drawObject(t, 3), Extra: drawExtra(t)}
	for range rapid.IntRange(0, 4).Draw(t, "cells") {
		c := &Cell{
			Type:     rapid.SampledFrom([]string{Code, Markdown, Raw, "sketch"}).Draw(t, "type"),
			Source:   drawText.Draw(t, "source"),
			Metadata: drawObject(t, 2),
			Extra:    drawExtra(t),
		}
		if rapid.Bool().Draw(t, "attached") {
			c.Attachments = map[string]Bundle{drawText.Draw(t, "file"): drawBundle(t)}
		}
		if c.Type == Code {
			c.ExecutionCount = rapid.Ptr(rapid.IntRange(0, 99), true).Draw(t, "count")
			for range rapid.IntRange(0, 3).Draw(t, "outputs") {
				c.Outputs = append(c.Outputs, drawOutput(t))
			}
		}
		n.Cells = append(n.Cells, c)
	}
	return n
}

func drawOutput(t *rapid.T) Output {
	var o Output
	switch typ := rapid.SampledFrom([]string{Stream, DisplayData, ExecuteResult, Error}).Draw(t, "output"); typ {
	case Stream:
		o = StreamOutput(drawText.Draw(t, "name"), drawText.Draw(t, "text"))
	case Error:
		o = ErrorOutput(drawText.Draw(t, "ename"), drawText.Draw(t, "evalue"), []string{drawText.Draw(t, "line")})
	default:
		o = Output{Type: typ, Data: drawBundle(t), Metadata: drawObject(t, 1)}
		if typ == ExecuteResult {
			o.ExecutionCount = rapid.Ptr(rapid.IntRange(0, 99), true).Draw(t, "count")
		}
	}
	o.Extra = drawExtra(t)
	return o
}

func drawBundle(t *rapid.T) Bundle {
	b := Bundle{}
	for range rapid.IntRange(0, 3).Draw(t, "forms") {
		mime := rapid.SampledFrom([]string{"text/plain", "image/png", "image/svg+xml", "application/javascript", "application/x-a"}).Draw(t, "mime")
		b[mime] = drawText.Draw(t, "content")
	}
	if rapid.Bool().Draw(t, "json") {
		b["application/vnd.x+json"] = drawValue(t, 2)
	}
	return b
}

func drawExtra(t *rapid.T) map[string]any {
	if m := drawObject(t, 2); len(m) > 0 {
		return m
	}
	return nil
}

func drawObject(t *rapid.T, depth int) map[string]any {
	m := map[string]any{}
	for range rapid.IntRange(0, 2).Draw(t, "fields") {
		m[drawField.Draw(t, "key")] = drawValue(t, depth)
	}
	return m
}

func drawValue(t *rapid.T, depth int) any {
	kinds := 5
	if depth > 0 {
		kinds = 7
	}
	switch rapid.IntRange(0, kinds-1).Draw(t, "kind") {
	case 0:
		return nil
	case 1:
		return rapid.Bool().Draw(t, "bool")
	case 2:
		return json.Number(rapid.StringMatching(`-?(0|[1-9][0-9]{0,30})(\.[0-9]{1,9})?([eE][+-]?[0-9]{1,3})?`).Draw(t, "number"))
	case 3, 4:
		return drawText.Draw(t, "string")
	case 5:
		list := []any{}
		for range rapid.IntRange(0, 3).Draw(t, "items") {
			list = append(list, drawValue(t, depth-1))
		}
		return list
	default:
		return drawObject(t, depth-1)
	}
}
