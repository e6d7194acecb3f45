/** What the tablet itself gives, or does not: sound, a screen that stays awake, a page that opens without the network. */
export const alarm = {
  silence: 'Silence',
  sound: {
    asleep: 'No sound yet: touch the screen once.',
    unavailable: 'No sound: this browser gives none. Keep the bar in sight.',
  },
  screen: {
    refused: 'The screen may go dark: plug the tablet in, or set it to stay on.',
    unavailable: 'The screen may go dark: set the tablet to stay on.',
  },
  page: {
    kept: 'Without the network the station opens as ever.',
    refused: 'Without the network this page would not open again.',
  },
  title: 'This tablet',
  soundAndScreen: 'Sound and screen',
  isReady: 'The sound is on. It calls until somebody taps.',
  screenIsAwake: 'The screen stays on while the station is in sight.',
  screenRests: 'The screen is kept on from the first touch.',
  tryOut: 'Try the sound',
  tryHint: 'Nothing heard? Turn the tablet’s own volume up.',
};
