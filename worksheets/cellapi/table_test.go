package cellapi_test

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"swanneck/worksheets/cellapi"
)

// jars writes a table and returns its name: in a plain Go program, files are read from where it runs.
func jars(t *testing.T, text string) string {
	t.Helper()
	name := filepath.Join(t.TempDir(), "jars.csv")
	if err := os.WriteFile(name, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	return name
}

func TestTable(t *testing.T) {
	g := cellapi.Table(jars(t, "jar;volume (mL);strength;at (°C);share\nfirst;200;76 %vol;20;0,5\nlast < 3;1 205,5;130 proof;68 °F;0.25\n"))
	if g.Len() != 2 || strings.Join(g.Headings(), " ") != "jar volume strength at share" || g.Column("jar")[1] != "last < 3" {
		t.Errorf("%v", g)
	}
	if v := g.Numbers("volume", "L"); v[0] != 0.2 || v[1] != 1.2055 {
		t.Errorf("volumes %v", v)
	}
	if s := g.Strengths("strength"); fmt.Sprintf("%.1f %.1f", s[0].ABV(), s[1].USProof()) != "76.0 130.0" {
		t.Errorf("strengths %v", s)
	}
	if c := g.Temperatures("at"); fmt.Sprintf("%.3f %.3f", c[0].C(), c[1].C()) != "20.000 20.000" {
		t.Errorf("temperatures %v", c)
	}
	if x := g.Numbers("share", "1"); x[0] != 0.5 || x[1] != 0.25 {
		t.Errorf("shares %v", x)
	}
	if h := g.HTML(); !strings.Contains(h, "last &lt; 3") || !strings.Contains(h, "<th>volume (mL)</th>") {
		t.Errorf("%s", h)
	}
	if s := g.String(); !strings.HasPrefix(s, "jar; volume (mL)") {
		t.Errorf("%s", s)
	}
}

func TestTableThatDoesNotFit(t *testing.T) {
	g := cellapi.Table(jars(t, "jar;volume;strength (%vol)\n1;200 mL;45\n\n2;;145\n3;1,512 L;x\n4;7;1\n"))
	for want, f := range map[string]func(){
		`Column: jars.csv has no column "vol"; there is jar, volume, strength`: func() { g.Column("vol") },
		`line 4, column "volume": the field is empty`:                          func() { g.Numbers("volume", "L") },
		`line 4, column "strength"`:                                            func() { g.Strengths("strength") },
		`line 2, column "volume": "mL" is no unit of mass`:                     func() { g.Numbers("volume", "kg") },
		"was not made by Table":                                                func() { cellapi.Grid{}.Column("x") },
		"none.csv":                                                             func() { cellapi.Table("none.csv") },
	} {
		func() {
			defer func() {
				s, ok := recover().(*cellapi.Stop)
				if !ok || !strings.Contains(s.Error(), want) || strings.Contains(s.Error(), "\n") {
					t.Errorf("%v; want one line with %q", s, want)
				}
			}()
			f()
			t.Errorf("accepted; want %q", want)
		}()
	}
	if cellapi.Grid.Len(cellapi.Grid{}) != 0 || (cellapi.Grid{}).String() != "no table" {
		t.Error("the zero table")
	}
}
