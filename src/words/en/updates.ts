/** A newer build of the station, and which one runs. */
export const updates = {
  /** A version and the eight digits of its build, as one name. */
  name: (version: string, digits: string) => (digits === '' ? version : `${version} (${digits})`),
  unnamed: 'one that does not say which',
  offer: (next: string, now: string) => `A newer version is here: ${next}. This tablet runs ${now}.`,
  take: 'Update now',
  taking: 'Updating …',
  later: 'Later',
  inUse: 'Another window of this tablet is in use. Take it to the bar or close it, then tap again.',
  notTaken:
    'The newer version could not be put in place. This one goes on: tap again, or start the tablet anew.',
};
