package main

import (
	"fmt"
	"os"
	"time"

	"baybinder/generator"
	"baybinder/generator/manual"
)

func main() {
	root := "content"
	if len(os.Args) > 1 {
		root = os.Args[1]
	}
	r, err := generator.Check(generator.Options{Manual: root, Today: manual.DateOf(time.Now())})
	if err != nil {
		fmt.Println(err)
		os.Exit(2)
	}
	for _, f := range r.Findings {
		l, c := f.At.LineCol()
		fmt.Printf("%s:%d:%d: %s: %s [%s]\n    mend: %s\n", f.At.Path(), l, c, f.Level, f.Message, f.Code, f.Mend)
	}
	fmt.Println(len(r.Manual.Procedures), "procedures", r.Errors())
}
