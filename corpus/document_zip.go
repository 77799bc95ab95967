package corpus

import (
	"archive/zip"
	"bytes"
	"encoding/binary"
	"io"
	"io/fs"
	"strings"
)

// Limits on the packed parts of a document. A document of 300 pages stays far
// below them; a file made to fill the memory does not.
const (
	maxEntries   = 10_000   // parts of a document
	maxDirectory = 4 << 20  // bytes of the list of its parts
	maxPart      = 32 << 20 // bytes of one part, unpacked
	maxRatio     = 300      // unpacked to packed size of a part above bombSize
	bombSize     = 1 << 20
)

// packed is a document that is a zip archive of XML parts.
type packed struct {
	parts map[string]*zip.File
}

// openPacked opens a document without unpacking anything. Names of parts may
// be written with backslashes, as some programs for Windows do.
func openPacked(f fs.File) (*packed, *Unplaced) {
	at, size, u := readerAt(f)
	if u != nil {
		return nil, u
	}
	head := make([]byte, 8)
	n, _ := at.ReadAt(head, 0) // too short a file has no head to know it by
	switch head = head[:n]; {
	case bytes.HasPrefix(head, []byte("\xd0\xcf\x11\xe0")):
		return nil, unplaced("is locked with a password, or saved in an old format; open it and save it as .docx or .xlsx without a password")
	case !bytes.HasPrefix(head, []byte("PK\x03\x04")):
		return nil, unplaced("is not the document its name says; open it and save it again as .docx or .odt")
	case directoryTooLarge(at, size):
		return nil, unplaced("has too many parts for a document; open it and save it again")
	}
	archive, err := zip.NewReader(at, size)
	if err != nil {
		return nil, unplaced("is damaged and cannot be unpacked; open it and save it again")
	}
	if len(archive.File) > maxEntries {
		return nil, unplaced("has %d parts, too many for a document; open it and save it again", len(archive.File))
	}
	p := &packed{parts: make(map[string]*zip.File, len(archive.File))}
	for _, part := range archive.File {
		name := strings.TrimPrefix(strings.ReplaceAll(part.Name, `\`, "/"), "/")
		if _, twice := p.parts[name]; !twice {
			p.parts[name] = part
		}
	}
	return p, nil
}

// readerAt lets a file be read at any offset, by the file itself if it can.
func readerAt(f fs.File) (io.ReaderAt, int64, *Unplaced) {
	info, err := f.Stat()
	if err != nil {
		return nil, 0, asUnplaced(err)
	}
	if info.Size() > maxFile {
		return nil, 0, unplaced("is larger than %d MB; take the pictures out and save it again", maxFile>>20)
	}
	if at, ok := f.(io.ReaderAt); ok {
		return at, info.Size(), nil
	}
	data, u := all(f, maxFile)
	return bytes.NewReader(data), int64(len(data)), u
}

// directoryTooLarge reads the record at the end of an archive and reports
// whether its list of parts is longer than that of a document can be, before
// the list is read into memory (APPNOTE.TXT, section 4.3.16).
func directoryTooLarge(at io.ReaderAt, size int64) bool {
	const record = 22
	tail := make([]byte, min(size, record+1<<16))
	if _, err := at.ReadAt(tail, size-int64(len(tail))); err != nil && err != io.EOF {
		return true
	}
	i := bytes.LastIndex(tail, []byte("PK\x05\x06"))
	if i < 0 || len(tail)-i < record {
		return false // no archive, as opening it will say
	}
	length := int64(binary.LittleEndian.Uint32(tail[i+12:]))
	start := int64(binary.LittleEndian.Uint32(tail[i+16:]))
	return length > maxDirectory || size-start > maxDirectory+int64(len(tail)-i)
}

// has reports whether the document has a part of the name.
func (p *packed) has(name string) bool { return p.parts[name] != nil }

// xml opens a part, or returns nil when there is none of the name.
func (p *packed) xml(name string) (*xmlPart, error) {
	part := p.parts[name]
	if part == nil {
		return nil, nil
	}
	if part.Flags&1 != 0 {
		return nil, unplaced("is locked with a password; open it and save it without one")
	}
	if part.UncompressedSize64 > maxPart || part.UncompressedSize64 > bombSize && part.UncompressedSize64/maxRatio > part.CompressedSize64 {
		return nil, tooLargeUnpacked()
	}
	r, err := part.Open()
	if err != nil {
		return nil, unplaced("is damaged and cannot be unpacked; open it and save it again")
	}
	return newXMLPart(r), nil
}

func tooLargeUnpacked() *Unplaced {
	return unplaced("becomes far too large when it is unpacked; open it and save it again")
}
