// Go specification, "Slice types": views on one array, and what append detaches.

package main

import (
	"bytes"
	"fmt"
)

type Window struct {
	data []float64
	size int
}

func (w Window) At(i int) []float64 { return w.data[i : i+w.size : i+w.size] }

func (w Window) Smooth() (out []float64) {
	for i := 0; i+w.size <= len(w.data); i++ {
		sum := 0.0
		for _, v := range w.At(i) {
			sum += v
		}
		out = append(out, sum/float64(w.size))
	}
	return
}

func main() {
	w := Window{[]float64{1, 2, 6, 4, 5}, 3}
	fmt.Println(w.Smooth())
	v := w.At(1)
	v[0] = 20
	v = append(v, 99)
	v[1] = -1
	fmt.Println(w.data, v)
	text := []byte("low wines,feints")
	before, after, _ := bytes.Cut(text, []byte(","))
	before = append(before, '!')
	fmt.Printf("%s %s %s\n", before, after, text)
	rows := make([][]byte, 0)
	buf := make([]byte, 0, 8)
	for i := range 3 {
		buf = append(buf[:0], byte('a'+i))
		rows = append(rows, buf, bytes.Clone(buf))
	}
	fmt.Printf("%s\n", rows)
	arr := [...]int{1, 2, 3, 4}
	evens, all := arr[1:2], arr[:]
	evens = append(evens, 30)
	fmt.Println(arr, all, cap(evens))
}
