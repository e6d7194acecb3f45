export const clockDoubt = {
  title: 'Was the tablet’s clock set back?',
  newest: (time: string) => `The newest entry was written ${time}.`,
  now: (time: string) => `The tablet says it is ${time}.`,
  behind: (time: string) => `That is ${time} behind.`,
  why: 'Until this is settled no step can be kept: every clock at the bar counts from these times.',
  yes: 'The tablet is right now',
  yesHint: 'Running clocks move along, so that each has run as long as it has.',
  noHint:
    'Or is the tablet wrong? Then set its clock in the tablet’s own settings: this goes away by itself.',
  stillWrong: 'It still lies behind. More than ten days cannot be moved: set the tablet’s clock.',
  waiting: 'Moving the clocks …',
};
