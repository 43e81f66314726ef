// Go specification, "Qualified identifiers" (package sort): sorting two slices together and indirectly.

package main

import (
	"fmt"
	"sort"
)

type twin struct {
	keys []int
	vals []string
}

func (t twin) Len() int           { return len(t.keys) }
func (t twin) Less(i, j int) bool { return t.keys[i] < t.keys[j] }
func (t twin) Swap(i, j int) {
	t.keys[i], t.keys[j] = t.keys[j], t.keys[i]
	t.vals[i], t.vals[j] = t.vals[j], t.vals[i]
}

type index struct {
	sort.Interface
	idx []int
}

func (x index) Swap(i, j int) {
	x.Interface.Swap(i, j)
	x.idx[i], x.idx[j] = x.idx[j], x.idx[i]
}

func main() {
	t := twin{[]int{3, 1, 2}, []string{"c", "a", "b"}}
	sort.Sort(t)
	fmt.Println(t.keys, t.vals)
	xs := []string{"rye", "malt", "corn", "oat"}
	x := index{sort.StringSlice(xs), []int{0, 1, 2, 3}}
	sort.Sort(x)
	fmt.Println(xs, x.idx)
	weights := []float64{0.5, 2, 1}
	order := []int{0, 1, 2}
	sort.Slice(order, func(i, j int) bool { return weights[order[i]] > weights[order[j]] })
	fmt.Println(order, weights)
	matrix := [][]int{{3, 1}, {1, 9}, {3, 0}, {1, 2}}
	sort.Slice(matrix, func(i, j int) bool {
		a, b := matrix[i], matrix[j]
		if a[0] != b[0] {
			return a[0] < b[0]
		}
		return a[1] < b[1]
	})
	fmt.Println(matrix)
}
