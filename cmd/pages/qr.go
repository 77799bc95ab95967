package pages

import (
	goqr "github.com/piglig/go-qr"
)

// qrPicture is a QR code (ISO/IEC 18004) as rows of modules, with the quiet
// zone of four around it that the standard asks for.
type qrPicture struct {
	Size int
	Dark []qrRun
}

// qrRun is dark modules side by side.
type qrRun struct{ X, Y, Width int }

const qrQuiet = 4

// newQRPicture returns the code of an address, nil when it is too long for one.
func newQRPicture(address string) *qrPicture {
	code, err := goqr.EncodeText(address, goqr.Medium)
	if err != nil {
		return nil
	}
	size := code.Size()
	p := &qrPicture{Size: size + 2*qrQuiet}
	for y := range size {
		for x := 0; x < size; x++ {
			from := x
			for x < size && code.Module(x, y) {
				x++
			}
			if x > from {
				p.Dark = append(p.Dark, qrRun{from + qrQuiet, y + qrQuiet, x - from})
			}
		}
	}
	return p
}
