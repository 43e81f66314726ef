package arch

import (
	"go/ast"
	"regexp"
	"strings"
	"testing"
)

// An exported float64 ends in its unit, or its comment names the unit or says "dimensionless".
var (
	unitSuffix = regexp.MustCompile(`(L|ML|HL|Kg|G|Lb|Oz|C|F|K|KJ|JMol|JMolK|KPa|MmHg|Bar|KgM3|GL|MgL|S|Min|H|ABV|ABW|Proof|Pct|Gal|Gallons|Litres|DPI)$`)
	unitWord   = regexp.MustCompile(`dimensionless|% vol|per cent|proof|kg/m³|°C|°F|kelvin|kPa|mmHg|atmosphere|\bbar\b|litre|gallon|millilitre|hectolitre|\bkg\b|kilogram|gram|pound|ounce|kJ|J/mol|\bL\b|mL|hL|dpi|dots per inch|axis|unit`)
)

func TestFloatsNameTheirUnit(t *testing.T) {
	seen := 0
	check := func(f file, n ast.Node, what, name, comment string) {
		seen++
		if !named(name, comment) {
			t.Errorf("%s: %s %s is a float64 without a unit: end the name in its unit, or name the unit or \"dimensionless\" in the comment", f.fset.Position(n.Pos()), what, name)
		}
	}
	for _, f := range files(t) {
		if f.test() || !within(f.pkg, "mathlib") && !within(f.pkg, "plots") && !within(f.pkg, "worksheets") && f.pkg != "kernel/display" {
			continue
		}
		for _, d := range f.ast.Decls {
			switch d := d.(type) {
			case *ast.FuncDecl:
				if d.Name.IsExported() && d.Type.Results != nil && receiverExported(d) {
					for _, r := range d.Type.Results.List {
						if isFloat(r.Type) {
							check(f, d, "the result of", d.Name.Name, d.Doc.Text())
							break
						}
					}
				}
			case *ast.GenDecl:
				for _, s := range d.Specs {
					switch s := s.(type) {
					case *ast.TypeSpec:
						st, ok := s.Type.(*ast.StructType)
						if !ok || !s.Name.IsExported() {
							continue
						}
						for _, fl := range st.Fields.List {
							for _, n := range fl.Names {
								if n.IsExported() && isFloat(fl.Type) {
									check(f, n, "the field", s.Name.Name+"."+n.Name, fl.Doc.Text()+fl.Comment.Text())
								}
							}
						}
					case *ast.ValueSpec:
						for _, n := range s.Names {
							if n.IsExported() && s.Type != nil && isFloat(s.Type) {
								check(f, n, "the value", n.Name, d.Doc.Text()+s.Doc.Text()+s.Comment.Text())
							}
						}
					}
				}
			}
		}
	}
	if seen < 20 {
		t.Fatalf("only %d exported floats were found: the test looks in the wrong place", seen)
	}
}

func named(name, comment string) bool {
	return unitSuffix.MatchString(name) || unitWord.MatchString(comment)
}

func isFloat(x ast.Expr) bool {
	id, ok := x.(*ast.Ident)
	return ok && (id.Name == "float64" || id.Name == "float32")
}

func receiverExported(d *ast.FuncDecl) bool {
	if d.Recv == nil || len(d.Recv.List) == 0 {
		return true
	}
	t := d.Recv.List[0].Type
	if s, ok := t.(*ast.StarExpr); ok {
		t = s.X
	}
	id, ok := t.(*ast.Ident)
	return ok && id.IsExported()
}

func TestNamed(t *testing.T) {
	for _, c := range []struct {
		name, comment string
		want          bool
	}{
		{"Reduction.WaterKg", "", true},
		{"Reduction.Water", "", false},
		{"Reduction.Share", "dimensionless, 0 to 1", true},
		{"Strength", "Strength returns something.", false},
	} {
		if got := named(c.name, c.comment); got != c.want {
			t.Errorf("named(%q, %q) = %v; want %v", c.name, c.comment, got, c.want)
		}
	}
}

// No file of the project speaks of anything but the project.
func TestProjectSpeaksOfItself(t *testing.T) {
	for _, f := range files(t) {
		for _, g := range f.ast.Comments {
			for _, word := range []string{"/work" + "/", "/root" + "/", "../" + "shared"} {
				if strings.Contains(g.Text(), word) {
					t.Errorf("%s: a comment names a path of one machine: %q", f.fset.Position(g.Pos()), word)
				}
			}
		}
	}
}
