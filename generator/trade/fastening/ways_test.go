package fastening

import (
	"fmt"
	"strings"
	"testing"

	"baybinder/generator/base/quantity"
	"baybinder/generator/language"
	"baybinder/generator/model"
)

// Known: SEEN, FROM MEMORY.

func tool(t *testing.T, kind, name, rng, length, adds string) *model.Tool {
	t.Helper()
	out := &model.Tool{Kind: kind}
	out.Name = name
	if rng != "" {
		limit, err := quantity.ParseLimit(rng, quantity.Torque)
		if err != nil {
			t.Fatal(err)
		}
		out.Range = limit
	}
	if length != "" {
		out.Length = amount(t, length)
	}
	if adds != "" {
		out.Adds = amount(t, adds)
		out.Fits = []string{"17 mm"}
	}
	return out
}

// Stages stand in place of the torque, and an angle is none: "Fasteners" of the format.
func TestTorques(t *testing.T) {
	limit, err := quantity.ParseLimit("20 to 24 N·m", quantity.Torque)
	if err != nil {
		t.Fatal(err)
	}
	stages := []quantity.Quantity{amount(t, "30 N·m"), amount(t, "60 N·m"), amount(t, "90°")}
	for want, f := range map[string]*model.Fastener{
		"[20 N·m 24 N·m]": {Torque: limit}, "[30 N·m 60 N·m]": {Torque: limit, Stages: stages}, "[]": {},
	} {
		if got := fmt.Sprint(Torques(f)); got != want {
			t.Errorf("%s, want %s", got, want)
		}
	}
}

func said(ways []Way) string {
	var each []string
	for _, w := range ways {
		each = append(each, w.Wrench.Name+" "+w.Set.String())
	}
	return strings.Join(each, ", ")
}

// By hand from T·L/(L + A) (US Army TM 9-254, fig. 45), with 30 mm added:
// 20 N·m are 20·280/310 = 18.06 N·m with the small wrench, and 20·420/450 =
// 18.67 with the large one, which begins at 20 and has its floor at 22 (20 % of
// 110: ISO 6789-1, from memory). 22 N·m are 19.87 and 20.53: the large one is
// in a range from 15 there, and under its floor. 24 N·m are 21.68 and 22.40,
// which both cover. 27 N·m are 24.39, and 25.2: without the adapter the small
// one does not reach 27.
func TestWays(t *testing.T) {
	small := tool(t, "torque-wrench", "small", "5 to 25 N·m", "280 mm", "")
	large := tool(t, "torque-wrench", "large", "20 to 110 N·m", "420 mm", "")
	early := tool(t, "torque-wrench", "early", "15 to 110 N·m", "420 mm", "")
	blank := tool(t, "torque-wrench", "blank", "5 to 25 N·m", "", "")
	crow := tool(t, "spanner", "crow-foot", "", "", "30 mm")
	plain := &model.Tool{Kind: "socket", Fits: []string{"17 mm"}}
	other := tool(t, "spanner", "other crow-foot", "", "", "30 mm")
	other.Fits = []string{"24 mm"}
	for name, c := range map[string]struct {
		torque            string
		wrenches, drivers []*model.Tool
		want              string
	}{
		"the one that covers it":           {"20 N·m", []*model.Tool{small, large}, []*model.Tool{crow}, "small 18.1 N·m"},
		"whichever is named first":         {"20 N·m", []*model.Tool{large, small}, []*model.Tool{crow}, "small 18.1 N·m"},
		"in the range and under the floor": {"22 N·m", []*model.Tool{early, large}, []*model.Tool{crow}, ""},
		"both":                             {"24 N·m", []*model.Tool{small, large}, []*model.Tool{crow}, "small 21.7 N·m, large 22.4 N·m"},
		"covered as set alone":             {"27 N·m", []*model.Tool{small}, []*model.Tool{crow}, "small 24.4 N·m"},
		"and not straight":                 {"27 N·m", []*model.Tool{small}, []*model.Tool{plain}, ""},
		"straight or behind it":            {"22 N·m", []*model.Tool{small}, []*model.Tool{plain, crow}, "small 22 N·m, small 19.9 N·m"},
		"an adapter of another size":       {"24 N·m", []*model.Tool{small}, []*model.Tool{other}, "small 24 N·m"},
		"a wrench without a length":        {"24 N·m", []*model.Tool{blank}, []*model.Tool{crow}, "blank 24 N·m"},
		"no wrench":                        {"24 N·m", nil, []*model.Tool{crow}, ""},
	} {
		f := &model.Fastener{AcrossFlats: amount(t, "17 mm")}
		ways := Ways(f, amount(t, c.torque), c.wrenches, c.drivers)
		if got := said(ways); got != c.want {
			t.Errorf("%s: %q, by hand %q", name, got, c.want)
		}
		for _, w := range ways {
			known := w.Adapter != nil && w.Wrench != blank
			explained := w.Explain(&language.Default().Worked.Adapter)
			if explained.Known() != known || known && !strings.Contains(explained.Terms[1].Words, w.Wrench.Name) {
				t.Errorf("%s: working %s", name, explained)
			}
		}
	}
}
