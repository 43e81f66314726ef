// Go specification, "Iota": powers of 1024 with a String method.

package main

import "fmt"

type ByteSize float64

const (
	_           = iota
	KB ByteSize = 1 << (10 * iota)
	MB
	GB
	TB
)

func (b ByteSize) String() string {
	switch {
	case b >= TB:
		return fmt.Sprintf("%.2fTB", float64(b/TB))
	case b >= GB:
		return fmt.Sprintf("%.2fGB", float64(b/GB))
	case b >= MB:
		return fmt.Sprintf("%.2fMB", float64(b/MB))
	case b >= KB:
		return fmt.Sprintf("%.2fKB", float64(b/KB))
	}
	return fmt.Sprintf("%.2fB", float64(b))
}

func main() {
	fmt.Println(ByteSize(1), KB, MB, GB, TB)
	fmt.Println(ByteSize(1e13), 3*MB/2, []ByteSize{KB, 2000 * KB})
	fmt.Printf("%v %s %.0f\n", GB, MB*10, float64(KB))
}
