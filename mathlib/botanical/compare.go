package botanical

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"swanneck/mathlib/quantity"
)

// Comparison is two trials side by side.
type Comparison struct {
	Differences []Difference // by cut, as the newer trial has them, and compound
	OnlyOld     []string     // cuts that the newer trial has not
	OnlyNew     []string     // cuts that the older trial has not
	Notes       []string
}

// Difference is a compound of a cut in both trials.
type Difference struct {
	Cut, Compound string
	OldMgL        Range  // in a litre of the older trial's cut, mg
	NewMgL        Range  // of the newer one's
	Times         Range  // new over old, dimensionless; unset where the old cut may hold none
	Verdict       string // "more", "less", "the same" or "cannot tell"
	SameLots      bool   // what is not known of a lot that both share was left out of Times
	By            []Change
}

// Change is what a plant gives to a compound of a cut in both trials.
type Change struct {
	Plant  string
	OldMgL Range // mg to the litre of cut
	NewMgL Range
}

// Compare sets a trial beside an older one: for each cut of one name and each compound, how many times as much a litre
// holds, with the range of that. It says "more" or "less" only where the whole range says so. Where both trials take a plant
// from one lot (Botanical.Lot) with the same figures, what is not known of that lot is the same in both and cancels: two
// trials can differ for sure although neither content is known well.
//
// It fails if the trials have no cut of one name.
func Compare(older, newer CarryOver) (Comparison, error) {
	const fn = "botanical.Compare"
	var out Comparison
	for _, c := range older.Cuts {
		if !slices.ContainsFunc(newer.Cuts, func(d CutProfile) bool { return d.Name == c.Name }) {
			out.OnlyOld = append(out.OnlyOld, c.Name)
		}
	}
	common := 0
	for i, c := range newer.Cuts {
		j := slices.IndexFunc(older.Cuts, func(d CutProfile) bool { return d.Name == c.Name })
		if j < 0 {
			out.OnlyNew = append(out.OnlyNew, c.Name)
			continue
		}
		common++
		out.addCut(older, newer, j, i)
	}
	if common == 0 {
		return Comparison{}, inputf(fn, "the trials have no cut of one name: %q and %q; name cuts alike that stand for the same", out.OnlyOld, out.OnlyNew)
	}
	for _, d := range out.Differences {
		if d.SameLots {
			out.Notes = append(out.Notes, "where a lot is the same in both trials, its unknown oil content and shares cancel: the ratio compares amounts and cuts")
			break
		}
	}
	for _, d := range out.Differences {
		if !d.SameLots {
			out.Notes = append(out.Notes, "ratios without a common lot carry the ranges of both trials")
			break
		}
	}
	return out, nil
}

func (c *Comparison) addCut(older, newer CarryOver, j, i int) {
	a, b := older.Cuts[j], newer.Cuts[i]
	if a.Spirit.VolumeL == 0 || b.Spirit.VolumeL == 0 {
		return
	}
	var names []string
	for _, p := range []CutProfile{a, b} {
		for _, x := range p.Contents {
			if !slices.Contains(names, x.Compound) {
				names = append(names, x.Compound)
			}
		}
	}
	slices.Sort(names)
	la, lb := a.Spirit.VolumeAt(quantity.Temperature{}), b.Spirit.VolumeAt(quantity.Temperature{})
	for _, name := range names {
		d := Difference{Cut: b.Name, Compound: name, OldMgL: a.find(name).mgL(), NewMgL: b.find(name).mgL()}
		if !d.OldMgL.IsSet() {
			d.OldMgL = Exactly(0)
		}
		if !d.NewMgL.IsSet() {
			d.NewMgL = Exactly(0)
		}
		d.By = changes(a.find(name), b.find(name), la, lb)
		f := fraction{}
		f.add(older.Loads, newer.Loads, name, j, i, 1000/la, 1000/lb)
		d.SameLots = len(f.shared) > 0
		d.Times, d.Verdict = f.ratio()
		c.Differences = append(c.Differences, d)
	}
}

func (p CutProfile) find(name string) Content {
	for _, c := range p.Contents {
		if c.Compound == name {
			return c
		}
	}
	return Content{}
}

func changes(a, b Content, la, lb float64) []Change {
	var out []Change
	at := func(plant string) *Change {
		for i := range out {
			if out[i].Plant == plant {
				return &out[i]
			}
		}
		out = append(out, Change{Plant: plant, OldMgL: Exactly(0), NewMgL: Exactly(0)})
		return &out[len(out)-1]
	}
	for _, f := range a.From {
		at(f.Plant).OldMgL = f.G.scaled(1000 / la)
	}
	for _, f := range b.From {
		at(f.Plant).NewMgL = f.G.scaled(1000 / lb)
	}
	slices.SortFunc(out, func(x, y Change) int { return strings.Compare(x.Plant, y.Plant) })
	return out
}

// fraction is new over old of a compound in a cut: (Σ u n + N)/(Σ u o + O) in mg/L, where u is what the gram of a shared lot
// holds, the same above and below.
type fraction struct {
	shared   []sharedLot
	new, old Range // of everything else
}

type sharedLot struct {
	u        Range // g to each g of plant
	new, old Range // mg/L to each u
}

