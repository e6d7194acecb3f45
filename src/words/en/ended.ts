/** A consultation that is over, while its record is still to be written. */
export const ended = {
  title: (how: string) => `Over: ${how}`,
  notWritten: 'Her record is not written yet.',
  nothingLost: 'Every entry of it is kept, and nothing runs any more.',
  clears: 'Free some room on the tablet, then write it again. It is tried at every start of the station too.',
  writeAgain: 'Write the record again',
};
