package domain_test

import (
	"testing"

	"baybinder/generator/base/finding"
	"baybinder/generator/trade/domain"
)

func TestErrorSaysWhatAndMendSaysHow(t *testing.T) {
	err := &domain.Error{Given: "M8 fine", Why: finding.Say("is not a thread"), Write: finding.Say("write it as M8x1")}
	if got, want := err.Error(), `"M8 fine" is not a thread`; got != want {
		t.Errorf("said %s, want %s", got, want)
	}
	if got := err.Mend().String(); got != "write it as M8x1" {
		t.Errorf("the mend is %q", got)
	}
}
