package engine

// confine takes from this worker, for good and for all of its threads, what cells have no use for: files, network,
// other processes. It is called once, before the first cell. What the system cannot do is left out, and Containment
// says so; what it says it can do and then does not is an error, so that Containment never promises too much.
func confine(mib int) error {
	if err := limitSelf(mib); err != nil {
		return err
	}
	return confineBySystem()
}

// Containment says in words, a line each, how workers are confined on this system, and what is missing.
func Containment() []string {
	return append(append([]string{"process: cells run in a process of their own, with an empty environment"}, systemInForce()...), limitsInForce()...)
}
