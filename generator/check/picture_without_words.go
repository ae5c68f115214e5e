package check

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
)

var pictureWithoutWords = finding.Rule{
	Code:  "picture-without-words",
	Level: finding.Advice,
	Title: "A picture that no words stand for",
	Why:   "Who listens to the page, or reads it where the picture did not print, misses what it shows.",
	Mend:  "Write between the brackets what a person should see in it: ![The plug drawn out, the lock through its handle.](…).",
}

func runPictureWithoutWords(_ *Context, p *model.Procedure) []finding.Finding {
	var found []finding.Finding
	for _, link := range allLinks(p) {
		if link.Kind == model.PictureLink && link.Text == "" {
			found = append(found, pictureWithoutWords.At(link.At, "no words stand for this picture").
				WithMend("write between [ and ] what it shows"))
		}
	}
	return found
}
