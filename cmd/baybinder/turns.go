package main

import (
	"reflect"

	"github.com/alecthomas/kong"

	"baybinder/generator"
	"baybinder/generator/base/turn"
)

// changer is a command that may change the manual.
type changer interface{ changesManual() bool }

func (c *beginManual) changesManual() bool    { return true }
func (c *beginMachine) changesManual() bool   { return true }
func (c *beginProcedure) changesManual() bool { return true }
func (c *settleCommand) changesManual() bool  { return !c.Show }
func (c *renameCommand) changesManual() bool  { return !c.Show }
func (c *issueCommand) changesManual() bool   { return true }
func (c *recordCommand) changesManual() bool  { return true }
func (c *schemaCommand) changesManual() bool  { return c.Write }

// asked runs a command. One that changes the manual first waits until nobody
// else does: what it reads is then what it changes, and two lose nothing. It speaks
// the language of the manual's shop, where there is one.
func (d *output) asked(c *commands, what *kong.Context) error {
	d.language = generator.LanguageOf(c.Manual)
	if changing, is := targetOf(what).(changer); is && changing.changesManual() {
		done, err := turn.In(c.Manual, d.waitsFor)
		if err != nil {
			return err
		}
		defer done()
	}
	return what.Run(&c.globals, d)
}

func targetOf(what *kong.Context) any {
	if node := what.Selected(); node != nil && node.Target.CanAddr() {
		return node.Target.Addr().Interface()
	}
	return reflect.Value{}
}

// waitsFor tells for whom a command waits.
func (d *output) waitsFor(who string) { d.hear(turn.Waiting(who)) }
