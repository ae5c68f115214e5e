package spanish

// findingsTrade is what is told of numbers: of base/quantity, trade and check/numbers.
var findingsTrade = map[string]string{}
