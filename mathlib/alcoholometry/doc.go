// Package alcoholometry turns the strength, the density, the mass and the volume of spirit into each other, and what
// an instrument shows into a true strength.
//
// It rests on one formula, the international one for the density of ethanol and water (OIML R 22, 1975, which is also
// Directive 76/766/EEC), from -20 to 40 °C and for a liquid mixture only. Everything else is physics on top of it:
// strength by volume at any reference temperature, US proof, contraction, the glass alcoholometer, air buoyancy.
// The formula knows ethanol and water; sugar, extract or oil in the spirit make any instrument show too little.
//
// Units: kg/m³, litres, kilograms, °C, per cent by volume at 20 °C unless another reference is named. Temperatures
// go into the formula as read (it was made on the scale of 1968; the difference is at most 0.01 kg/m³).
//
// A Strength and a reading are different things. ABV(40) and ABVAt(40, 15 °C) are true strengths. What a glass
// alcoholometer shows at the spirit's own temperature is a reading, and becomes a strength through TrueStrength.
package alcoholometry
