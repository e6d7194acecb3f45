import type { StretchRefusal, StretchVerdict } from '../../../shared/hair/stretch';
import type { GlassRefusal } from '../../../shared/units/card';
import { figures } from './figures';
import { stretchTaps } from './forms/stretch';

const verdicts: Readonly<Record<StretchVerdict, string>> = {
  sound: 'It springs back.',
  slow: 'Slow: it stays long.',
  gummy: `Past ${figures.lightPull} on a light pull: gummy.`,
  broken: 'It snapped.',
};

const faults: Readonly<Record<StretchRefusal, string>> = {
  notFinite: 'One of the readings is no number. Go back and read it again.',
  notALength: 'Nothing is no length. Read it again.',
  shorterThanRest: 'That is shorter than at rest. Read it again, or go back to the rest.',
  notPulled: 'That is as long as at rest. Pull lightly, to the first mark.',
};

/** It sprang back, and that says nothing here. */
const withheld = {
  tooLight: {
    title: 'Too light a pull to tell.',
    hint: `It came back from less than ${figures.lightPullFrom}: any hair does. Measure again, or answer by feel.`,
  },
  tooShort: {
    title: 'Too short to tell.',
    hint: `At rest it is shorter than ${figures.shortestRest}: a millimetre more or less decides. Measure a longer piece, or answer by feel.`,
  },
} as const;

/** What lies between the lines is no card: it would make this glass so large across its corners. */
const noCard: Readonly<Record<GlassRefusal, (glass: string) => string>> = {
  notANumber: () => 'The lines lie nowhere. Move them along the edges of the card.',
  tooNarrow: (glass) => `No card is so narrow: this glass would be ${glass} corner to corner.`,
  tooWide: (glass) => `No card is so wide: this glass would be only ${glass} corner to corner.`,
};

/** The ruler on the glass: laying a card on it once, and a wet strand along it. */
export const ruler = {
  measure: 'Measure it',
  measured: (percent: string | null) => `Measured: ${percent ?? 'it snapped'}`,
  title: 'Measure the wet stretch',
  steps: {
    rest: {
      ask: 'How long is it at rest?',
      how: 'Pull the curl straight first. Hold the wet strand at 0, just above the glass, and tap where it ends.',
      next: 'Next: pull',
    },
    pulled: {
      ask: `Pull lightly: ${figures.lightPullFrom} to ${figures.lightPull}, never more`,
      how: 'Into the coloured band, no further. Tap how far it went, wherever that was.',
      next: 'Next: let go',
    },
    back: {
      ask: 'Let go: where did it come back to?',
      how: 'Let go and tap at once where it ends. Does it go on creeping back? Then it is slow, whatever the ruler says.',
      next: 'What it says',
    },
  },
  less: '− 1 mm',
  oneMore: '+ 1 mm',
  further: (percent: string) => `${percent}: a little further, to the first mark.`,
  enough: (percent: string) => `${percent}: enough. Let go.`,
  past: (percent: string) => `${percent}: past ${figures.lightPull}. No further: let go. It is kept as seen.`,
  slip: (percent: string) => `${percent}: wet hair hardly goes so far. Read it again.`,
  offGlass: `${figures.lightPull} lies beyond this glass: take a shorter piece, or type what another ruler says.`,
  snapped: 'It snapped',
  verdicts,
  stretched: (percent: string) => `Stretched ${percent}.`,
  gaveBack: (percent: string, off: string) => `Gave back ${percent} of that, give or take ${off}.`,
  readings: (rest: string, pulled: string | null, back: string | null) =>
    [`At rest ${rest}`, pulled === null ? [] : `pulled to ${pulled}`, back === null ? [] : `back to ${back}`]
      .flat()
      .join(', '),
  fills: 'Fills in:',
  confirm: 'Once filled in, another answer can still be tapped. What you felt comes first.',
  pastIs: (answer: string) => `past ${figures.lightPull}: ${answer}`,
  fill: 'Fill it in',
  withheld,
  short: `Shorter than ${figures.shortestRest}: too short to tell that it springs back. Take a longer piece.`,
  anew: 'Measure again?',
  anewHint: `Wet hair broke at ${figures.meanBreak} on average. Past ${figures.slipFrom} it is most likely a slip of the ruler, so nothing is filled in.`,
  itWasSo: 'It went so far',
  again: 'Measure again',
  faults,
  setAgain: 'Set the ruler again',
  without: 'Go on without it',
  unit: 'mm',
  notRead: 'not read yet',
  markFrom: figures.lightPullFrom,
  markTo: figures.lightPull,
  set: {
    title: 'Set the ruler of this tablet',
    page: 'Ruler',
    notSet: `Not set on this tablet yet. Once is enough. “${stretchTaps.springsBack}”, “${stretchTaps.staysLong}” and “${stretchTaps.snaps}” are tapped without it.`,
    isSet: 'Set for this tablet.',
    open: 'Set the ruler',
    lay: 'Lay a bank or identity card flat into the thick corner, its long side across.',
    move: 'Move the two copper lines until they lie along its other edges.',
    keepHint: 'Take the card away and press “It fits”.',
    card: 'the card',
    lines: 'The two lines',
    linesAt: (px: string) => `${px} px wide`,
    muchLess: '− 10',
    less: '− 1',
    more: '+ 1',
    muchMore: '+ 10',
    faults: noCard,
    keep: 'It fits: keep it',
    kept: (perMm: string) => `Set: ${perMm} px are a millimetre here. Zooming is reckoned with.`,
  },
};
