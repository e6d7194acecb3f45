/** The invented salon: offered by an empty station, marked wherever it is shown. */
export const demo = {
  offer: 'Look around with an invented salon',
  offerHint: 'Nobody in it is real. It goes with one hold and leaves nothing.',
  loading: 'Setting up the invented salon …',
  failed: 'The invented salon could not be set up. Nothing of it is left.',
  mark: 'DEMO',
  ribbon: 'Invented salon. Start no real client here.',
  leave: 'Leave the demo',
  leaveTitle: 'Leave the invented salon?',
  leaveWhat: 'Everything in it goes, also what you tried. The station is then as empty as it was before.',
  remove: 'Remove the demo',
  removing: 'Removing …',
  notRemoved: 'The invented salon could not be removed: it is still here. Hold once more.',
  windowTitle: (title: string) => `DEMO · ${title}`,
  title: 'Strandproof',
};
