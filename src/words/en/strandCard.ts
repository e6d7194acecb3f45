import { figures } from './figures';

/** The card a tested strand is taped to. */
export const strandCard = {
  open: 'Print a strand card',
  print: 'Print this card',
  whilePrinting: 'One card of A6. While the tablet’s print window is open nothing calls: close it soon.',
  title: (number: string) => `Strand ${number}`,
  from: 'From',
  developer: 'Developer',
  ratio: 'Ratio',
  minutesOn: 'Really on',
  levels: 'Level at min',
  levelAt: (level: string, minute: string) => `${level}\u00a0at\u00a0${minute}`,
  levelsLeft: (count: string) => `(${count} not shown)`,
  noLevel: 'none read',
  fibre: 'Fibre',
  graded: (grade: string) => `counts as ${grade}`,
  stretch: 'Wet stretch',
  wentPast: `past ${figures.lightPull}`,
  evenness: 'Evenness',
  by: 'Recorded by',
  none: '–',
  tape: 'Tape the tested hair here',
};
