package sensory

import (
	"fmt"
	"math"

	"swanneck/mathlib/quantity"
)

// TrianglePoint is a blend of three ingredients on the triangle: the first ingredient alone is the corner at the top, the
// second the one on the left, the third the one on the right; the sides have the length 1.
type TrianglePoint struct {
	Shares   []float64 // of the three ingredients, dimensionless
	X, Y     float64   // its place, dimensionless: X from 0 to 1, Y from 0 to 0.866
	Score    float64   // on the fitted surface, dimensionless
	Standard float64   // standard error of the mean score, dimensionless
}

// ContourLine is a line along which a fitted surface has one score, as the points to be joined.
type ContourLine struct {
	Score  float64   // dimensionless
	Xs, Ys []float64 // places as in TrianglePoint, dimensionless
}

// onTriangle returns the place of a blend of three ingredients.
func onTriangle(shares []float64) (x, y float64) {
	return shares[2] + shares[0]/2, shares[0] * math.Sqrt(3) / 2
}

// TrianglePlace is where a blend of three ingredients lies on the triangle.
type TrianglePlace struct {
	X, Y float64 // as in TrianglePoint, dimensionless
}

// PlaceOnTriangle returns where a blend of three ingredients lies on the triangle, as in TrianglePoint: for marks in a
// picture of contours. It fails for shares that are not three or do not add up to 1.
func PlaceOnTriangle(shares []float64) (TrianglePlace, error) {
	s, err := whole("sensory.PlaceOnTriangle", "the blend", shares, []string{"first", "second", "third"})
	if err != nil {
		return TrianglePlace{}, err
	}
	x, y := onTriangle(s)
	return TrianglePlace{x, y}, nil
}

// TriangleGrid returns the scores of a fitted surface of three ingredients on a lattice with steps spaces on each side:
// row by row from the top, (steps+1)(steps+2)/2 points. It fails for other than three ingredients, and for steps not from
// 1 to 300.
func TriangleGrid(f MixtureFit, steps int) ([]TrianglePoint, error) {
	const fn = "sensory.TriangleGrid"
	if err := f.three(fn, steps); err != nil {
		return nil, err
	}
	var out []TrianglePoint
	for a := steps; a >= 0; a-- {
		for c := 0; c <= steps-a; c++ {
			n := float64(steps)
			p := f.predict([]float64{float64(a) / n, float64(steps-a-c) / n, float64(c) / n})
			x, y := onTriangle(p.Shares)
			out = append(out, TrianglePoint{p.Shares, x, y, p.Score, p.Standard})
		}
	}
	return out, nil
}

func (f *MixtureFit) three(fn string, steps int) error {
	if len(f.beta) == 0 {
		return fmt.Errorf("%s: there is no fitted surface; make one with FitMixture", fn)
	}
	if q := len(f.Trial.Ingredients); q != 3 {
		return fmt.Errorf("%s: a triangle shows three ingredients, not %d", fn, q)
	}
	return quantity.CheckRange(fn, "the number of steps", float64(steps), 1, 300, "", "")
}

// TriangleContours returns the lines along which a fitted surface of three ingredients has the scores given, drawn over a
// lattice with steps spaces on each side. A score that the surface does not reach has no line. It fails as TriangleGrid
// does, and for a score that is no finite number.
func TriangleContours(f MixtureFit, scores []float64, steps int) ([]ContourLine, error) {
	const fn = "sensory.TriangleContours"
	if err := f.three(fn, steps); err != nil {
		return nil, err
	}
	grid, err := TriangleGrid(f, steps)
	if err != nil {
		return nil, err
	}
	var out []ContourLine
	for _, score := range scores {
		if err := quantity.CheckRange(fn, "the score", score, math.Inf(-1), math.Inf(1), "", ""); err != nil {
			return nil, err
		}
		out = append(out, contour(grid, steps, score)...)
	}
	return out, nil
}

// crossing is a place where a contour crosses a side of a small triangle, named by the two points of the lattice.
type crossing [2]int

// contour walks through all small triangles of the lattice: a line that enters one leaves it by another side.
func contour(grid []TrianglePoint, steps int, score float64) []ContourLine {
	at := func(row, column int) int { return row*(row+1)/2 + column }
	above := func(i int) bool { return grid[i].Score > score }
	side := func(i, j int) crossing { return crossing{min(i, j), max(i, j)} }
	links := map[crossing][]crossing{}
	var ends []crossing // every crossing, in the order found
	triangle := func(a, b, c int) {
		var cut []crossing
		for _, s := range [][2]int{{a, b}, {b, c}, {c, a}} {
			if above(s[0]) != above(s[1]) {
				cut = append(cut, side(s[0], s[1]))
			}
		}
		if len(cut) == 2 {
			for k, s := range cut {
				if len(links[s]) == 0 {
					ends = append(ends, s)
				}
				links[s] = append(links[s], cut[1-k])
			}
		}
	}
	for row := range steps {
		for column := 0; column <= row; column++ {
			triangle(at(row, column), at(row+1, column), at(row+1, column+1))
			if column < row {
				triangle(at(row, column), at(row, column+1), at(row+1, column+1))
			}
		}
	}
	var out []ContourLine
	done := map[crossing]bool{}
	trace := func(from crossing) {
		line := ContourLine{Score: score}
		for here, ok := from, true; ok; {
			done[here] = true
			x, y := place(grid, here, score)
			line.Xs, line.Ys = append(line.Xs, x), append(line.Ys, y)
			next := here
			ok = false
			for _, n := range links[here] {
				if !done[n] {
					next, ok = n, true
					break
				}
			}
			here = next
		}
		out = append(out, line)
	}
	for _, s := range ends { // lines that end at the rim
		if len(links[s]) == 1 && !done[s] {
			trace(s)
		}
	}
	for _, s := range ends { // closed lines
		if !done[s] {
			trace(s)
			last := &out[len(out)-1]
			last.Xs, last.Ys = append(last.Xs, last.Xs[0]), append(last.Ys, last.Ys[0])
		}
	}
	return out
}

// place returns where along a side of the lattice the score is reached.
func place(grid []TrianglePoint, c crossing, score float64) (x, y float64) {
	a, b := grid[c[0]], grid[c[1]]
	t := (score - a.Score) / (b.Score - a.Score)
	return a.X + t*(b.X-a.X), a.Y + t*(b.Y-a.Y)
}
