package plots

import (
	"fmt"
	"math"
	"slices"
	"strings"
)

// Corners names the three components of a triangular diagram, each pure in its corner.
type Corners struct {
	Left  string // lower left, as "water"
	Right string // lower right, as "ethanol"
	Top   string // as "oil"
	Unit  string // what the shares are of, as "% mass"; per cent if empty
}

// Triangle is a diagram of mixtures of three components, made by NewTriangle and filled by its methods. Each corner is one of
// them pure, each side has none of the opposite one. It is not safe for use by several goroutines at once.
type Triangle struct {
	title   string
	corners Corners
	paths   []trianglePath
	marks   []triangleMark
	notes   []string
}

type pathKind int

const (
	solidPath pathKind = iota
	dashedPath
	tiePaths // thin lines from one mixture to another
	pointPath
	shadedPath
)

type trianglePath struct {
	label string
	kind  pathKind
	order int        // among those of its kind: chooses the marker
	at    []fraction // of tiePaths: two for each tie
}

type triangleMark struct {
	label string
	at    fraction
}

// fraction is a mixture by its shares, which add up to 1.
type fraction struct{ left, right, top float64 }

// NewTriangle returns an empty triangular diagram.
func NewTriangle(title string, corners Corners) *Triangle {
	for _, s := range []*string{&corners.Left, &corners.Right, &corners.Top, &corners.Unit} {
		*s = oneLine(*s)
	}
	if corners.Unit == "" {
		corners.Unit = "%"
	}
	return &Triangle{title: oneLine(title), corners: corners}
}

// Line adds a line through mixtures given by their shares of the three components, dimensionless from 0 to 1; each mixture's
// shares add up to 1 within 0.005, which printed tables need. The three slices have one length, at least 1, and are copied.
// Panics with *Error otherwise.
func (t *Triangle) Line(label string, left, right, top []float64) {
	t.add("Triangle.Line", label, solidPath, left, right, top)
}

// Dashed adds a dashed line, as for what is only qualitative. For its arguments see Line.
func (t *Triangle) Dashed(label string, left, right, top []float64) {
	t.add("Triangle.Dashed", label, dashedPath, left, right, top)
}

// Points adds a marker at each mixture, as for measurements. For its arguments see Line.
func (t *Triangle) Points(label string, left, right, top []float64) {
	t.add("Triangle.Points", label, pointPath, left, right, top)
}

// Ties adds thin tie-lines: the first mixture is joined with the second, the third with the fourth, and so on. For its
// arguments see Line; their length is even.
func (t *Triangle) Ties(label string, left, right, top []float64) {
	const call = "Triangle.Ties"
	if len(left)%2 != 0 {
		panic(&Error{Func: call, Series: oneLine(label), Index: -1, Problem: fmt.Sprintf("%d mixtures", len(left)), Want: "give two for each tie-line"})
	}
	t.add(call, label, tiePaths, left, right, top)
}

// Region shades the area inside a line through mixtures. For its arguments see Line; there are at least 3.
func (t *Triangle) Region(label string, left, right, top []float64) {
	const call = "Triangle.Region"
	if len(left) < 3 {
		panic(&Error{Func: call, Series: oneLine(label), Index: -1, Problem: fmt.Sprintf("%d mixtures", len(left)), Want: "give at least three corners of the area"})
	}
	t.add(call, label, shadedPath, left, right, top)
}

// Mark rings one mixture, given by its shares (dimensionless, adding up to 1), and writes its label beside it.
func (t *Triangle) Mark(label string, left, right, top float64) {
	label = oneLine(label)
	t.marks = append(t.marks, triangleMark{label, shares("Triangle.Mark", label, -1, left, right, top)})
}

// Note adds a small line of text under the diagram, as for a source. Each call starts a new line.
func (t *Triangle) Note(text string) {
	if text = oneLine(text); text != "" {
		t.notes = append(t.notes, text)
	}
}

