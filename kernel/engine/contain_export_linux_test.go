package engine

// Each layer of the confinement by itself, for tests that ask what it holds back without the others.
var (
	LandlockVersion = landlockVersion
	FilterMissing   = filterMissing
	LimitSelf       = limitSelf
)

// Layer returns what applies a layer of those that workers apply, or nil.
func Layer(name string) func() error {
	for _, l := range layers {
		if l.name == name {
			return l.apply
		}
	}
	return nil
}
