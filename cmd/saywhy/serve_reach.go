package main

import (
	"fmt"
	"net"
	"net/netip"
	"os"
	"os/exec"
	"runtime"
	"strings"

	"saywhy/cmd/pages"
)

// reach is who can open the pages, and how.
type reach struct {
	local     bool     // only this machine
	port      string   //
	addresses []string // of this machine, for others, the likeliest first
	host      string   // the address to use here
	names     []string // of this machine, by which others may ask for the pages
}

// own is the address to open on this machine.
func (r reach) own() string { return "http://" + net.JoinHostPort(r.host, r.port) + "/" }

// others is the address to open on another machine of the network, "" when
// there is none.
func (r reach) others() string {
	if r.local || len(r.addresses) == 0 {
		return ""
	}
	return "http://" + net.JoinHostPort(r.addresses[0], r.port) + "/"
}

// reachOf tells who can open what is served at an address.
func reachOf(addr net.Addr) reach {
	host, port, _ := net.SplitHostPort(addr.String()) // a listener's address has both
	ip, _ := netip.ParseAddr(host)
	r := reach{port: port, host: host}
	switch {
	case ip.IsLoopback():
		r.local = true
		return r
	case ip.IsUnspecified():
		r.host = "localhost"
		r.addresses = ownAddresses()
	default:
		r.addresses = []string{host}
	}
	if name, err := os.Hostname(); err == nil && name != "" {
		name = strings.ToLower(name)
		r.names = []string{name, strings.SplitN(name, ".", 2)[0] + ".local"}
	}
	return r
}

// ownAddresses lists the addresses of this machine in the network at home:
// private ones of version 4 first, as phones and routers know them.
func ownAddresses() []string {
	var private, other []string
	addresses, _ := net.InterfaceAddrs() // none can be told then
	for _, a := range addresses {
		prefix, err := netip.ParsePrefix(a.String())
		if err != nil || prefix.Addr().IsLoopback() || prefix.Addr().IsLinkLocalUnicast() {
			continue
		}
		if ip := prefix.Addr(); ip.Is4() && ip.IsPrivate() {
			private = append(private, ip.String())
		} else {
			other = append(other, ip.String())
		}
	}
	return append(private, other...)
}

// announce says where the pages are, and who can open them.
func announce(s streams, o serveOptions, r reach, made pages.Options) {
	p := newPaper(s.page)
	p.heading("saywhy is ready. Open this in your browser:")
	p.item("  ", r.own())
	if r.local {
		p.item("", "Only this computer can open it. Ctrl-C stops it.")
	} else {
		p.heading("OTHERS CAN OPEN IT TOO")
		p.item("  ", "Everybody on your network can open these pages, and what they write travels over it unlocked. Use it at home, not in a café. Ctrl-C stops it.")
		if there := r.others(); there != "" {
			p.item("  ", "On a phone: "+there)
			if s.page.drawn {
				p.blank()
				p.b.WriteString(terminalQR(there))
			}
		}
	}
	if made.Tutor != nil {
		p.heading("For the tutor. This link works once:")
		p.item("  ", r.own()+"tutor/open/"+made.Tutor.Key)
	}
	if problems := made.Library.Current().Problems; len(problems) > 0 {
		p.blank()
		p.item("", fmt.Sprintf("There is something to mend in %s: %s%s. Until then the built-in words are in use. \"saywhy dish check --course %s\" lists it all.", o.course, problemLine(o.course, problems[0]), andMore(len(problems)-1), shellName(o.course)))
	}
	_ = p.flush(s.live)
}

func andMore(n int) string {
	if n == 0 {
		return ""
	}
	return fmt.Sprintf(" (and %d more)", n)
}

// openBrowser asks the system to open an address. When it cannot, the address
// has been printed.
func openBrowser(address string) {
	var c *exec.Cmd
	switch runtime.GOOS {
	case "darwin":
		c = exec.Command("open", address)
	case "windows":
		c = exec.Command("rundll32", "url.dll,FileProtocolHandler", address)
	default:
		c = exec.Command("xdg-open", address)
	}
	if c.Start() == nil {
		go func() { _ = c.Wait() }()
	}
}
