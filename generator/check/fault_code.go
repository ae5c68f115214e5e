package check

import (
	"baybinder/generator/finding"
	"baybinder/generator/manual"
	"baybinder/generator/trade/faultcode"
)

var faultCode = finding.Rule{
	Code:  "fault-code",
	Title: "A fault code that no reader can show",
	Why:   "Someone looks for the code on the display, does not find it, and takes the wrong branch.",
	Mend:  "Write the code as the reader shows it: P, C, B or U, then 0 to 3, then three figures or A to F (SAE J2012, ISO 15031-6).",
}

func runFaultCode(_ *Context, p *manual.Procedure) []finding.Finding {
	var list []finding.Finding
	for _, b := range blocks(p) {
		text := b.At.Text()
		for _, f := range faultcode.Find(text) {
			if f.Err == nil {
				continue
			}
			found := faultCode.At(b.At.Part(f.Start, f.End), "%v", f.Err)
			if mend, ok := f.Err.(interface{ Mend() string }); ok {
				found = found.WithMend("%s", mend.Mend())
			}
			list = append(list, found)
		}
	}
	return list
}
