package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"
)

// streams are what a command reads and writes, and what it writes on.
type streams struct {
	in   io.Reader
	out  io.Writer
	live io.Writer // where what cannot wait for the end is written at once
	err  io.Writer
	late io.Writer // where a remark goes that stands on err below the output
	page page

	progress bool            // whether err is a terminal that someone watches
	until    context.Context // what stops a command that runs until then; nil leaves it to Ctrl-C
}

// Exit statuses, as the contract fixes them.
const (
	exitDone  = 0
	exitUsage = 2 // wrong use, or input that cannot be read
)

// The voice of errors, for every command: one line on standard error that
// begins with "saywhy: ", says what is wrong and where, and then how to mend
// it. No capital, no full stop, no error of the machine's own wording where a
// person could not act on it. Nothing stands on standard output then, but for a
// list of problems that was asked for (see listed).

// listed is the error of a command whose answer is a list of what is wrong: the
// list goes to standard output, the error closes it in one line.
type listed struct{ error }

// run runs one command line and returns the exit status. Standard output is
// held until the command has succeeded, so that an error leaves it empty; only
// stream and serve, which have no end to wait for, write as they go.
func run(args []string, s streams) int {
	var out, late bytes.Buffer
	root := newRoot(streams{in: s.in, out: &out, live: s.out, err: s.err, late: &late, page: s.page, progress: s.progress, until: s.until})
	root.SetArgs(args)
	root.SetIn(s.in)
	root.SetOut(&out)
	root.SetErr(s.err)
	if err := root.Execute(); err != nil {
		if errors.As(err, new(listed)) {
			_, _ = s.out.Write(out.Bytes()) // the status tells of failure as it is
		}
		fmt.Fprintln(s.err, "saywhy: "+oneLine(err.Error()))
		return exitUsage
	}
	if _, err := s.out.Write(out.Bytes()); err != nil {
		fmt.Fprintln(s.err, "saywhy: the output could not be written to its end: "+mend(err)+"; what stands there is not whole")
		return exitUsage
	}
	_, _ = s.err.Write(late.Bytes()) // nobody is left to tell that it fails
	return exitDone
}

func oneLine(s string) string { return strings.Join(strings.Fields(s), " ") }

func newRoot(s streams) *cobra.Command {
	root := &cobra.Command{
		Use:   "saywhy",
		Short: "Ask a young cook what they saw, smelt, tasted and felt, and why",
		Long: `saywhy reads what a young cook wrote about a practical, or what the adult at
home wrote about it. It shows how far each area got (said, detail, reason) and
asks a few questions. It never writes a word for the writer, gives no marks, and
nothing leaves this machine.

Start with:
  saywhy                                               (pages in your browser)
  saywhy read my-evaluation.txt --dish "tomato soup"   (here)`,
		SilenceErrors: true,
		SilenceUsage:  true,
		Args:          cobra.NoArgs,
		RunE:          func(*cobra.Command, []string) error { return serveUntilStopped(s, serveOptions{addr: plainAddr}) },
	}
	root.CompletionOptions.HiddenDefaultCmd = true
	root.SetFlagErrorFunc(func(c *cobra.Command, err error) error {
		return fmt.Errorf("%s; \"%s --help\" lists the flags", flagMessage(err), c.CommandPath())
	})
	root.SetHelpCommand(newHelp())
	root.AddCommand(newRead(s), newCompare(s), newWords(s), newSheet(s), newDish(s), newGroup(s), newStream(s), newServe(s), newScore(s))
	return root
}

// newHelp is the library's help command, but for a name it does not know it
// fails as every other command does.
func newHelp() *cobra.Command {
	return &cobra.Command{
		Use:   "help [command]",
		Short: "Help about any command",
		RunE: func(c *cobra.Command, args []string) error {
			about, rest, err := c.Root().Find(args)
			if err != nil || len(rest) > 0 {
				return fmt.Errorf("there is no command called %q; \"saywhy --help\" lists them", strings.Join(args, " "))
			}
			return about.Help()
		},
	}
}

// flagMessage rewords the flag library's errors.
func flagMessage(err error) string {
	msg := err.Error()
	if i := strings.Index(msg, ": strconv."); i >= 0 {
		msg = msg[:i] + ": a whole number is needed"
	}
	return msg
}
