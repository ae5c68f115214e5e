package domain_test

import (
	"testing"

	"baybinder/generator/trade/domain"
)

func TestErrorSaysWhatAndMendSaysHow(t *testing.T) {
	err := &domain.Error{Given: "M8 fine", Why: "is not a thread", Write: "write it as M8x1"}
	if got, want := err.Error(), `"M8 fine" is not a thread`; got != want {
		t.Errorf("said %s, want %s", got, want)
	}
	if got := err.Mend(); got != "write it as M8x1" {
		t.Errorf("the mend is %q", got)
	}
}
