package corpus

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"
	"strings"
)

// Limits on what one file may be. They are far above what people write, so
// that only a broken or made-up file meets them.
const (
	maxText = 2 << 20   // bytes of one text: about 350,000 words
	maxFile = 256 << 20 // bytes of a document, most of which can only be pictures
)

// file reads one file of the folder and sends what it holds.
func (r *folderReader) file(name string, d fs.DirEntry, err error, out chan<- found) {
	send := func(f found) bool {
		if f.Unplaced != nil {
			if f.Unplaced.Source == "" {
				f.Unplaced.Source = sourceOf(name)
			}
			f.Unplaced.Reason = strings.Join(strings.Fields(f.Unplaced.Reason), " ")
		}
		select {
		case out <- f:
			return true
		case <-r.ctx.Done():
			return false
		}
	}
	refuse := func(format string, args ...any) { send(found{Unplaced: unplaced(format, args...)}) }
	switch {
	case err != nil:
		refuse("cannot be opened; check that you may read it")
		return
	case d.Type()&fs.ModeSymlink != 0:
		refuse("is a link, and links are not followed; put the file itself into the folder")
		return
	case !d.Type().IsRegular():
		refuse("is no file that can be read; take it out of the folder")
		return
	}
	read, why := reader(name)
	if read == nil {
		refuse("%s", why)
		return
	}
	// A document that a library cannot cope with must not end the run.
	defer func() {
		if p := recover(); p != nil {
			refuse("is damaged and cannot be read; open it and save it again")
		}
	}()
	// Much can have happened since the folder was listed.
	switch now, err := fs.Lstat(r.fsys, name); {
	case errors.Is(err, fs.ErrNotExist):
		refuse("was taken away while the folder was read; run this again if it ought to count")
		return
	case err == nil && !now.Mode().IsRegular():
		refuse("was put in place of a file while the folder was read; run this again")
		return
	}
	f, err := r.fsys.Open(name)
	if err != nil {
		refuse("cannot be opened; check that you may read it")
		return
	}
	defer f.Close()
	before, err := f.Stat()
	if err != nil || !before.Mode().IsRegular() {
		refuse("cannot be opened; check that you may read it")
		return
	}
	read(r, name, f, send)
	if after, err := f.Stat(); err == nil && (after.Size() != before.Size() || !after.ModTime().Equal(before.ModTime())) {
		refuse("was changed while it was read, so that what stands here may be half of it; let whatever writes it finish, and run this again")
	}
}

// readFile is how files of one format are read. It sends what the file holds
// and stops when send says so.
type readFile func(r *folderReader, name string, f fs.File, send func(found) bool)

// reader returns how a file is read, by the end of its name, or why it is not.
func reader(name string) (readFile, string) {
	ext := strings.ToLower(path.Ext(name))
	switch ext {
	case ".txt", ".md", ".markdown", ".text":
		return (*folderReader).readPlain, ""
	case ".docx":
		return (*folderReader).readDocx, ""
	case ".odt":
		return (*folderReader).readOdt, ""
	case ".csv", ".tsv":
		return (*folderReader).readCSV, ""
	case ".xlsx":
		return (*folderReader).readXLSX, ""
	case ".pdf":
		// A PDF keeps letters and their places on the page, not paragraphs,
		// columns or what was struck out. Both readers that were tried gave
		// sentences a person does not see (DEVELOPERS.md).
		return nil, "is a PDF, which does not keep sentences in their order; save it as .docx, .odt or .txt in the program it was written with"
	case ".doc", ".rtf", ".pages", ".wps":
		return nil, "is in a format that is not read; open it and save it as .docx or .odt"
	case ".xls", ".ods", ".numbers":
		return nil, "is in a format that is not read; open it and save it as .xlsx or .csv"
	case ".zip", ".rar", ".7z", ".gz", ".tar":
		return nil, "is a packed folder, and those are not opened; unpack it into this folder"
	case ".jpg", ".jpeg", ".png", ".heic", ".gif", ".webp", ".tif", ".tiff", ".bmp":
		return nil, "is a picture, and only text is read; type out what stands in it if it holds an evaluation"
	case ".mp3", ".m4a", ".wav", ".mp4", ".mov", ".ogg", ".aac":
		return nil, "is a recording, and only text is read; type out what is said if it holds an evaluation"
	case "":
		return nil, "has no ending that tells what it is; give it one such as .txt or .docx"
	}
	return nil, fmt.Sprintf("ends in %s, which is not read; save it as .docx, .odt or .txt if it holds an evaluation", ext)
}

// all reads a whole file of at most limit bytes.
func all(f fs.File, limit int64) ([]byte, *Unplaced) {
	var b bytes.Buffer
	if info, err := f.Stat(); err == nil && info.Size() <= limit {
		b.Grow(int(info.Size()) + bytes.MinRead) // room to meet the end without growing
	}
	_, err := b.ReadFrom(io.LimitReader(f, limit+1))
	data := b.Bytes()
	switch {
	case err != nil:
		return nil, unplaced("cannot be read to its end; check the disk and that you may read it")
	case int64(len(data)) > limit:
		return nil, tooLong()
	}
	return data, nil
}

func tooLong() *Unplaced {
	return unplaced("holds more than %d MB of text; put one evaluation into a file", maxText>>20)
}

// asUnplaced returns err as what it says to a person.
func asUnplaced(err error) *Unplaced {
	var u *Unplaced
	if errors.As(err, &u) {
		return u
	}
	return unplaced("is damaged and cannot be read; open it and save it again")
}

// sourceOf is a path as a person and other programs can be shown it.
func sourceOf(name string) string { return strings.ToValidUTF8(name, "\uFFFD") }
