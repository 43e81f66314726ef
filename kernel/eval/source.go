package eval

import "go/ast"

// AddSource makes a package given as checked source known, before anything that uses it runs. A path that is known
// already is left as it is.
func (m *Machine) AddSource(path string, s *Source) {
	m.mu.Lock()
	defer m.mu.Unlock()
	if m.cfg.Sources[path] != nil {
		return
	}
	if m.cfg.Sources == nil {
		m.cfg.Sources = map[string]*Source{}
	}
	m.cfg.Sources[path] = s
	m.declareSource(s)
}

func (m *Machine) declareSource(s *Source) {
	u := &unit{m, s.Info, s.Fset, s.Pkg}
	for _, f := range s.Files {
		for _, d := range f.Decls {
			if fd, ok := d.(*ast.FuncDecl); ok {
				m.addDecl(u, fd)
			}
		}
	}
}
