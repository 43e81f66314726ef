// Package limits holds published limits for drinks and holds findings against them: thujone, methanol, hydrocyanic acid and the rest,
// what a category of spirit must have, how far a label may be from the truth, and cautions for plants that need them.
//
// An answer is one of four: under, within, over, or cannot tell: measure. Some limits are minima. What a finding rests on
// decides how much it can say: only an analysis of the product can show that a minimum is kept; an analysed oil with a mass
// balance can show that a maximum is; a range from a book can only show that a product is over, or that nobody can tell.
//
// This is no legal advice. Every row carries its source, date and status; the current text and the local authority come first.
package limits
