// Package colour follows the green of a coloured spirit: pigments from absorbances, a colour from a spectrum and a path, the
// distance between two colours, the loss of green with time and warmth, how long a bottle keeps its colour, and, for a
// house without a spectrophotometer, a dilution ladder against yesterday's jar.
//
// Colours are those of the CIE 1931 observer under daylight D65 through a stated path: 1 cm is a cell, 7 cm a bottle, and the
// same liquid looks different in both. Colour is predicted and reported; nothing in the library corrects for it.
//
// No rate of loss in spirit serves as a default: what is published for one pigment spans a factor of a thousand with the
// strength, fastest near 40 % of ethanol. A rate comes from the house's own readings and holds at their strength only. The
// spectra of pigments built in are for pictures: a house's own two spectra, fresh and browned, come before them.
//
// Units: mg/L, nm, cm, days, kJ/mol; L*, a*, b* and colour differences are dimensionless. Main sources: CIE 15; ISO/CIE 11664-4 and
// -6; Lichtenthaler and Buschmann, Current Protocols in Food Analytical Chemistry (2001) F4.3.
package colour
