// Package duty reckons what a distillery owes an account of: the return of a period from a dated ledger, in litres of
// pure alcohol, with what does not add up named; the units in which duty is counted; a duty at a rate that the user
// gives; and the gauging arithmetic of the United States with the rounding of the regulation.
//
// All amounts of alcohol are litres of pure alcohol at 20 °C unless the name says otherwise. The arithmetic of the
// regulation (files us_*.go) stands apart from the physics: it rounds and cuts off at every step as the printed examples
// do, because that is what an officer will reckon.
//
// A rate of duty is never a fact of this package: rates change and depend on who pays. Check the law in force.
package duty
