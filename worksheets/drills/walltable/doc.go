// Package walltable makes the tables that hang on the wall of a still house: what a reading means at a temperature, how
// much water a reduction takes, what litres become at 20 °C, what a spirit weighs. A drill is worked with the same
// tables, rounded the same way.
//
// Units: per cent by volume at 20 °C, °C, litres and kilograms; in the tables of the United States degrees of proof and
// gallons at 60 °F, °F. Figures are those of mathlib/alcoholometry and mathlib/mixing, rounded to the decimals of their
// sort. They are for planning: a return needs the tables that the authority prints.
//
// Source of all figures: OIML R 22 (1975), general formula; see the packages named.
package walltable
