/** Before what is stored was read nothing can be saved, or it would be overwritten unread. */
export const NOT_READ = 'What is stored has not been read, so nothing can be added to it. Close this panel and open it again.';
