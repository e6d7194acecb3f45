/** A tablet that nobody has touched for a while. */
export const cover = {
  warning: 'Is somebody here?',
  warningHint:
    'Nobody has touched this tablet. What clients told is about to be covered; a tap anywhere keeps it open.',
  left: (seconds: string) => `${seconds} left.`,
  stay: 'Keep it open',
  title: 'Covered',
  hint: 'A tap goes back to where it was, a chair to whoever sits there.',
  goOn: 'Go on',
  chair: (chair: string) => `Chair ${chair}`,
  free: (chair: string) => `${chair} · free`,
  noClock: 'no clock runs',
};
