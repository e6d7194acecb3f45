/** What part this window plays. */
export const windowPart = {
  starting: 'Reading the records …',
  /** After the start: the bar is in use, and what closed in earlier months is not known yet. */
  stillReading: (read: string, all: string) =>
    `Still looking through earlier clients, ${read} of ${all} months.`,
  opensByItself: 'Opens by itself in a moment',
  startsByItself: 'She starts by herself as soon as that is done.',
  watching: 'This station is open in another window. This one only watches.',
  /** Where something would be written. */
  greyHere: 'This window cannot write.',
  askTakeOver: 'Take over here',
  asked: 'Asked. The other window writes down what it has, then hands over.',
  noStore: 'Nothing can be written on this tablet now.',
  noStoreWhat:
    'What is shown is what could be read. Running clocks go on. Write on paper, do not mix for anybody new.',
  noStoreClears: 'Close other windows of this station, free some room on the tablet, then:',
  reload: 'Reload the station',
};
