// Package kernelspec registers the kernel with notebook front ends: a folder with kernel.json and the logos, where front
// ends look for such folders.
//
// Source: the reference documentation of the open notebook protocol, "Making kernels", section "Kernel specs".
package kernelspec

//go:generate go run swanneck/kernel/kernelspec/drawlogo .
