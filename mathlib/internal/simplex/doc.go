// Package simplex finds the least value of a linear sum under linear limits: the simplex method on a dense tableau, with
// bounds on every variable and both sides of every row.
//
// Why not gonum's optimize/convex/lp: it takes equations and variables of 0 or more only, so that each bound and each
// second side of a row becomes a row and a column, and it solves its basis anew at every step: a blend of 200 lots under
// 30 limits took it 11.8 s, where this takes 3 ms. It stops with "A is singular" where two equations say the same, and of
// a problem without a solution it says that there is none, not which limits collide. Where both solve, they agree: the
// tests let it solve the same problems.
//
// All numbers are dimensionless here; the caller keeps the units.
//
// Source: G. B. Dantzig, Linear Programming and Extensions (1963), chapters 5, 9 and 18 (bounded variables; the sum of
// infeasibilities as first objective); R. G. Bland, Math. Oper. Res. 2 (1977) 103–107, for the rule that cannot cycle.
package simplex
