// Command saywhy reads evaluations of cookery practicals by rules, shows how
// far each area of them got, and asks a few questions. It never writes a word
// for the writer.
package main

import (
	"os"

	"golang.org/x/term"
)

func main() {
	os.Exit(run(os.Args[1:], streams{
		in: os.Stdin, out: os.Stdout, err: os.Stderr,
		page:     terminalPage(os.Stdout, os.Getenv),
		progress: term.IsTerminal(int(os.Stderr.Fd())),
	}))
}