func (t *Triangle) add(call, label string, kind pathKind, left, right, top []float64) {
	label = oneLine(label)
	if len(left) != len(right) || len(left) != len(top) {
		panic(&Error{Func: call, Series: label, Index: -1,
			Problem: fmt.Sprintf("%d, %d and %d shares", len(left), len(right), len(top)), Want: "give three shares for each mixture"})
	}
	if len(left) == 0 {
		panic(&Error{Func: call, Series: label, Index: -1, Problem: "the series is empty", Want: "give at least one mixture"})
	}
	p := trianglePath{label: label, kind: kind}
	for i := range left {
		p.at = append(p.at, shares(call, label, i, left[i], right[i], top[i]))
	}
	for _, o := range t.paths {
		if o.kind == kind {
			p.order++
		}
	}
	t.paths = append(t.paths, p)
}

// shares checks three shares and returns them adding up to 1 exactly.
func shares(call, label string, index int, left, right, top float64) fraction {
	const slack = 0.005
	sum := left + right + top
	if !(left >= 0 && right >= 0 && top >= 0) || !(math.Abs(sum-1) <= slack) {
		panic(&Error{Func: call, Series: label, Index: index, Problem: fmt.Sprintf("the shares are %v, %v and %v", left, right, top),
			Want: "give three of 0 or more that add up to 1"})
	}
	return fraction{left / sum, right / sum, top / sum}
}

func (t *Triangle) mustHaveSeries(call string) {
	if len(t.paths) == 0 && len(t.marks) == 0 {
		panic(&Error{Func: call, Series: t.title, Index: -1, Problem: "the diagram is empty", Want: "add something with Line, Dashed, Points, Ties, Region or Mark first"})
	}
}

func (t *Triangle) name() string {
	if t.title != "" {
		return t.title
	}
	if names := t.cornerNames(); names != "" {
		return "Triangle of " + names
	}
	return "Triangle"
}

func (t *Triangle) cornerNames() string {
	var names []string
	for _, n := range []string{t.corners.Left, t.corners.Right, t.corners.Top} {
		if n != "" {
			names = append(names, n)
		}
	}
	return strings.Join(names, ", ")
}

// String returns the text alternative of the diagram: what it shows, in words and numbers. See AltText.
func (t *Triangle) String() string { return t.AltText() }

// AltText returns what the diagram shows for those who do not see it, a line for each thing: the title, the corners, for each series
// its first and last mixture and the one with the most of the top component, then marks and notes.
func (t *Triangle) AltText() string {
	var b strings.Builder
	line := func(format string, args ...any) { fmt.Fprintf(&b, "\n"+format, args...) }
	b.WriteString(t.name())
	corner := func(name string) string {
		if name == "" {
			return "unnamed"
		}
		return name
	}
	line("Triangular diagram: %s lower left, %s lower right, %s at the top, in %s.", corner(t.corners.Left), corner(t.corners.Right), corner(t.corners.Top), t.corners.Unit)
	for i, p := range t.paths {
		label := named(p.label)
		if p.label == "" {
			label = fmt.Sprintf(" %d", i+1)
		}
		most := slices.MaxFunc(p.at, func(a, b fraction) int { return compare(a.top, b.top) })
		switch n := len(p.at); {
		case p.kind == tiePaths:
			line("Tie-lines%s: %d, from %s to %s the first, from %s to %s the last.", label, n/2, t.mixture(p.at[0]), t.mixture(p.at[1]), t.mixture(p.at[n-2]), t.mixture(p.at[n-1]))
		case n == 1:
			line("%s%s: one mixture, %s.", kindName(p.kind), label, t.mixture(p.at[0]))
		default:
			line("%s%s: %d mixtures from %s to %s; most %s in %s.", kindName(p.kind), label, n, t.mixture(p.at[0]), t.mixture(p.at[n-1]), corner(t.corners.Top), t.mixture(most))
		}
	}
	for _, m := range t.marks {
		line("Mark%s: %s.", named(m.label), t.mixture(m.at))
	}
	for _, n := range t.notes {
		line("Note: %s", n)
	}
	return b.String()
}

func compare(a, b float64) int {
	switch {
	case a < b:
		return -1
	case a > b:
		return 1
	}
	return 0
}

func kindName(k pathKind) string {
	return [...]string{"Line", "Dashed line", "Tie-lines", "Points", "Area"}[k]
}

// mixture writes shares in per cent, left, right and top.
func (t *Triangle) mixture(f fraction) string {
	return fmt.Sprintf("%s, %s, %s", numberText(100*f.left, 0), numberText(100*f.right, 0), numberText(100*f.top, 0))
}
