// Package still tells what comes over when a spirit is distilled: how much, how strong, when, at what heat, and where the
// compounds go that come along in traces; in a pot with or without plates, in a thumper, in a column; it learns from the
// log of a run that was made, and it names what is dangerous about it in figures.
//
// Distil reckons a batch. The pot is a stage of its own; Plates counts ideal plates above it, Reflux is returned over taken
// in moles. On the plates the same moles of vapour go up as come from below (constant molar overflow), which is within
// 0.006 in the mole fraction of exact heat balances; the heats themselves are reckoned with enthalpies. Plates hold no
// liquid. Moles that leave the pot arrive in the distillate, so mass and heat close to rounding.
//
// ColumnStages and MinimumReflux are McCabe and Thiele's construction for a column that runs steadily.
//
// Units: moles inside; litres at 20 °C, kilograms, kilojoules and minutes outside. Equilibrium is that of package
// equilibrium, heats those of package compound with Larkin's heat of mixing (package mixing), which ends at 110 °C: a
// still here works from 2 to 140 kPa.
//
// Main sources: Rayleigh, Phil. Mag. 4 (1902) 521; McCabe and Thiele, Ind. Eng. Chem. 17 (1925) 605 (both from memory);
// the examples it is checked on stand in testdata/still with their sources.
package still
