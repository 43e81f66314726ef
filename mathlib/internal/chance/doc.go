// Package chance draws pseudo-random numbers from a seed, for the parts of mathlib that need chance: the same seed gives
// the same numbers in every run, with every release of Go. It is no source of secrets.
//
// The generator is xoshiro256++ of Blackman and Vigna, started by SplitMix64. The generators of the standard library are
// left aside, because what their methods draw may change between releases, and a worksheet's numbers must not.
package chance
