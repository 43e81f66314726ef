// Package quantity holds the quantities that every calculation of distilling shares: temperature, pressure, the
// error for a value outside its range, and the conversions between the units the trade still uses.
//
// A temperature and a pressure are types, so that one cannot be handed in where the other belongs, and adding two
// of them does not compile. Volume in litres and mass in kilograms are plain float64 with the unit at the end of the
// name. A temperature that nobody set is 20 °C, and a pressure that nobody set is one standard atmosphere.
//
// The units and their factors are those of the law: the international yard and pound agreement of 1959, the United
// States gallon of 231 cubic inches, and the Imperial gallon of the Weights and Measures Act 1985.
package quantity
