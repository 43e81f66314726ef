// Package sheet is the math of distilling as a worksheet's cells see it: every function returns one value, and a
// mistake stops the cell with one line that begins with the function's name. The names are the trade's; what they mean,
// their units, ranges and sources stand in the packages behind them (quantity, alcoholometry, mixing,
// compound, equilibrium).
//
// A stopped cell is a panic with a *Stop. Methods of the types here that only read a value, such as Spirit.PureL, panic
// with the error types of the packages behind; all of them have the method StopsCell.
package sheet
