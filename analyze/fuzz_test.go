package analyze

import (
	"bytes"
	"testing"

	"github.com/stretchr/testify/require"
)

// FuzzRead holds the promises of the report over whatever the fuzzer thinks
// of. Its seeds stand here, and the nasty inputs of promises_test.go join
// them; run it with "go test ./analyze -fuzz FuzzRead".
func FuzzRead(f *testing.F) {
	a, lex := shared(f)
	for _, text := range []string{
		"I tied my hair back so that none fell in the bowl. The crust was nice.",
		"It was too wet so it spread. Next time I'd add less water because the tray was flooded!",
		"- golden\r\n- crisp\r\n\r\n1. Taste: lovely\n2. Texture: ok",
		"Mum said “why is it dry?” and I said it was in too long… 😀 It was fine",
		"The probe read 62 in the chicken.then I ate it at 180C.Then",
		"as since for to by with using without which that if otherwise or else",
		"didn't didnt can't I'm its o'clock 20mins 3/4 1,000",
		"\xff\x00\ufeff\u200d\u202e👩‍🍳e\u0301\r\n",
	} {
		f.Add(text, "leek soup", false, uint8(3))
		f.Add(text, "", true, uint8(0))
	}
	for _, in := range nasty() {
		f.Add(in.Text, in.Title, in.Role == Adult, uint8(1))
	}
	dishes := append(lex.Types(), lex.General())
	f.Fuzz(func(t *testing.T, text, title string, adult bool, n uint8) {
		in := Input{Text: text, Title: title}
		if adult {
			in.Role = Adult
		}
		brief := Brief{Dish: dishes[int(n)%len(dishes)], Questions: int(n) % 5}
		r := a.Read(in, brief)
		require.NoError(t, brokenPromises(in, brief, r))
		first, err := encode(r)
		require.NoError(t, err)
		nulls, err := nullsIn(first)
		require.NoError(t, err)
		require.Empty(t, nulls)
		second, err := encode(a.Read(in, brief))
		require.NoError(t, err)
		require.True(t, bytes.Equal(first, second), "two readings differ")
	})
}
