package spanish

// findingsWalk is what the walk tells, and its rules.
var findingsWalk = map[string]string{}
