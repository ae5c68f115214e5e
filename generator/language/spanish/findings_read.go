package spanish

// findingsRead is what is told while a manual is read.
var findingsRead = map[string]string{}
