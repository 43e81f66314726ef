package wholefile

// File is a file to be written.
type File struct {
	Path string
	Data []byte
}

// WriteAll writes files that belong together, each as Write does. All are whole on the disk, under temporary names, before
// the first takes its place: a disk that is full leaves what was there.
func WriteAll(files ...File) error {
	staged := make([]*staging, 0, len(files))
	defer func() {
		for _, s := range staged {
			s.drop()
		}
	}()
	for _, f := range files {
		s, err := stage(f.Path, f.Data)
		if err != nil {
			return err
		}
		staged = append(staged, s)
	}
	for _, s := range staged {
		if err := s.place(); err != nil {
			return err
		}
	}
	return nil
}
