package plots

import "math"

// occupancy remembers which cells of the plot are drawn on already.
type occupancy struct {
	plot       box
	cols, rows int
	taken      []bool
}

const cell = 3.0

func newOccupancy(plot box) *occupancy {
	o := &occupancy{plot: plot}
	o.cols = int(math.Ceil((plot.x1-plot.x0)/cell)) + 1
	o.rows = int(math.Ceil((plot.y1-plot.y0)/cell)) + 1
	o.taken = make([]bool, o.cols*o.rows)
	return o
}

// span returns the cells that b covers; none if it lies outside the plot.
func (o *occupancy) span(b box) (c0, r0, c1, r1 int) {
	index := func(v, from float64, n int) int {
		return max(0, min(n-1, int(math.Floor((v-from)/cell))))
	}
	return index(b.x0, o.plot.x0, o.cols), index(b.y0, o.plot.y0, o.rows), index(b.x1, o.plot.x0, o.cols), index(b.y1, o.plot.y0, o.rows)
}

func (o *occupancy) add(b box) {
	c0, r0, c1, r1 := o.span(b)
	for r := r0; r <= r1; r++ {
		for c := c0; c <= c1; c++ {
			o.taken[r*o.cols+c] = true
		}
	}
}

// addLine takes the cells along a line through points inside the plot, in steps short enough that what a corner
// leaves out is less than the room kept around a label.
func (o *occupancy) addLine(points []point) {
	for i, p := range points {
		o.add(box{p.x, p.y, p.x, p.y})
		if i == 0 {
			continue
		}
		from := points[i-1]
		steps := int(math.Hypot(p.x-from.x, p.y-from.y) / 1.5)
		for k := 1; k < steps; k++ {
			t := float64(k) / float64(steps)
			x, y := from.x+(p.x-from.x)*t, from.y+(p.y-from.y)*t
			o.add(box{x, y, x, y})
		}
	}
}

func (o *occupancy) free(b box) bool {
	c0, r0, c1, r1 := o.span(b)
	for r := r0; r <= r1; r++ {
		for c := c0; c <= c1; c++ {
			if o.taken[r*o.cols+c] {
				return false
			}
		}
	}
	return true
}
