package edit

import "testing"

func TestLinkText(t *testing.T) {
	for _, c := range []struct{ words, want string }{
		{"two-pole tester, CAT III 1000 V", "two-pole tester, CAT III 1000 V"},
		{"clamp [8] *old*", `clamp \[8\] \*old\*`},
		{"nuts & bolts", "nuts & bolts"},
		{"R&D; stock", `R\&D; stock`},
		{`back\slash, tick` + "`", `back\\slash, tick` + "\\`"},
		{"a<b | c_d", `a\<b \| c\_d`},
	} {
		if got := LinkText(c.words); got != c.want {
			t.Errorf("%s → %s, want %s", c.words, got, c.want)
		}
	}
}
