// Package aroma reckons what hangs over the glass as a drink is watered: how much of each aroma compound passes into the
// air, how that grows or shrinks on dilution, and, where there are thresholds for the very same matrix, by how many times it
// passes them. One bottle is many drinks: watering drives the compounds out of the liquid faster than it thins them, until
// the drink clouds and the droplets hold them back.
//
// The way between liquid and air is that of Abraham's descriptors, at 25 °C. What a clouded drink holds dissolved is capped at
// its solubility (package louche), and the air over it at the vapour of the pure compound. That the aroma rises on dilution is
// sure; its size is good to a factor of two.
//
// The usual answer is the air over the glass relative to that over the bottle's own strength, which needs no threshold.
// Thresholds are used only in their own matrix: water, ethanol of 40 % vol, or air. Published thresholds of one compound
// differ a hundredfold and more, so an order of notes is mostly "cannot tell". How ethanol masks a smell is not modelled.
//
// Units: mg/L and µg/L of liquid, µg/L of air, per cent by volume. Main sources: Abraham and Acree, J. Solution Chem. 40 (2011) 1279; Abraham
// and others, Chem. Senses 37 (2012) 207.
package aroma
