// Package sensory plans tastings and reads their answers: serving plans with blind codes and the panel's dose of alcohol;
// tests of difference (triangle, duo-trio, tetrad, paired comparison) with d′ and the panel they need; rankings; and
// mixture trials, from the design of the blends to the best one.
//
// Chances are exact wherever a count allows it (binomial tests, rankings of small panels). A share is dimensionless, from
// 0 to 1, in mixtures, and a per cent in everything that is said about a panel. What a tasting cannot tell is said in
// words: a test that finds no difference does not show that there is none.
//
// Main sources: ISO 4120 (triangle), ISO 10399 (duo-trio), ISO 5495 (paired comparison), ISO 8587 (ranking), in their test
// arithmetic; the Thurstonian model of Frijters, Ennis and Bi for d′; Scheffé (1958, 1963) and Cornell (Experiments with
// mixtures) for mixtures.
package sensory
