package check

import (
	"strings"

	"baybinder/generator/base/finding"
	"baybinder/generator/base/position"
	"baybinder/generator/model"
	"baybinder/generator/trade/faultcode"
)

var faultCode = finding.Rule{
	Code:  "fault-code",
	Ours:  true,
	Title: "A fault code that no reader can show",
	Why:   "Someone looks for the code on the display, does not find it, and takes the wrong branch.",
	Mend:  "Write the code as the reader shows it: P, C, B or U, then 0 to 3, then three figures or A to F (SAE J2012, ISO 15031-6).",
}

// runFaultCode looks through the words, and through the front matter: what a
// reader shows is written among the symptoms too.
func runFaultCode(_ *Context, p *model.Procedure) []finding.Finding {
	places := []position.Pos{frontMatter(p)}
	for _, b := range p.Blocks() {
		places = append(places, b.At)
	}
	var list []finding.Finding
	for _, at := range places {
		for _, f := range faultcode.Find(at.Text()) {
			if f.Err == nil {
				continue
			}
			found := faultCode.At(at.Part(f.Start, f.End), "%v", f.Err)
			if mend, ok := f.Err.(interface{ Mend() finding.Words }); ok {
				found = found.WithMend("%s", mend.Mend())
			}
			list = append(list, found)
		}
	}
	return list
}

// frontMatter is where a procedure's front matter stands.
func frontMatter(p *model.Procedure) position.Pos {
	return p.File.At(0, max(0, strings.Index(p.File.Text, "\n---")))
}
