// Package drills makes the proofing problems with which a trainer sets a class to work: a situation in an invented still
// house, a question with its unit, the worked solution with the tables that a person looks into, and what the usual
// mistakes would give, by name.
//
// The answer comes from mathlib (OIML R 22, 1975). The worked solution uses the printed tables of package walltable,
// rounded as they are printed, and rounds on the way as a person does; the tolerance covers what that can move.
//
// Units: litres, kilograms, per cent by volume at 20 °C, °C; in the problems of the United States gallons and proof at
// 60 °F, °F. The same seed and kind give the same problem. Spirits are ethanol and water; no duty is reckoned here, only
// the litres of pure alcohol and proof gallons it rests on.
package drills
