// Go specification, "Slice expressions": filtering, reversing, batching and windows.

package main

import "fmt"

type Sample struct {
	id  int
	abv float64
}

func main() {
	var samples []Sample
	for i := range 8 {
		samples = append(samples, Sample{i, 35 + float64(i*i)/2})
	}
	kept := samples[:0]
	for _, s := range samples {
		if s.id%3 != 0 {
			kept = append(kept, s)
		}
	}
	fmt.Println(kept)
	fmt.Println(samples[:3], len(samples))
	for i := len(kept)/2 - 1; i >= 0; i-- {
		opp := len(kept) - 1 - i
		kept[i], kept[opp] = kept[opp], kept[i]
	}
	fmt.Println(kept)
	nums := []int{1, 2, 3, 4, 5, 6, 7}
	var batches [][]int
	for size := 3; size < len(nums); {
		nums, batches = nums[size:], append(batches, nums[0:size:size])
	}
	batches = append(batches, nums)
	fmt.Println(batches, cap(batches[0]))
	w := "glass"
	for i := range len(w) - 1 {
		fmt.Print(w[i:i+2], " ")
	}
	fmt.Println()
}
