package notebook

import (
	"errors"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

func TestReadRefuses(t *testing.T) {
	whole := string(fixture(t, "foreign.ipynb"))
	deep := `{"nbformat":4,"nbformat_minor":5,"metadata":` + strings.Repeat(`{"a":`, 5000) + "1" + strings.Repeat("}", 5000) + `,"cells":[]}`
	for _, c := range []struct{ name, src, want string }{
		{"empty", " \n", "holds nothing"},
		{"truncated", whole[:len(whole)/2], "breaks off"},
		{"not JSON", "# Vat\n\nreduce", "line 1 (byte 0) is not JSON"},
		{"bad second line", "{\n \"cells\": [,]}", "line 2 (byte 13) is not JSON"},
		{"two values", "{}{}", "is not JSON"},
		{"not UTF-8", "{\"a\":\n\"\xff\"}", "line 2 (byte 7) is not UTF-8"},
		{"a list", "[]", "is JSON but no notebook: it is a list"},
		{"other JSON", `{"volume": 600}`, "it has no nbformat"},
		{"format as text", `{"nbformat":"4"}`, `has "4" as nbformat`},
		{"no minor", `{"nbformat":4}`, "nbformat_minor"},
		{"format 3", string(fixture(t, "version_3.ipynb")), "is of notebook format 3; want format 4"},
		{"format 5", `{"nbformat":5,"nbformat_minor":0}`, "is of notebook format 5"},
		{"key twice", "{\"nbformat\":4,\n\"nbformat\":4}", "line 2 (byte 25) has the key \"nbformat\" twice"},
		{"half pair", `{"a":"x\ud800y"}`, `(byte 7) holds \ud800`},
		{"half pair, low", `{"a":"\udc00"}`, `holds \udc00`},
		{"deep", deep, "nests values more than 1000 deep"},
		{"cells no list", `{"nbformat":4,"nbformat_minor":5,"cells":{}}`, "has an object as cells; want a list"},
		{"cell no object", `{"nbformat":4,"nbformat_minor":5,"cells":[7]}`, "cell 1 is the number 7"},
		{"no type", `{"nbformat":4,"nbformat_minor":5,"cells":[{}]}`, "cell 1 has no cell_type"},
		{"source", `{"nbformat":4,"nbformat_minor":5,"cells":[{"cell_type":"raw","source":[1]}]}`, "cell 1 has a list as source"},
		{"id", `{"nbformat":4,"nbformat_minor":5,"cells":[{"cell_type":"raw","id":1}]}`, "cell 1 has the number 1 as id"},
		{"count", `{"nbformat":4,"nbformat_minor":5,"cells":[{"cell_type":"code","execution_count":1.5}]}`, "the number 1.5 as execution_count"},
		{"output", `{"nbformat":4,"nbformat_minor":5,"cells":[{"cell_type":"code","outputs":[{"output_type":"error","traceback":[1]}]}]}`, "cell 1, output 1 has the number 1 in its traceback"},
	} {
		_, err := Read([]byte(c.src))
		var fe *FormatError
		if !errors.As(err, &fe) || !strings.Contains(err.Error(), c.want) || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s: Read = %v; want one line with %q", c.name, err, c.want)
		}
	}
}

func TestReadAccepts(t *testing.T) {
	for name, src := range map[string]string{
		"byte order mark": "\xef\xbb\xbf" + `{"nbformat":4,"nbformat_minor":0,"metadata":{},"cells":[]}`,
		"pair":            `{"nbformat":4,"nbformat_minor":5,"metadata":{"a":"\ud83c\udf7e \\ud800"},"cells":[]}`,
		"nothing else":    `{"nbformat":4,"nbformat_minor":5}`,
	} {
		validateSchema(t, name, mustBytes(t, mustRead(t, []byte(src))))
	}
}

func TestBytesRefuses(t *testing.T) {
	for name, n := range map[string]*Notebook{
		"nil cell":   {Cells: []*Cell{nil}},
		"no type":    {Cells: []*Cell{{}}},
		"bad text":   {Cells: []*Cell{NewCell(Raw, "\xff")}},
		"bad output": {Cells: []*Cell{{Type: Code, Outputs: []Output{{}}}}},
		"not finite": {Metadata: map[string]any{"x": math.NaN()}},
		"a channel":  {Metadata: map[string]any{"x": make(chan int)}},
	} {
		if _, err := n.Bytes(); err == nil || !strings.HasPrefix(err.Error(), "notebook.Bytes: ") || strings.Contains(err.Error(), "\n") {
			t.Errorf("%s: Bytes = %v; want one line", name, err)
		}
	}
}

func TestReadFileErrors(t *testing.T) {
	dir := t.TempDir()
	bad := filepath.Join(dir, "bad.ipynb")
	if err := os.WriteFile(bad, []byte("{\n\"a\" 1}"), 0o644); err != nil {
		t.Fatal(err)
	}
	big := filepath.Join(dir, "big.ipynb")
	f, err := os.Create(big)
	if err != nil {
		t.Fatal(err)
	}
	if err := f.Truncate(MaxBytes + 1); err != nil {
		t.Fatal(err)
	}
	f.Close()
	missing := filepath.Join(dir, "missing.ipynb")
	for path, want := range map[string]string{
		bad:     "notebook.ReadFile: " + bad + " line 2 (byte 6) is not JSON",
		missing: "notebook.ReadFile: " + missing + " cannot be opened",
		dir:     "is a folder",
		big:     big + " is larger than 256 MiB",
	} {
		if _, err := ReadFile(path); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("ReadFile(%s) = %v; want %q", path, err, want)
		}
	}
}
