// Package arch holds the rules of who may import whom, and of what names say, as tests. They read the files, so that a
// package that does not compile is judged too.
package arch

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

const module = "swanneck"

// file is a Go file of the module.
type file struct {
	name string // relative to the module's root, with slashes
	pkg  string // folder
	ast  *ast.File
	fset *token.FileSet
}

func (f file) test() bool { return strings.HasSuffix(f.name, "_test.go") }

func files(t *testing.T) []file {
	t.Helper()
	root, err := filepath.Abs("../../..")
	if err != nil {
		t.Fatal(err)
	}
	fset := token.NewFileSet()
	var out []file
	err = filepath.WalkDir(root, func(p string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() {
			if n := d.Name(); p != root && (strings.HasPrefix(n, ".") || n == "testdata" || n == "out") {
				return filepath.SkipDir
			}
			return nil
		}
		if !strings.HasSuffix(p, ".go") {
			return nil
		}
		f, err := parser.ParseFile(fset, p, nil, parser.ParseComments)
		if err != nil {
			return err
		}
		rel, err := filepath.Rel(root, p)
		if err != nil {
			return err
		}
		rel = filepath.ToSlash(rel)
		out = append(out, file{rel, path.Dir(rel), f, fset})
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if len(out) < 50 {
		t.Fatalf("only %d Go files were found from %s: the test looks in the wrong place", len(out), root)
	}
	return out
}

func imports(f file) []string {
	var out []string
	for _, s := range f.ast.Imports {
		p, _ := strconv.Unquote(s.Path.Value)
		out = append(out, p)
	}
	return out
}

func within(pkg, folder string) bool { return pkg == folder || strings.HasPrefix(pkg, folder+"/") }

func own(p string) (string, bool) { return strings.CutPrefix(p, module+"/") }

func standard(p string) bool {
	return !strings.Contains(strings.Split(p, "/")[0], ".") && !strings.HasPrefix(p, module+"/")
}

// below lists, for each package of mathlib, the packages of mathlib it may import, beside quantity.
var below = map[string][]string{
	"quantity":          {},
	"alcoholometry":     {},
	"mixing":            {"alcoholometry", "internal/simplex"},
	"internal/simplex":  {},
	"yield":             {"alcoholometry", "mixing"},
	"internal/datafile": {},
	"compound":          {"alcoholometry", "internal/datafile"},
	"equilibrium":       {"alcoholometry", "compound", "internal/datafile"},
	"still":             {"alcoholometry", "botanical", "compound", "equilibrium", "mixing", "internal/datafile"},
	"internal/chance":   {},
	"uncertainty":       {"alcoholometry", "internal/chance"},
	"sensory":           {"alcoholometry", "internal/chance"},
	"louche":            {"alcoholometry", "compound", "internal/datafile"},
	"aroma":             {"alcoholometry", "compound", "equilibrium", "louche", "internal/datafile"},
	"colour":            {"alcoholometry", "internal/datafile"},
	"botanical":         {"alcoholometry", "compound", "internal/datafile"},
	"limits":            {"alcoholometry", "internal/datafile"},
	"sheet":             {"*"},
}

func TestImports(t *testing.T) {
	for _, f := range files(t) {
		for _, imp := range imports(f) {
			if why := forbidden(f, imp); why != "" {
				t.Errorf("%s imports %s: %s", f.name, imp, why)
			}
		}
	}
}

func forbidden(f file, imp string) string {
	local, isOwn := own(imp)
	switch {
	case within(f.pkg, "mathlib"):
		if isOwn && !within(local, "mathlib") {
			return "mathlib sees nothing of kernel, plots and worksheets"
		}
		if !isOwn && !standard(imp) && !strings.HasPrefix(imp, "gonum.org/v1/gonum/") && !(f.test() && imp == "pgregory.net/rapid") {
			return "mathlib uses the standard library and gonum's numeric packages only"
		}
		if !f.test() && slices.Contains([]string{"os", "net", "os/exec", "unsafe", "reflect", "math/rand"}, imp) {
			return "mathlib computes: no files, no network, no chance, no tricks"
		}
		if isOwn && !f.test() {
			return downhill(strings.TrimPrefix(f.pkg, "mathlib/"), strings.TrimPrefix(local, "mathlib/"))
		}
	case within(f.pkg, "plots"):
		if isOwn && local != "plots" {
			return "plots knows slices and strings, nothing of ours"
		}
	case within(f.pkg, "kernel/symbols"), within(f.pkg, "kernel/cmd"):
		// They join everything.
	case within(f.pkg, "kernel"):
		if isOwn && (within(local, "mathlib") || within(local, "plots") || within(local, "worksheets")) {
			return "in kernel only symbols and cmd see mathlib, plots and worksheets"
		}
		if isOwn && within(local, "kernel/symbols") && !f.test() {
			return "only cmd hands the symbols in"
		}
		if isOwn && within(local, "kernel/eval") && !within(f.pkg, "kernel/eval") && f.name != "kernel/engine/evaluator_eval.go" {
			return "one file of the engine imports the evaluator"
		}
		if f.pkg == "kernel/cell" && isOwn {
			return "the front end knows Go and nothing of ours"
		}
	case within(f.pkg, "worksheets"):
		if strings.Contains(imp, "zmq") || isOwn && within(local, "kernel/protocol") {
			return "worksheets never use sockets"
		}
		if isOwn && within(local, "kernel") && local != "kernel/engine" && local != "kernel/display" && local != "kernel/cell" && !f.test() {
			return "worksheets use the engine, the front end and the display, nothing else of kernel"
		}
	}
	if strings.Contains(imp, "traefik/yaegi") && !within(f.pkg, "kernel/engine") {
		return "the interpreter belongs to the engine"
	}
	if strings.Contains(imp, "zmq4") && f.pkg != "kernel/protocol" {
		return "sockets belong to kernel/protocol"
	}
	return ""
}

func downhill(from, to string) string {
	may, known := below[from]
	if !known {
		may = []string{"alcoholometry", "mixing", "compound", "equilibrium", "still"} // a package of its own subject
	}
	if to == from || to == "quantity" || slices.Contains(may, "*") || slices.Contains(may, to) {
		return ""
	}
	return "imports run downhill: " + from + " may use quantity, " + strings.Join(may, ", ")
}

// A test of the test: rules that nothing can break are no rules.
func TestForbidden(t *testing.T) {
	at := func(name string) file { return file{name: name, pkg: path.Dir(name)} }
	for _, c := range []struct {
		file, imp string
		wrong     bool
	}{
		{"mathlib/quantity/x.go", "swanneck/mathlib/alcoholometry", true},
		{"mathlib/alcoholometry/x.go", "swanneck/mathlib/quantity", false},
		{"mathlib/alcoholometry/x.go", "swanneck/mathlib/mixing", true},
		{"mathlib/mixing/x.go", "swanneck/mathlib/alcoholometry", false},
		{"mathlib/mixing/x.go", "os", true},
		{"mathlib/mixing/x_test.go", "os", false},
		{"mathlib/mixing/x.go", "github.com/google/uuid", true},
		{"mathlib/mixing/x.go", "gonum.org/v1/gonum/mat", false},
		{"mathlib/compound/x.go", "swanneck/mathlib/equilibrium", true},
		{"mathlib/equilibrium/x.go", "swanneck/mathlib/compound", false},
		{"mathlib/equilibrium/x.go", "swanneck/mathlib/internal/datafile", false},
		{"mathlib/internal/datafile/x.go", "swanneck/mathlib/compound", true},
		{"mathlib/sheet/x.go", "swanneck/mathlib/mixing", false},
		{"mathlib/sheet/x.go", "swanneck/kernel/cell", true},
		{"plots/x.go", "swanneck/mathlib/quantity", true},
		{"kernel/cell/x.go", "swanneck/mathlib/sheet", true},
		{"kernel/cell/x.go", "swanneck/kernel/eval", true},
		{"kernel/engine/x.go", "swanneck/kernel/eval", true},
		{"kernel/engine/evaluator_eval.go", "swanneck/kernel/eval", false},
		{"kernel/engine/x.go", "swanneck/kernel/symbols", true},
		{"kernel/cmd/swanneck/x.go", "swanneck/kernel/symbols", false},
		{"worksheets/runner/x.go", "swanneck/kernel/engine", false},
		{"worksheets/runner/x.go", "swanneck/kernel/protocol", true},
		{"worksheets/runner/x.go", "swanneck/kernel/eval", true},
		{"worksheets/runner/x.go", "github.com/go-zeromq/zmq4", true},
	} {
		if why := forbidden(at(c.file), c.imp); (why != "") != c.wrong {
			t.Errorf("%s importing %s: %q; want a refusal: %v", c.file, c.imp, why, c.wrong)
		}
	}
}
