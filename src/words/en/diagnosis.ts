import { sayCount } from './sayCount';

/** Line by line how tablet and station are, and what to do about it. */
export const diagnosis = {
  title: 'Diagnosis',
  tile: 'Is this tablet in order?',
  reading: 'Looking …',
  allWell: 'All is in order.',
  toSee: (count: string) => `${sayCount(count, 'thing')} to see to.`,
  good: 'In order',
  look: 'See to it',
  again: 'Look again',
  topics: {
    build: 'Version',
    page: 'Without the network',
    copies: 'Two copies',
    aside: 'Set aside',
    kept: 'Keeping',
    room: 'Room',
    backup: 'Last backup',
    clock: 'Clock',
    screen: 'Screen',
    sound: 'Sound',
    glass: 'Window',
  },
  build: {
    runs: (build: string) => `${build} runs.`,
    worked: 'A version that is being worked on.',
    waits: (build: string, next: string) => `${build} runs, ${next} waits.`,
    toTake: 'It is offered at the bar once nobody sits there and no clock runs.',
  },
  page: {
    toKeep: 'Serve it by https or from this machine, in an ordinary window of the browser, and open it anew.',
    asking: 'Not known yet.',
  },
  copies: {
    good: 'Both copies of what is kept answer.',
    watching: 'Another window writes and knows.',
    /** Of one copy, by its name in the notices, and what it does not do. */
    bad: (copy: string, why: string) => `Only one copy is written: ${copy} ${why}.`,
    none: 'Neither copy answers: nothing can be kept.',
    todo: 'Save the station to a file now, close other windows, start the tablet anew and look here again.',
    full: 'Free some room on the tablet, then start it anew and look here again.',
  },
  aside: {
    none: 'Nothing was set aside.',
    some: (count: string) => `${sayCount(count, 'log')} could not be read and was kept aside, untouched.`,
    todo: 'Save the support file and show it to whoever looks after the station. Delete nothing.',
  },
  kept: {
    yes: 'The browser keeps what is stored, also when the tablet runs full.',
    no: 'The browser may delete everything when the tablet runs full.',
    unknown: 'The browser does not say whether it keeps what is stored.',
    todo: 'Install the station (browser menu, “Install” or “Add to home screen”) and open it from its icon.',
  },
  room: {
    taken: (used: string, all: string) => `${used} of ${all} the browser gives are taken.`,
    unknown: 'The browser does not say how much room there is.',
    todo: 'Remove what else lies on this tablet, and save a backup before.',
    bytes: (figure: string) => `${figure} MB`,
  },
  backup: {
    at: (when: string) => `Handed out ${when}.`,
    never: 'None was saved from this tablet.',
    todo: 'Save one under “Backup and move”, to somewhere else than this tablet.',
  },
  clock: {
    good: (zone: string) => `Nothing speaks against it. Time zone: ${zone}.`,
    jumped: 'It jumped, and nobody has said why.',
    back: 'It shows less than it did before.',
    todo: 'Let the tablet set date and time by the network, then answer what the station asks at the bar.',
  },
  screen: {
    dark: 'The screen may go dark.',
    todo: {
      refused: 'Plug the tablet in, or set it to stay on.',
      unavailable: 'Set the tablet to stay on.',
    },
  },
  sound: {
    heard: 'It was heard when it was last tried.',
    notHeard: 'It was not heard when it was last tried.',
    untried: 'Nobody has said yet that it was heard.',
    todo: 'Try the sound under “This tablet”, with the dryers on.',
  },
  glass: {
    size: (width: string, height: string) => `${width} × ${height} points.`,
    asApp: 'Opened as an app of its own.',
    inBrowser: 'Opened in a browser window.',
    small: 'Less than the station is drawn for: some pages scroll.',
    todo: 'Use a tablet of 10 inches or more, or set the display size smaller.',
  },
  support: {
    save: 'Save support file',
    hint: 'How this tablet is, in one file to send: no client, no ticket, no name.',
  },
};
