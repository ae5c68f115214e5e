package main

import (
	"bufio"
	"fmt"
	"os"
	"unsafe"

	"golang.org/x/sys/windows"
)

var consoleProcesses = windows.NewLazySystemDLL("kernel32.dll").NewProc("GetConsoleProcessList")

// doubleClicked says that the program has a console of its own, which no shell
// shares: it was started from the desktop.
func doubleClicked() bool {
	var first uint32
	n, _, _ := consoleProcesses.Call(uintptr(unsafe.Pointer(&first)), 1)
	return n == 1
}

// stays keeps the console open until what was said is read.
func stays() {
	fmt.Fprintln(os.Stderr, "Press Enter to close this window.")
	_, _ = bufio.NewReader(os.Stdin).ReadString('\n')
}