func (f *fraction) add(older, newer []Load, name string, j, i int, perOld, perNew float64) {
	used := make([]bool, len(older))
	for _, n := range newer {
		if n.Compound != name {
			continue
		}
		at := -1
		for k, o := range older {
			if !used[k] && sameLot(o, n) {
				at = k
				break
			}
		}
		whole := inOrder(n.Least.CutsG[i], n.Most.CutsG[i]).scaled(perNew)
		if at < 0 {
			f.new = f.new.plus(whole)
			continue
		}
		used[at] = true
		o := older[at]
		f.shared = append(f.shared, sharedLot{n.inPlant,
			perUnit(n.Least.CutsG[i], n.Most.CutsG[i], n.inPlant).scaled(perNew),
			perUnit(o.Least.CutsG[j], o.Most.CutsG[j], o.inPlant).scaled(perOld)})
	}
	for k, o := range older {
		if o.Compound == name && !used[k] {
			f.old = f.old.plus(inOrder(o.Least.CutsG[j], o.Most.CutsG[j]).scaled(perOld))
		}
	}
}

func sameLot(a, b Load) bool {
	return a.Lot != "" && a.Lot == b.Lot && a.Plant == b.Plant && a.Compound == b.Compound && a.inPlant == b.inPlant
}

// perUnit returns what comes into the cut for each unit of what the plant holds.
func perUnit(least, most float64, u Range) Range {
	if u.Low == 0 {
		if u.High == 0 {
			return Exactly(0)
		}
		return Exactly(most / u.High)
	}
	return inOrder(least/u.Low, most/u.High)
}

// differ is what counts as a difference at all, dimensionless: rounding is less.
const differ = 1e-9

func (f *fraction) ratio() (Range, string) {
	oldMost, newMost := f.old.High, f.new.High
	oldLeast := f.old.Low
	for _, s := range f.shared {
		oldMost += s.u.High * s.old.High
		newMost += s.u.High * s.new.High
		oldLeast += s.u.Low * s.old.Low
	}
	switch {
	case oldMost == 0 && newMost == 0:
		return Range{}, "the same"
	case oldMost == 0:
		return Range{}, "more"
	}
	if oldLeast == 0 && !(f.old.High == 0 && len(f.shared) > 0) {
		if newMost == 0 {
			return Exactly(0), "less"
		}
		return Range{}, "cannot tell"
	}
	r := Between(f.extreme(-1), f.extreme(1))
	switch {
	case math.Abs(r.Low-1) < differ && math.Abs(r.High-1) < differ:
		return r, "the same"
	case r.Low > 1:
		return r, "more"
	case r.High < 1:
		return r, "less"
	}
	return r, "cannot tell"
}

// extreme returns the least (sign -1) or the greatest (sign 1) value of the fraction, dimensionless, by Dinkelbach's method:
// for a ratio λ the best u of each lot is one of its ends.
func (f *fraction) extreme(sign float64) float64 {
	pick := func(r Range, high bool) float64 {
		if high {
			return r.High
		}
		return r.Low
	}
	up := sign > 0
	at := func(lambda float64) float64 {
		above, below := pick(f.new, up), pick(f.old, !up)
		for _, s := range f.shared {
			n, o := pick(s.new, up), pick(s.old, !up)
			u := pick(s.u, (n-lambda*o > 0) == up)
			if u == 0 {
				u = s.u.High * 1e-12 // a lot that may hold nothing of it still has a ratio
			}
			above += u * n
			below += u * o
		}
		return above / below
	}
	lambda := at(1)
	for range 100 {
		next := at(lambda)
		if math.Abs(next-lambda) <= 1e-14*math.Abs(lambda) {
			return next
		}
		lambda = next
	}
	return lambda
}

// String gives the difference in one line.
func (d Difference) String() string {
	s := fmt.Sprintf("%s, %s: %v mg/L after %v mg/L", d.Cut, d.Compound, d.NewMgL, d.OldMgL)
	if d.Times.IsSet() {
		s += fmt.Sprintf(", %v times", d.Times)
	}
	return s + ": " + d.Verdict
}

// String gives the comparison in one line.
func (c Comparison) String() string {
	count := map[string]int{}
	for _, d := range c.Differences {
		count[d.Verdict]++
	}
	return fmt.Sprintf("%d comparisons: %d more, %d less, %d the same, %d cannot be told (estimate)", len(c.Differences), count["more"], count["less"], count["the same"], count["cannot tell"])
}

// Rows gives the comparison as a table, each row a label, a figure and a unit.
func (c Comparison) Rows() [][]string {
	var rows [][]string
	for _, d := range c.Differences {
		name := d.Cut + ", " + d.Compound
		rows = append(rows, []string{name + ", older (estimate)", d.OldMgL.String(), "mg/L"}, []string{name + ", newer (estimate)", d.NewMgL.String(), "mg/L"},
			[]string{name + ", " + d.Verdict, d.Times.String(), "times"})
		if len(d.By) > 1 {
			for _, b := range d.By {
				rows = append(rows, []string{name + ", from " + b.Plant, b.OldMgL.String() + " → " + b.NewMgL.String(), "mg/L"})
			}
		}
	}
	for _, n := range c.OnlyOld {
		rows = append(rows, []string{"only in the older trial", n, ""})
	}
	for _, n := range c.OnlyNew {
		rows = append(rows, []string{"only in the newer trial", n, ""})
	}
	for _, n := range c.Notes {
		rows = append(rows, []string{"note", n, ""})
	}
	return rows
}
