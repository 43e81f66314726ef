package still

import "fmt"

// Shares of the traces in the vapour of the pot, dimensionless: from the first on it is noted, beyond the second the
// reckoning would be wrong. Own choice.
const heavyNoted, heavyRefused = 0.02, 0.20

// notes says what there is to say of the run's figures.
func (w *writer) notes(s *state) ([]string, error) {
	m, run := w.m, &w.run
	share := 0.0
	for k := range m.burden.names {
		share += s.outK[k] / s.outN
	}
	if share > heavyRefused {
		return nil, inputf(m.function, "%.2g moles of congeners come over with each mole of spirit; this reckoning takes them as traces, up to %g: charge less of them, or let more spirit come over", share, heavyRefused)
	}
	var out []string
	add := func(format string, args ...any) { out = append(out, fmt.Sprintf(format, args...)) }
	if w.heavy > heavyRefused {
		return nil, inputf(m.function, "the congeners make up %.0f %% of the vapour; this reckoning takes them as traces, up to %.0f %%: charge less of them", 100*w.heavy, 100*heavyRefused)
	}
	if w.heavy > heavyNoted {
		add("the congeners make up to %.0f %% of the vapour: the pot boils colder than is reckoned here, and less spirit comes over with them", 100*w.heavy)
	}
	if w.over > heavyRefused {
		add("at its richest what runs holds %.2g moles of congeners to a mole of spirit, more than the reckoning is good for there; how much of them comes over in all is not touched by that", w.over)
	}
	if w.oil {
		add("more oil is in the still than its spirit dissolves: it lies on it as a second layer and comes over as fast as that gives off vapour")
	}
	if n := m.head.Note(); n != "" {
		add("the boiling line is %s", n)
	}
	if m.passive > 0 {
		add("head and neck condense %.0f %% of the vapour by their own loss of heat, a reflux of %.2f", 100*m.passive, m.passive/(1-m.passive))
	}
	if idle := len(m.plates.share) == 0 && !m.plates.differential; idle && (m.passive > 0 || m.batch.Reflux > 0) {
		add("without plates the reflux falls back to no effect but heat; give the neck a part of a plate if it strengthens")
	}
	if m.thumping {
		add("the vessel of the thumper itself is taken as weightless")
	}
	for k, name := range m.burden.names {
		for _, n := range m.head.Notes(k) {
			add("%s: %s", name, n)
		}
	}
	if run.Heat.Min == 0 && (m.batch.Heat.WaterOut.C() > m.batch.Heat.WaterIn.C()) {
		add("without the power of the heater no times and no flow of cooling water are reckoned")
	}
	return out, nil
}
