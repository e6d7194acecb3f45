export const clockDoubt = {
  title: 'Was the tablet’s clock set back?',
  newest: (time: string) => `This tablet has already shown ${time}.`,
  now: (time: string) => `Now it says ${time}.`,
  behind: (time: string) => `That is ${time} behind.`,
  rinseFirst: 'Does anybody’s skin burn or itch? Rinse now, settle this after.',
  why: 'Until this is settled no step can be kept: every clock at the bar counts from these times.',
  yes: 'The tablet is right now',
  yesHint: 'Running clocks move along, so that each has run as long as it has.',
  noHint:
    'Or is the tablet wrong? Then set its clock in the tablet’s own settings: this goes away by itself.',
  stillWrong: 'It still lies behind. Tap again, or set the tablet’s own clock.',
  waiting: 'Moving the clocks …',
};
