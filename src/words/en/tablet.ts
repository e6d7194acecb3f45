/** What the tablet itself gives, or does not: sound, a voice, a screen that stays awake, a page that opens without the network. */
export const tablet = {
  spokenTrial: 'This is how a chair is called.',
  voice: {
    off: 'No line is spoken. It can be turned on under “The salon”.',
    ready: 'A line is spoken after the pulses.',
    noVoice: 'No line is spoken: this tablet has no voice of its own for this language. The pulses go on.',
    refused: 'No line is spoken: the browser refused. The pulses go on.',
    unavailable: 'No line is spoken: this browser cannot speak. The pulses go on.',
  },
  noLine: 'No line is spoken on this tablet: the pulses call alone.',
  check: {
    offer: 'Try the sound',
    title: 'Can you hear it?',
    ask: 'Stand where you work, with the dryers on. Try the sound, then say if it was heard.',
    heard: 'I heard it',
    notHeard: 'I did not',
    later: 'Not now',
    notHeardNote: 'Not heard: turn it up, try again',
    whatToDo: [
      'Press the volume key at the tablet’s side until it is loud.',
      'Switch silent mode and “do not disturb” off.',
      'Take out what is plugged into it, and switch off what is connected without a wire.',
    ],
    stays: 'A note stays at the bar until it is heard.',
  },
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
  notSounded: 'No sound came: the browser gave none. Try once more.',
  tryHint: 'Nothing heard? Turn the tablet’s own volume up.',
};
