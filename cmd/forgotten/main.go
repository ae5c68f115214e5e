// Command forgotten names each switch that forgets an act, a target or a state: it
// is exhaustive, asked by go vet (-vettool), which asks again only of packages that
// changed.
package main

import (
	"github.com/nishanths/exhaustive/passes/exhaustive"
	"golang.org/x/tools/go/analysis/unitchecker"
)

func main() { unitchecker.Main(exhaustive.Analyzer) }
