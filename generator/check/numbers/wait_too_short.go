package numbers

import (
	"baybinder/generator/base/finding"
	"baybinder/generator/model"
	"baybinder/generator/trade/electrical"
)

// WaitTooShort is told at the hold: link.
var WaitTooShort = finding.Rule{
	Code:  "wait-too-short",
	Title: "A wait that ends before the charge is gone",
	Why:   "Who measures too early finds the circuit live, and who does not measure finds it with a hand.",
	Mend:  "Make the wait at least as long as computed, or mend the voltage, capacitance and resistance of the energy. The maker's wait goes before both.",
}

// waitsTooShort holds the waits of a procedure's steps against the time that
// the charge of their energy takes to fall to the shop's safe voltage.
func waitsTooShort(m *model.Manual, p *model.Procedure) []finding.Finding {
	if p.For.To == nil || m.Shop.Unread {
		return nil
	}
	var found []finding.Finding
	for _, s := range p.Steps {
		for _, b := range s.Blocks {
			for _, link := range b.Links {
				if hold, is := link.To.(*model.Hold); is && link.Is("hold") && !link.Bad {
					found = append(found, waitTooShort(m.Shop, p.For.To, link, hold)...)
				}
			}
		}
	}
	return found
}

func waitTooShort(shop *model.Shop, machine *model.Machine, link *model.Link, hold *model.Hold) []finding.Finding {
	energy, is := machine.Find(hold.Of.ID).(*model.Energy)
	if !is || hold.Kind != "wait" || hold.Unread || hold.For.IsZero() || energy.Unread || energy.Kind != "electric" {
		return nil
	}
	safe := shop.Limits.SafeVoltageDC
	wait, known := storeOf(energy).WaitFor(safe)
	if !known || wait.Enough(hold.For.Least.Base()) {
		return nil
	}
	f := WaitTooShort.At(link.At, "a wait of %s is too short: the charge of the %s takes %s to fall to %s", hold.For, energy.Label(), wait.Least, safe).
		WithMend("wait at least %s; %s", wait.Least, wait.Working)
	return []finding.Finding{f.See(hold.At, "the wait is here").See(energy.At, "what is stored is here")}
}

func storeOf(e *model.Energy) electrical.Store {
	return electrical.Store{Voltage: e.Voltage, Capacitance: e.Stored.Capacitance, Resistance: e.Stored.Resistance}
}
