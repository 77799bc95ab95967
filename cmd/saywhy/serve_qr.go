package main

import (
	"strings"

	goqr "github.com/piglig/go-qr"
)

// terminalQR draws the QR code of an address with two rows of modules in a
// line of text, dark on light whatever the colours of the terminal are, and
// with the quiet zone of four that ISO/IEC 18004 asks for. It is "" when the
// address is too long for one.
func terminalQR(address string) string {
	code, err := goqr.EncodeText(address, goqr.Low)
	if err != nil {
		return ""
	}
	const quiet = 4
	size := code.Size()
	dark := func(x, y int) bool { return x >= 0 && y >= 0 && x < size && y < size && code.Module(x, y) }
	var b strings.Builder
	for y := -quiet; y < size+quiet; y += 2 {
		b.WriteString("\x1b[30;107m") // black on white
		for x := -quiet; x < size+quiet; x++ {
			switch upper, lower := dark(x, y), dark(x, y+1); {
			case upper && lower:
				b.WriteString("█")
			case upper:
				b.WriteString("▀")
			case lower:
				b.WriteString("▄")
			default:
				b.WriteString(" ")
			}
		}
		b.WriteString("\x1b[0m\n")
	}
	return b.String()
}
