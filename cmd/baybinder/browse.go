package main

import (
	"context"
	"os"
	"os/signal"
	"syscall"

	"baybinder/generator/command/browse"
)

type browseCommand struct {
	siteFlag
	Address string `default:"127.0.0.1" placeholder:"ADDRESS" help:"Where to serve it; other machines can reach any address but 127.0.0.1 (default: 127.0.0.1)."`
	Open    bool   `help:"Open it in the browser, too."`
	Port    uint16 `default:"0" placeholder:"PORT" help:"Which port (default: one that is free)."`
}

// Help is the longer text of browse --help.
func (*browseCommand) Help() string {
	return "The site can also be opened without this: open public/index.html from its folder. Ctrl-C ends it."
}

// Run serves the site until Ctrl-C.
func (c *browseCommand) Run(d *output) error {
	site, err := browse.Open(browse.Options{Folder: c.To, Address: c.Address, Port: int(c.Port)})
	if err != nil {
		return err
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	d.say("%s shows %s", site.URL(), c.To)
	d.progress("Ctrl-C ends it.")
	if c.Open {
		d.toBrowser(site.URL())
	}
	return site.Serve(ctx)
}
