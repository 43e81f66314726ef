package eval

import "reflect"

// fronts collects the functions that stand in for compiled ones which look into their operands by reflection, so that
// they would see boxes and storage types. They are keyed by import path, dot and name.
func (m *Machine) addFronts() {
	for _, set := range []map[string]any{m.fmtFronts(), errorFronts(), reflectFronts(), jsonFronts(), m.waitFronts()} {
		for name, fn := range set {
			m.fronts[name] = reflect.ValueOf(fn)
		}
	}
	for k, v := range m.cfg.Fronts {
		m.fronts[k] = v
	}
}
