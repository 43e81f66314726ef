package symbols

import (
	"archive/zip"
	"bytes"
	_ "embed"
	"encoding/json"
	"fmt"
	"io"
	"reflect"
	"sync"
)

//go:embed typedata_gen.zip
var typeData []byte

//go:embed docs_gen.zip
var docData []byte

// tables holds, by package path, what builds a package's table of values.
var tables = map[string]func() map[string]reflect.Value{}

// Values returns a fresh table of a package's values, or nil for a package that is not on the whitelist.
func Values(path string) map[string]reflect.Value {
	if f := tables[path]; f != nil {
		return f()
	}
	return nil
}

// archive finds the files of an embedded zip by name.
type archive struct {
	data *[]byte
	once sync.Once
	byID map[string]*zip.File
}

var (
	typeArchive = archive{data: &typeData}
	docArchive  = archive{data: &docData}
)

func (a *archive) read(name string) ([]byte, error) {
	a.once.Do(func() {
		a.byID = map[string]*zip.File{}
		z, err := zip.NewReader(bytes.NewReader(*a.data), int64(len(*a.data)))
		if err != nil {
			return
		}
		for _, f := range z.File {
			a.byID[f.Name] = f
		}
	})
	f := a.byID[name]
	if f == nil {
		return nil, fmt.Errorf("symbols: no data for package %q", name)
	}
	r, err := f.Open()
	if err != nil {
		return nil, err
	}
	defer r.Close()
	return io.ReadAll(r)
}

// TypeData returns a package's export data, in the form that golang.org/x/tools/go/gcexportdata reads.
func TypeData(path string) ([]byte, error) { return typeArchive.read(path) }

// Docs returns a package's documentation by name ("Reduce", "Spirit.PureL"; the package's own under "").
func Docs(path string) (map[string]string, error) {
	b, err := docArchive.read(path)
	if err != nil {
		return nil, err
	}
	m := map[string]string{}
	if err := json.Unmarshal(b, &m); err != nil {
		return nil, fmt.Errorf("symbols: documentation of %q: %w", path, err)
	}
	return m, nil
}
