// Package mixing reckons what happens when spirit and water, or spirits among themselves, are put together: how much of
// each is needed, what volume and strength come of it, how much volume is lost, and how warm the tank gets. It plans a
// reduction in steps over days and plans it anew from a reading, mends one that went too far, makes and reduces liqueurs,
// finds the strength that sugar or extract hides, turns a dip into litres, and blends any number of lots to a strength at
// the least cost, closest to a profile or evenly, within limits.
//
// Masses and the ethanol in them add up exactly; volumes do not, and follow from the density (package alcoholometry).
// Amounts are litres at a stated temperature, 20 °C unless asked, and kilograms of true mass. The warming is an
// estimate from published heats of mixing and heat capacities, and so is the volume of what is sweetened; everything else
// is as good as the density formula.
package mixing
