package notebook

import (
	"bytes"
	"path/filepath"
	"sync"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
)

var schema = sync.OnceValues(func() (*jsonschema.Schema, error) {
	return jsonschema.NewCompiler().Compile(filepath.Join(testdata, "nbformat.v4.5.schema.json"))
})

func schemaError(t testing.TB, data []byte) error {
	t.Helper()
	s, err := schema()
	if err != nil {
		t.Fatal(err)
	}
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(data))
	if err != nil {
		return err
	}
	return s.Validate(doc)
}

func validateSchema(t testing.TB, name string, data []byte) {
	t.Helper()
	if err := schemaError(t, data); err != nil {
		t.Errorf("%s: not valid by the schema of notebook format 4.5: %v", name, err)
	}
}

func TestSchema(t *testing.T) {
	for _, name := range canonical {
		if name == "unknown_fields.ipynb" {
			continue
		}
		validateSchema(t, name, mustBytes(t, mustRead(t, fixture(t, name))))
	}
	if schemaError(t, fixture(t, "unknown_fields.ipynb")) == nil {
		t.Error("the schema takes unknown_fields.ipynb: this check cannot fail")
	}
}

// A notebook put together by hand, with everything left out that may be.
func TestSchemaOfBuiltNotebook(t *testing.T) {
	n := New()
	n.SetOwn("inputs", map[string]float64{"volume_l": 600, "tiny": 1e-05})
	code := NewCell(Code, "Reduce(600, ABV(72.4), ABV(43))")
	code.Outputs = []Output{
		StreamOutput("stdout", "a\nb"),
		DisplayOutput(map[string]any{"text/plain": "x <&> y", "application/vnd.swanneck.result+json": struct {
			Name   string
			Figure float64 // kg
		}{"Water", 252.41}}),
		ResultOutput(1, map[string]any{"text/html": "<b>1</b>\n"}),
		ErrorOutput("RangeError", "too hot", nil),
	}
	n.Cells = []*Cell{NewCell(Markdown, "# Vat"), code, NewCell(Raw, ""), NewCell(Markdown, "")}
	data := mustBytes(t, n)
	validateSchema(t, "built", data)
	for _, want := range []string{`"tiny": 1e-05`, `"volume_l": 600`, "x <&> y", `"Figure": 252.41`} {
		if !bytes.Contains(data, []byte(want)) {
			t.Errorf("built notebook lacks %s:\n%s", want, data)
		}
	}
	back := mustRead(t, data)
	if back.OwnVersion() != OwnVersion || back.Language() != "go" {
		t.Errorf("own version %d, language %q", back.OwnVersion(), back.Language())
	}
	sameBytes(t, "built", mustBytes(t, back), data)
}
