const failures = {
  notShared: 'Not shared. Save it as a file instead.',
  folderGone: 'That folder is not there any more; nothing was written. Choose one again.',
  folderForbidden: 'This tablet may not write into that folder; nothing was written. Choose one again.',
  notWritten:
    'Not written whole, so nothing of it was left there. Is there room? Try again, or save it as a file.',
};

/** Ways out of the tablet beside a download. */
export const handOver = {
  share: 'Share',
  intoFolder: 'Into a folder',
  intoThis: (folder: string) => `Into “${folder}”`,
  anotherFolder: 'Another folder',
  shared: (names: string) => `Handed on: ${names}`,
  written: (names: string, folder: string) => `In “${folder}”: ${names}`,
  failures,
};
