package mixing

import "errors"

// Blockage says whether a blend can be made, and which limits stand in its way.
type Blockage struct {
	Possible bool
	Why      *BlendError // nil if it is possible
}

// WhatBlocks says whether there is a blend that keeps all limits of the order and, if there is none, which limits collide
// and what each would have to be: what BlendLots fails with, as a table. It fails for an order that is no order, as
// BlendLots does.
//
// Source: as for BlendLots.
func WhatBlocks(o BlendOrder) (Blockage, error) {
	_, err := BlendLots(o)
	var why *BlendError
	if errors.As(err, &why) {
		why.Func = "mixing.WhatBlocks"
		return Blockage{Why: why}, nil
	}
	if err != nil {
		return Blockage{}, as("mixing.WhatBlocks", err)
	}
	return Blockage{Possible: true}, nil
}

// String gives the answer in one line.
func (b Blockage) String() string {
	if b.Why == nil {
		return "there is a blend that keeps all limits"
	}
	return b.Why.text()
}

// Rows gives the limits that collide, a row each.
func (b Blockage) Rows() [][]string {
	if b.Why == nil {
		return [][]string{{b.String()}}
	}
	return b.Why.Rows()
}
