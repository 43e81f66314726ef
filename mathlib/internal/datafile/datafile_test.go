package datafile_test

import (
	"strings"
	"testing"
	"testing/fstest"

	"swanneck/mathlib/internal/datafile"
)

func read(text string) ([]datafile.Row, error) {
	return datafile.Read(fstest.MapFS{"x.csv": {Data: []byte(text)}}, "x.csv")
}

func TestRead(t *testing.T) {
	rows, err := read("# head\n# more\nname,n,x,status,source,note\na,1,2.5,seen,\"Some Book, p. 3\",far off\nb,2,,seen,Book,\n")
	if err != nil || len(rows) != 2 {
		t.Fatalf("%d rows, %v", len(rows), err)
	}
	r := rows[0]
	status, source, note := r.Source()
	if r.Text("name") != "a" || r.Whole("n") != 1 || r.Number("x") != 2.5 || rows[1].Optional("x") != 0 || r.Optional("x") != 2.5 || status != "seen" || source != "Some Book, p. 3" || note != "far off" || r.Err() != nil {
		t.Errorf("the first row reads %v, %v", r, r.Err())
	}
}

func TestReadRefuses(t *testing.T) {
	for text, want := range map[string]string{
		"name,source\na,b\n":                           "no head",
		"# head\n":                                     "EOF",
		"# head\nname,source\n":                        "no rows",
		"# head\nname,source\na\n":                     "wrong number of fields",
		"# head\nname,source\na,b\nc,\"d\"e\n":         "line 4",
		"# head\nname,status,source\na,seen,\n":        "x.csv, line 3: a has no source",
		"# head\nname,status,source\na,seen,  \n":      "a has no source",
		"# head\nname,status,source\na,,b\n":           "a has no status word",
		"# head\nname,status\na,seen\n":                "no column \"source\"",
		"# head\nname,status,source,x\na,seen,b,1e999": "x is \"1e999\"",
		"# head\nname,status,source,x\na,seen,b,":      "x is \"\"",
	} {
		rows, err := read(text)
		if err == nil {
			for _, r := range rows {
				r.Source()
				if strings.Contains(text, "source,x") {
					r.Number("x")
				}
				err = r.Err()
			}
		}
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: %v; want an error with %q", text, err, want)
		}
	}
	rows, _ := read("# head\nname,n\na,1.5\n")
	if rows[0].Whole("n"); rows[0].Err() == nil {
		t.Error("1.5 is taken for a whole number")
	}
	if _, err := datafile.Read(fstest.MapFS{}, "x.csv"); err == nil {
		t.Error("no file: no error")
	}
}
