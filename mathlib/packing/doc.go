// Package packing reckons what goes into a bottle and whether it may be sold: the fill by weight and by volume at the
// temperature of the cellar, the head space for warm storage, the bottles in a tank, the tolerances of fill and of
// strength in the European Union and the United States, the sizes allowed there, and sampling plans with the chance
// that a batch passes.
//
// Volumes are litres, deviations and tolerances millilitres, masses kilograms; the nominal volume is one at 20 °C unless
// another temperature is named. The spirit is ethanol and water: sugar and extract change its density, and then the
// weight is not the one given here.
//
// Laws change. Every list and tolerance names its source and date, and says if it was taken from memory; check the text
// in force before you rely on it.
package packing
