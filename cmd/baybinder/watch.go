package main

import (
	"context"
	"os"
	"os/signal"
	"strings"
	"syscall"

	"baybinder/generator"
	"baybinder/generator/browse"
	"baybinder/generator/check"
	"baybinder/generator/finding"
	"baybinder/generator/watch"
)

type watchCommand struct {
	siteFlag
	Port uint16 `default:"0" placeholder:"PORT" help:"Which port (default: one that is free)."`
}

// Help is the longer text of watch --help.
func (*watchCommand) Help() string {
	return "Drafts are shown too, marked as drafts. Where there is an error, the last good page stays, with the finding over it. " +
		"Only this machine can see the pages. Ctrl-C ends it."
}

// Run builds and serves until Ctrl-C.
func (c *watchCommand) Run(g *globals, d *desk) error {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	folder, err := watch.Open(g.Manual, c.To)
	if err != nil {
		if _, why := generator.Check(g.options()); why != nil {
			return why // the same words as every command's
		}
		return err
	}
	defer folder.Close()
	browsers := &watch.Browsers{}
	site, err := browse.Open(browse.Options{Folder: c.To, Port: int(c.Port), Wrap: browsers.Wrap})
	if err != nil {
		return err
	}
	d.say("%s shows %s as it becomes", site.URL(), g.Manual)
	if err := c.build(g, d, browsers); err != nil {
		return err // nothing was ever shown
	}
	built := make(chan struct{})
	go func() {
		defer close(built)
		folder.Each(ctx, func() {
			if err := c.build(g, d, browsers); err != nil {
				d.note("baybinder: %v", err)
			}
		})
	}()
	err = site.Serve(ctx)
	stop() // where serving failed, the watching ends too
	<-built
	return err
}

// build builds once, and tells of it here and in the open pages. The error says
// that the run itself failed.
func (c *watchCommand) build(g *globals, d *desk, browsers *watch.Browsers) error {
	o := g.options()
	o.To, o.Preview = c.To, true
	r, err := generator.Build(o)
	if err != nil {
		browsers.Tell(false, err.Error())
		return err
	}
	var text strings.Builder
	if len(r.Findings) > 0 {
		_ = finding.Text(&text, r.Findings, finding.TextOptions{Rules: check.Catalogue()})
	}
	if text.Len() > 0 {
		d.say("%s", strings.TrimRight(text.String(), "\n"))
	}
	if r.Errors() == 0 {
		d.say("%s in %s", count(r.Pages, "page"), c.To)
	} else {
		d.say("nothing was published: %s", count(r.Errors(), "error"))
	}
	browsers.Tell(r.Errors() == 0, text.String())
	return nil
}
