package spanish

// findingsRules is the titles, reasons and mends of the rules that are not the walk's.
var findingsRules = map[string]string{}
