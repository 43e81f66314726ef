// Go specification, "Index expressions": keeping a sorted slice with binary search.

package main

import "fmt"

type Sorted []int

func (s Sorted) find(x int) (int, bool) {
	lo, hi := 0, len(s)
	for lo < hi {
		mid := int(uint(lo+hi) >> 1)
		switch {
		case s[mid] < x:
			lo = mid + 1
		case s[mid] > x:
			hi = mid
		default:
			return mid, true
		}
	}
	return lo, false
}

func (s *Sorted) Add(x int) bool {
	i, ok := s.find(x)
	if ok {
		return false
	}
	*s = append((*s)[:i], append([]int{x}, (*s)[i:]...)...)
	return true
}

func (s *Sorted) Remove(x int) bool {
	i, ok := s.find(x)
	if ok {
		*s = append((*s)[:i], (*s)[i+1:]...)
	}
	return ok
}

func (s Sorted) Range(lo, hi int) Sorted {
	i, _ := s.find(lo)
	j, _ := s.find(hi)
	return s[i:j:j]
}

func main() {
	var s Sorted
	for _, x := range []int{5, 1, 9, 5, -3, 7} {
		fmt.Print(s.Add(x), " ")
	}
	fmt.Println(s)
	fmt.Println(s.Range(0, 8), s.Range(100, 200), len(s.Range(-3, -3)))
	r := append(s.Range(-3, 6), 1000)
	fmt.Println(r, s)
	fmt.Println(s.Remove(5), s.Remove(6))
	fmt.Println(s)
}
