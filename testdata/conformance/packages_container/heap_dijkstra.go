// Go specification, "Implementing an interface" (package container/heap): shortest paths over pipes.

package main

import (
	"container/heap"
	"fmt"
)

type edge struct {
	to   string
	cost int
}

type item struct {
	node string
	dist int
}

type minHeap []item

func (h minHeap) Len() int           { return len(h) }
func (h minHeap) Less(i, j int) bool { return h[i].dist < h[j].dist }
func (h minHeap) Swap(i, j int)      { h[i], h[j] = h[j], h[i] }
func (h *minHeap) Push(x any)        { *h = append(*h, x.(item)) }
func (h *minHeap) Pop() (x any) {
	x = (*h)[len(*h)-1]
	*h = (*h)[:len(*h)-1]
	return
}

func route(g map[string][]edge, from, to string) (int, []string) {
	dist, prev := map[string]int{from: 0}, map[string]string{}
	h := &minHeap{{from, 0}}
	for h.Len() > 0 {
		cur := heap.Pop(h).(item)
		if cur.node == to {
			path := []string{to}
			for n := to; n != from; {
				n = prev[n]
				path = append([]string{n}, path...)
			}
			return cur.dist, path
		}
		for _, e := range g[cur.node] {
			d := cur.dist + e.cost
			if old, ok := dist[e.to]; !ok || d < old {
				dist[e.to], prev[e.to] = d, cur.node
				heap.Push(h, item{e.to, d})
			}
		}
	}
	return -1, nil
}

func main() {
	g := map[string][]edge{"mash": {{"wash", 7}, {"tank", 2}}, "tank": {{"wash", 3}, {"drain", 8}}, "wash": {{"drain", 1}}}
	fmt.Println(route(g, "mash", "drain"))
	fmt.Println(route(g, "drain", "mash"))
	fmt.Println(route(g, "tank", "tank"))
}
