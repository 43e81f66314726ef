package sensory

// The quantile of the studentized range, for tests against its printed tables.
var RangeQuantile = rangeQuantile
