package spanish

// findingsCheck is what the rules of package check tell.
var findingsCheck = map[string]string{}
