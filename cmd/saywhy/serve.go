package main

import (
	"context"
	"crypto/rand"
	"errors"
	"fmt"
	"io"
	"log"
	"net"
	"net/http"
	"os"
	"os/signal"
	"syscall"
	"time"

	"github.com/spf13/cobra"

	"saywhy/cmd/pages"
)

type serveOptions struct {
	addr   string
	open   bool
	course string
	group  string // the tutor's folder of evaluations
}

// plainAddr is where the pages are when nothing else is asked for: on this
// machine only.
const plainAddr = "127.0.0.1:8350"

func newServe(s streams) *cobra.Command {
	o := serveOptions{addr: plainAddr}
	c := &cobra.Command{
		Use:   "serve",
		Short: "Show the pages: write, look up words, give feedback, in your browser",
		Long: `Starts the pages on this machine and prints their address, to be opened in a
browser. Nothing that is written there is kept, logged or sent elsewhere.

With --addr other machines of your network can open them too, such as a phone
beside the cooker: whoever is on the network then can. Stop it with Ctrl-C.`,
		Example: `  saywhy serve --open
  saywhy serve --course my-course --group evaluations
  saywhy serve --addr :8350        (for the phones at home)`,
		Args: noArgs("serve"),
		RunE: func(*cobra.Command, []string) error { return serveUntilStopped(s, o) },
	}
	f := c.Flags()
	f.StringVar(&o.addr, "addr", o.addr, "the address to serve at, host and port")
	f.BoolVar(&o.open, "open", false, "open the pages in your browser")
	courseFlag(f, &o.course)
	f.StringVar(&o.group, "group", "", "with --course: your folder of evaluations, for the report on the group and the words the lists lack")
	return c
}

// Time limits. A phone at the far end of the garden gets its half minute; a
// client that trickles does not hold a place for longer.
const (
	headTime = 5 * time.Second
	readTime = 30 * time.Second
	sendTime = 60 * time.Second
	idleTime = 2 * time.Minute
	stopTime = 15 * time.Second // for answers under way when it is stopped
	headMost = 16 << 10         // bytes
)

// serveUntilStopped serves until Ctrl-C.
func serveUntilStopped(s streams, o serveOptions) error {
	ctx := s.until
	if ctx == nil {
		ctx = context.Background()
	}
	ctx, stop := signal.NotifyContext(ctx, os.Interrupt, syscall.SIGTERM)
	defer stop()
	return serve(ctx, s, o)
}

// serve serves the pages until the context ends, then lets what is under way
// finish.
func serve(ctx context.Context, s streams, o serveOptions) error {
	if o.group != "" && o.course == "" {
		return errors.New("--group is for the tutor; name your course with --course as well, such as --course my-course")
	}
	options, err := served(o)
	if err != nil {
		return err
	}
	listener, err := net.Listen("tcp", o.addr)
	if err != nil {
		return listenError(o.addr, err)
	}
	defer listener.Close()
	reach := reachOf(listener.Addr())
	options.Local, options.Hosts = reach.local, reach.names
	if options.Tutor != nil {
		options.Tutor.Address = reach.others()
	}
	handler, err := pages.New(options)
	if err != nil {
		return err
	}
	server := &http.Server{
		Handler:           handler,
		ReadHeaderTimeout: headTime, ReadTimeout: readTime, WriteTimeout: sendTime, IdleTimeout: idleTime,
		MaxHeaderBytes: headMost,
		// The library's own messages name who asked for what. Nobody needs them.
		ErrorLog: log.New(io.Discard, "", 0),
	}
	announce(s, o, reach, options)
	failed := make(chan error, 1)
	go func() { failed <- server.Serve(listener) }()
	if o.open {
		openBrowser(reach.own())
	}
	select {
	case err := <-failed:
		return fmt.Errorf("the pages stopped by themselves: %w; start them again", err)
	case <-ctx.Done():
	}
	last, cancel := context.WithTimeout(context.Background(), stopTime)
	defer cancel()
	if err := server.Shutdown(last); err != nil {
		server.Close() // what is still open after that long is not read any more
	}
	<-failed
	return nil
}

// served returns what the pages are made of: the built-in words, or those of a
// course, read again whenever its files change, with the tutor's pages.
func served(o serveOptions) (pages.Options, error) {
	if o.course == "" {
		lex, course, analyzer, err := loadCourseAnalyzer("")
		if err != nil {
			return pages.Options{}, err
		}
		return pages.Options{Library: pages.Fixed(&pages.Shelf{Lexicon: lex, Course: course, Analyzer: analyzer})}, nil
	}
	folder, err := openCourseFolder(o.course)
	if err != nil {
		return pages.Options{}, err
	}
	tagger, err := sharedTagger()
	if err != nil {
		return pages.Options{}, err
	}
	library, err := pages.NewCourseLibrary(folder, tagger)
	if err != nil {
		return pages.Options{}, err
	}
	tutor := &pages.Tutor{Folder: folder, Library: library, Key: rand.Text()}
	if o.group != "" {
		if err := isFolder(o.group); err != nil {
			return pages.Options{}, err
		}
		group := &servedGroup{dir: o.group, library: library}
		tutor.Group, tutor.Texts = group.report, group.texts
	}
	return pages.Options{Library: library, Tutor: tutor}, nil
}

// listenError says why there can be no pages at an address, and what to do.
func listenError(addr string, err error) error {
	var wrong *net.AddrError
	switch {
	case errors.Is(err, syscall.EADDRINUSE):
		return fmt.Errorf("something is served at %s already, perhaps saywhy itself; stop that, or choose another port, such as --addr 127.0.0.1:0", addr)
	case errors.Is(err, syscall.EACCES):
		return fmt.Errorf("you may not serve at %s; choose a port above 1023, such as --addr %s", addr, plainAddr)
	case errors.As(err, &wrong):
		return fmt.Errorf("%q is no address to serve at; write host and port, such as --addr %s", addr, plainAddr)
	}
	return fmt.Errorf("there can be no pages at %q; write an address of this machine and a port, such as --addr %s", addr, plainAddr)
}
