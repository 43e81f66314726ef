package sheet

import (
	"swanneck/mathlib/still"
)

// RunLog is what was written down while a run was made: CollectedL, and Running, Head and Min as far as they were kept.
type RunLog = still.RunLog

// LearnOptions says what is known when a still is learned from a log.
type LearnOptions = still.LearnOptions

// LearnedStill is a still as its log shows it.
type LearnedStill = still.Learned

// LearnedFigure is a figure found from a log, with its interval.
type LearnedFigure = still.Estimate

// LogResidual is a row of a log beside what the learned still would have given.
type LogResidual = still.Residual

// LearnFromRun returns the plates, the reflux and the heating efficiency with which a batch gives what a log says it gave.
func LearnFromRun(b Batch, log RunLog, o LearnOptions) LearnedStill {
	v, err := still.LearnFromRun(b, log, o)
	return must("LearnFromRun", v, err)
}

// RunComparison is two learned runs beside each other.
type RunComparison = still.Comparison

// CompareRuns puts two learned runs beside each other.
func CompareRuns(a, b LearnedStill) RunComparison {
	v, err := still.CompareRuns(a, b)
	return must("CompareRuns", v, err)
}

// Apparatus is the size of a still: ChargeL, PowerKW and NeckMM.
type Apparatus = still.Apparatus

// RunScaling is a run on a still of another size, with what does not scale.
type RunScaling = still.Scaling

// ScaleRun says what becomes of a run on a still of another size, and what does not scale.
func ScaleRun(r Run, from, to Apparatus) RunScaling {
	v, err := still.ScaleRun(r, from, to)
	return must("ScaleRun", v, err)
}
