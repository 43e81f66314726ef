package notebook

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"
)

const testdata = "../../testdata/notebooks"

// canonical names the files that the reference library wrote; its bytes must come back.
var canonical = []string{"foreign.ipynb", "worksheet.ipynb", "unknown_fields.ipynb", "no_cells.ipynb", "version_4_2_raised.ipynb"}

func fixture(t testing.TB, name string) []byte {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(testdata, name))
	if err != nil {
		t.Fatal(err)
	}
	return data
}

func mustRead(t testing.TB, data []byte) *Notebook {
	t.Helper()
	n, err := Read(data)
	if err != nil {
		t.Fatal(err)
	}
	return n
}

func mustBytes(t testing.TB, n *Notebook) []byte {
	t.Helper()
	data, err := n.Bytes()
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// sameBytes shows the first line that differs.
func sameBytes(t *testing.T, what string, got, want []byte) {
	t.Helper()
	if bytes.Equal(got, want) {
		return
	}
	g, w := bytes.Split(got, []byte("\n")), bytes.Split(want, []byte("\n"))
	for i := range min(len(g), len(w)) {
		if !bytes.Equal(g[i], w[i]) {
			t.Errorf("%s, line %d: got %q; the reference library wrote %q", what, i+1, g[i], w[i])
			return
		}
	}
	t.Errorf("%s: got %d lines; the reference library wrote %d", what, len(g), len(w))
}

func TestReferenceBytes(t *testing.T) {
	for _, name := range canonical {
		data := fixture(t, name)
		sameBytes(t, name, mustBytes(t, mustRead(t, data)), data)
	}
}

// A file of version 4.2 in another layout becomes what the reference library makes of it, but for the identifiers,
// which the reference library draws at random.
func TestRaiseOldMinor(t *testing.T) {
	raised := mustRead(t, fixture(t, "version_4_2_raised.ipynb"))
	n := mustRead(t, fixture(t, "version_4_2.ipynb"))
	if len(n.Cells) != len(raised.Cells) || len(n.Cells) == 0 {
		t.Fatalf("version_4_2.ipynb has %d cells; the reference library wrote %d", len(n.Cells), len(raised.Cells))
	}
	validateSchema(t, "version_4_2.ipynb", mustBytes(t, n))
	for i := range n.Cells {
		n.Cells[i].ID = raised.Cells[i].ID
	}
	sameBytes(t, "version_4_2.ipynb", mustBytes(t, n), fixture(t, "version_4_2_raised.ipynb"))
}

func TestFieldsOfForeignNotebook(t *testing.T) {
	n := mustRead(t, fixture(t, "foreign.ipynb"))
	if got := n.Language(); got != "julia" {
		t.Errorf("Language() = %q; the file says julia", got)
	}
	c := n.Cells[1]
	if c.Type != Code || c.ExecutionCount == nil || *c.ExecutionCount != 3 || c.Source != "using Plots\nx = 1e-5\n" {
		t.Errorf("cell 2 = %+v", c)
	}
	if got := c.Outputs[0].Text; got != "one\ntwo\u2028three\n" {
		t.Errorf("stream text = %q", got)
	}
	d := c.Outputs[2].Data
	if got, ok := d.Text("text/plain"); !ok || got != "Figure\nof 2 lines" {
		t.Errorf("text/plain = %q, %v", got, ok)
	}
	if _, ok := d.Text("application/json"); ok {
		t.Error("Text(application/json) says a JSON object is text")
	}
	if got := c.Outputs[4]; got.Ename != "DomainError" || len(got.Traceback) != 3 {
		t.Errorf("error = %+v", got)
	}
	if _, ok := n.Cells[0].Attachments["jar.png"].Text("image/png"); !ok {
		t.Error("the attachment jar.png has no image/png")
	}
}

func TestUnknownFieldsAreKept(t *testing.T) {
	n := mustRead(t, fixture(t, "unknown_fields.ipynb"))
	if n.Extra["future_top"] == nil || n.Cells[0].Extra["future_cell"] == nil {
		t.Error("unknown fields are not in Extra")
	}
	if o := n.Cells[1].Outputs[2]; o.Type != "hologram" || o.Extra["source"] != "a\nb" {
		t.Errorf("unknown output = %+v", o)
	}
}

// A later minor version is kept, and what it adds.
func TestLaterMinor(t *testing.T) {
	src := "{\n \"cells\": [],\n \"later\": 1,\n \"metadata\": {},\n \"nbformat\": 4,\n \"nbformat_minor\": 7\n}\n"
	sameBytes(t, "4.7", mustBytes(t, mustRead(t, []byte(src))), []byte(src))
}

func TestFloatText(t *testing.T) {
	// Python library reference, repr of float: shortest digits, an exponent below 1e-4 and from 1e16.
	for _, c := range []struct {
		x    float64 // dimensionless
		want string
	}{
		{1e-05, "1e-05"}, {0.0001, "0.0001"}, {1, "1.0"}, {1e16, "1e+16"}, {123456789012345.6, "123456789012345.6"},
		{1e15, "1000000000000000.0"}, {1.5e300, "1.5e+300"}, {-2.5, "-2.5"}, {0, "0.0"}, {5e-324, "5e-324"},
	} {
		if got, err := floatText(c.x); got != c.want || err != nil {
			t.Errorf("floatText(%g) = %s, %v; Python gives %s", c.x, got, err, c.want)
		}
	}
}
