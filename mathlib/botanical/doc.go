// Package botanical reckons with the plants of a spirit: how much essential oil and which of its marker compounds a recipe
// brings into a charge, what a maceration takes out of them in which time, how much liquid they hold back and how much room
// they need, and how the markers are spread over the cuts of a run.
//
// What a plant holds is a range, never one figure: lots differ, and printed figures are what pharmacopoeias demand at least
// or what papers found. So every load has two accounts, Least and Most, and every cut a content from the one to the other.
// A figure of one's own, an analysis of the lot, comes before every printed one. A marker that package compound does not
// know is listed and not followed; no other compound takes its place.
//
// Package still carries the markers through a run: it takes Traces and gives back which share of each came into which cut
// (a Passage). All of the oil counts as free in the pot unless a ReleasePerH says how fast it comes out of the plant:
// equilibrium carry-over of what in a whole seed comes late. The account of each marker closes: what leaves one place is
// what the next one gets.
//
// Units: grams, litres at 20 °C, hours; shares in per cent. Printed figures stand in the data files of this folder, each
// row with its source and a status word; those from memory and the estimates say so wherever they are shown.
//
// Main sources: European Pharmacopoeia (minimum contents of drugs); Milojević and others, Hem. Ind. 67 (2013) 843 (washing
// and diffusion); Crank, The Mathematics of Diffusion (sphere; from memory); Lawson and Hanson, Solving Least Squares
// Problems (1974; from memory).
package botanical
