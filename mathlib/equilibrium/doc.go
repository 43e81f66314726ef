// Package equilibrium tells at what temperature a mixture of ethanol and water boils, what its vapour holds, and how
// strongly other compounds in it go into the vapour.
//
// The vapour is taken as ideal and the liquid by an activity model: y p = x γ pS, with the vapour pressures pS of package
// compound. The default model is NRTL with parameters fitted here; published parameter sets, Wilson, UNIQUAC and the two
// UNIFAC methods stand beside it, and DEVIATIONS.md says how far each is from measured data. Congeners and aroma
// compounds are taken at infinite dilution in the mixture of ethanol and water: a UNIFAC method, pulled to a measured
// value in water where there is one.
//
// Bubble and Dew are the functions for strengths and pressures; Pair is the same for mole fractions, fast and without
// allocation; Curve is a table of one pressure, for the many lookups of a distillation. Mixture takes any number of
// compounds at any concentration, by UNIFAC alone.
//
// Pressures go from 2 to 1100 kPa. The default was fitted from 5 to 105 kPa; beyond, a result says that it is
// extrapolated. Main sources: the measured sets named in testdata/equilibrium, and for the methods Renon and Prausnitz,
// AIChE J. 14 (1968) 135; Wilson, J. Am. Chem. Soc. 86 (1964) 127; Abrams and Prausnitz, AIChE J. 21 (1975) 116;
// Fredenslund, Jones and Prausnitz, AIChE J. 21 (1975) 1086; Weidlich and Gmehling, Ind. Eng. Chem. Res. 26 (1987) 1372
// (these five from memory).
package equilibrium
