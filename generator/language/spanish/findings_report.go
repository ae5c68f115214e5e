package spanish

// findingsReport is the words around findings: of a report's head and end.
var findingsReport = map[string]string{}
