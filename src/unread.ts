// What a person is told when a part of the panel that is read on demand cannot be read: the files lie beside the panel, so
// they have been taken away or replaced under it.
export const UNREAD = 'A part of this panel cannot be read. Close the panel and open it again; nothing is lost.';
