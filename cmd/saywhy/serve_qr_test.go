package main

import (
	"image"
	"image/color"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/cmd/internal/needs"
)

// TestACameraReadsTheTerminal draws what a terminal shows, two rows of modules
// in a line of text, and has Debian's zbarimg read it (ISO/IEC 18004).
func TestACameraReadsTheTerminal(t *testing.T) {
	const address = "http://192.168.1.20:8350/"
	shown := terminalQR(address)
	require.NotEmpty(t, shown)
	lines := strings.Split(strings.TrimSuffix(shown, "\n"), "\n")
	const scale = 4 // pixels a module
	picture := image.NewGray(image.Rect(0, 0, len(lines)*2*scale+scale, len(lines)*2*scale))
	for i := range picture.Pix {
		picture.Pix[i] = 0xff
	}
	dark := func(x, y int) {
		for dy := range scale {
			for dx := range scale {
				picture.SetGray(x*scale+dx, y*scale+dy, color.Gray{})
			}
		}
	}
	for y, line := range lines {
		line, ok := strings.CutPrefix(line, "\x1b[30;107m")
		require.True(t, ok, "black on white, whatever the terminal's colours are")
		x := 0
		for _, half := range strings.TrimSuffix(line, "\x1b[0m") {
			if half == '█' || half == '▀' {
				dark(x, 2*y)
			}
			if half == '█' || half == '▄' {
				dark(x, 2*y+1)
			}
			x++
		}
	}
	assert.Equal(t, address, needs.CodeIn(t, picture))
}
