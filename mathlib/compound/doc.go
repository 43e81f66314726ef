// Package compound holds what is known about the ethanol and the water of a spirit, about its congeners and about the
// aroma compounds of herbs and fruit: vapour pressure, density, solubility, how they part between octanol and water,
// Henry's constant, the groups of the UNIFAC methods, and a measured activity coefficient in water. For ethanol and
// water also the heat of vaporisation and the heat capacity of the liquid.
//
// The numbers stand in the data files of this folder, one kind of number a file, each row with a source and a status
// word; a row without a source is refused. Whoever shows a number shows what Cautions says of it.
//
// Units: kelvin and pascal inside, °C and kPa outside, kg/m³, g/L. The rows were seen in public data files that quote
// their sources (Landolt-Börnstein IV/20, Poling, VDI Heat Atlas, Perry, CRC Handbook); those from memory say so.
package compound
