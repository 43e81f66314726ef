// Package yield follows pure alcohol from the wash or wine into bottles: a ledger of what each stage took in, gave on, set
// aside and lost; plans back from the bottles wanted and forward from the spirit at hand, with botanicals, runs and days;
// what a bottle costs and what makes it so; and what one more per cent at a stage is worth.
//
// Alcohol is litres of pure alcohol at 20 °C, which adds up where volumes do not. Expected losses are common practice,
// without a published source: they say where to look, not what is right. Put your own in their place as soon as you have
// some runs in the ledger.
package yield
