package pages

import (
	"image"
	"image/color"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"saywhy/cmd/internal/needs"
)

// TestACameraReadsTheCode has Debian's zbarimg, which shares nothing with the
// library that makes the code, read it back (ISO/IEC 18004).
func TestACameraReadsTheCode(t *testing.T) {
	for _, address := range []string{
		"http://192.168.1.20:8350/",
		"http://kitchen-laptop.local:8350/tutor/open/Zm9ydHkga2l0Y2hlbnMgYW5kIG9uZSB0dXRvcg",
		"http://[2001:db8:85a3::8a2e:370:7334]:65535/" + strings.Repeat("long/", 40),
	} {
		const scale = 4 // pixels a module
		p := newQRPicture(address)
		require.NotNil(t, p)
		picture := image.NewGray(image.Rect(0, 0, p.Size*scale, p.Size*scale))
		for i := range picture.Pix {
			picture.Pix[i] = 0xff
		}
		for _, run := range p.Dark {
			for y := run.Y * scale; y < (run.Y+1)*scale; y++ {
				for x := run.X * scale; x < (run.X+run.Width)*scale; x++ {
					picture.SetGray(x, y, color.Gray{})
				}
			}
		}
		assert.Equal(t, address, needs.CodeIn(t, picture))
	}
	assert.Nil(t, newQRPicture(strings.Repeat("x", 4000)), "too long for any code")
}
