package main

import (
	"archive/zip"
	"bytes"
	"encoding/json"
	"go/ast"
	"go/doc"
	"go/token"
	"strings"

	"golang.org/x/tools/go/gcexportdata"
	"golang.org/x/tools/go/packages"
)

// typeData writes a zip with one export data file a package. The empty file set keeps positions out of it.
func typeData(b *bytes.Buffer, pkgs []*packages.Package) error {
	z := zip.NewWriter(b)
	for _, p := range pkgs {
		f, err := z.Create(p.PkgPath)
		if err != nil {
			return err
		}
		if err := gcexportdata.Write(f, token.NewFileSet(), p.Types); err != nil {
			return err
		}
	}
	return z.Close()
}

// docs writes a zip with one JSON file a package: name, or Type.Method, or Type.Field → documentation;
// the package's own text under the empty name.
func docs(b *bytes.Buffer, pkgs []*packages.Package) error {
	z := zip.NewWriter(b)
	for _, p := range pkgs {
		d, err := doc.NewFromFiles(p.Fset, p.Syntax, p.PkgPath)
		if err != nil {
			return err
		}
		m := map[string]string{}
		put := func(name, text string) {
			if text = strings.TrimSpace(text); text != "" {
				m[name] = text
			}
		}
		put("", firstParagraph(d.Doc))
		funcs := func(prefix string, fs []*doc.Func) {
			for _, f := range fs {
				put(prefix+f.Name, f.Doc)
			}
		}
		vals := func(vs []*doc.Value) {
			for _, v := range vs {
				for _, spec := range v.Decl.Specs {
					s, ok := spec.(*ast.ValueSpec)
					if !ok {
						continue
					}
					for _, n := range s.Names {
						text := s.Doc.Text() + s.Comment.Text()
						if text == "" {
							text = v.Doc
						}
						if n.IsExported() {
							put(n.Name, text)
						}
					}
				}
			}
		}
		funcs("", d.Funcs)
		vals(d.Consts)
		vals(d.Vars)
		for _, t := range d.Types {
			put(t.Name, t.Doc)
			funcs("", t.Funcs)
			funcs(t.Name+".", t.Methods)
			vals(t.Consts)
			vals(t.Vars)
			fields(t, put)
		}
		f, err := z.Create(p.PkgPath)
		if err != nil {
			return err
		}
		text, err := json.Marshal(m)
		if err != nil {
			return err
		}
		if _, err := f.Write(text); err != nil {
			return err
		}
	}
	return z.Close()
}

func fields(t *doc.Type, put func(name, text string)) {
	for _, spec := range t.Decl.Specs {
		s, ok := spec.(*ast.TypeSpec)
		if !ok || s.Name.Name != t.Name {
			continue
		}
		st, ok := s.Type.(*ast.StructType)
		if !ok {
			continue
		}
		for _, f := range st.Fields.List {
			for _, n := range f.Names {
				if n.IsExported() {
					put(t.Name+"."+n.Name, f.Doc.Text()+f.Comment.Text())
				}
			}
		}
	}
}

func firstParagraph(s string) string {
	s, _, _ = strings.Cut(s, "\n\n")
	return s
}
