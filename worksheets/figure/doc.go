// Package figure reads figures as people write them: "45,5 %vol", "1 512 L", "120 proof", "68 °F". A figure that can be
// read in two ways is refused, never guessed.
package figure
