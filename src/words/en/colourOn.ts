export const colourOn = {
  title: 'Colour on',
  stingingAsk: 'Any stinging or burning?',
  askAloud: 'Ask it aloud at every look. Stinging or burning: rinse at once.',
  no: 'No, nothing',
  yes: 'Yes',
  rinsed: (zone: string) => `Rinsed: ${zone}`,
  rinsedEarly: (zone: string) => `Rinsed early: ${zone}`,
  look: (zone: string) => `Look: ${zone}`,
  mixedAt: (time: string) => `Weighed ${time}`,
  onSince: (time: string) => `on since ${time}`,
  lookedTimes: (count: string) => `Looks so far: ${count}`,
  moreTime: 'More time',
};
