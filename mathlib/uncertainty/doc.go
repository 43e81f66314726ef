// Package uncertainty says how sure a result is that was worked out from instruments: it takes what may be wrong with
// each instrument, carries it through any function of the readings, and says how far the result may be off, and which
// instrument is to blame.
//
// Two ways lead there. FirstOrder takes the function as straight around the readings (the law of propagation of
// uncertainty) and gives a budget line by line. MonteCarlo lets chance vary all readings at once as their tolerances
// allow, works the function out each time, and so holds for a function of any shape; Compare tells whether the short way
// was good enough. A mistake in the instrument's use, a wrong table or a spirit that is not just ethanol and water is in
// neither.
//
// Every value is in the unit that its input names, and the result in the unit that the measurement names. A tolerance is
// "either way": 0.1 means from 0.1 too little to 0.1 too much. How each kind of instrument's tolerance is taken stands
// with its type.
//
// Sources: JCGM 100:2008 (Guide to the expression of uncertainty in measurement) and JCGM 101:2008 (its Supplement 1,
// propagation of distributions using a Monte Carlo method).
package uncertainty
