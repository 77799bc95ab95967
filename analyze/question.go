package analyze

// asking chooses the questions.
type asking struct{ words *vocabulary }

func (d asking) read(r *reading) {}
