package main

import (
	"context"
	"os"
	"os/signal"
	"path/filepath"
	"syscall"
	"time"

	"baybinder/generator/command/browse"
	"baybinder/generator/command/collect"
)

type browseCommand struct {
	siteFlag
	Collect bool   `help:"Take finished records from their pages into the manual's records. A device of the network types a code once."`
	Address string `default:"127.0.0.1" placeholder:"ADDRESS" help:"Where to serve it; other machines can reach any address but 127.0.0.1 (default: 127.0.0.1)."`
	Open    bool   `help:"Open it in the browser, too."`
	Port    uint16 `default:"0" placeholder:"PORT" help:"Which port (default: one that is free)."`
}

// Help is the longer text of browse --help.
func (*browseCommand) Help() string {
	return "With --collect and --address a device of the network types a code once; then it is known for at most 90 days, also when this is begun again. The key for that is a file of yours alone, in your configuration folder; without the file every device types a code again.\n\nThe site can also be opened without this: open public/index.html from its folder. Ctrl-C ends it."
}

// Run serves the site until Ctrl-C.
func (c *browseCommand) Run(g *globals, d *output) error {
	o := browse.Options{Folder: c.To, Address: c.Address, Port: int(c.Port)}
	var takes *collect.Collector
	if c.Collect {
		var err error
		if takes, err = collect.New(g.Manual, &collect.Devices{Folder: keys(), Now: time.Now, Say: d.hear}, d.hear); err != nil {
			return err
		}
		o.Wrap, o.Takes = takes.Wrap, []string{collect.RecordsAt, collect.DeviceAt}
	}
	site, err := browse.Open(o)
	if err != nil {
		return err
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	defer stop()
	d.inform("%s shows %s", site.URL(), c.To)
	if takes != nil {
		d.inform("Records of finished jobs go to %s.", filepath.Join(g.Manual, "records"))
		if c.Address != browse.Loopback {
			d.inform("A device of the network types this code once: %s", takes.Code())
			if kept := keys(); kept != "" {
				d.inform("Devices are known for at most 90 days, also when this is begun again. To forget them all: end this and delete the folder %s", kept)
			}
		}
	}
	d.progress("Ctrl-C ends it.")
	if c.Open {
		d.toBrowser(site.URL())
	}
	return site.Serve(ctx)
}

// keys is the folder for what devices are known by, of this user alone; "" where
// there is none.
func keys() string {
	own, err := os.UserConfigDir()
	if err != nil {
		return ""
	}
	return filepath.Join(own, "baybinder", "keys")
}
