package walk

import (
	"baybinder/generator/finding"
	"baybinder/generator/manual"
)

func actsInWords(m *manual.Manual, p *manual.Procedure) []finding.Finding { return nil }
