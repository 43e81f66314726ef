// Go specification, "Implementing an interface" (package container/heap): a priority queue with updates.

package main

import (
	"container/heap"
	"fmt"
	"maps"
	"slices"
)

type task struct {
	name     string
	priority int
	index    int
}

type queue []*task

func (q queue) Len() int { return len(q) }
func (q queue) Less(i, j int) bool {
	if q[i].priority != q[j].priority {
		return q[i].priority > q[j].priority
	}
	return q[i].name < q[j].name
}
func (q queue) Swap(i, j int) {
	q[i], q[j] = q[j], q[i]
	q[i].index, q[j].index = i, j
}
func (q *queue) Push(x any) {
	t := x.(*task)
	t.index = len(*q)
	*q = append(*q, t)
}
func (q *queue) Pop() any {
	old := *q
	t := old[len(old)-1]
	*q = old[:len(old)-1]
	t.index = -1
	return t
}

func main() {
	q := queue{}
	byName := map[string]*task{}
	for name, p := range map[string]int{"clean": 2, "mash": 5, "label": 1, "bottle": 2} {
		byName[name] = &task{name: name, priority: p}
	}
	for _, n := range slices.Sorted(maps.Keys(byName)) {
		heap.Push(&q, byName[n])
	}
	byName["label"].priority = 9
	heap.Fix(&q, byName["label"].index)
	heap.Remove(&q, byName["mash"].index)
	for q.Len() > 0 {
		t := heap.Pop(&q).(*task)
		fmt.Print(t.name, ":", t.priority, " ")
	}
	fmt.Println(byName["mash"].index)
}
