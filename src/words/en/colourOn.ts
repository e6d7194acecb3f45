export const colourOn = {
  title: 'Colour on',
  stingingAsk: 'Any stinging or burning?',
  askAloud: 'Ask it aloud at every look. Stinging or burning: rinse at once.',
  no: 'No, nothing',
  yes: 'Yes',
  rinsed: (zone: string) => `Rinsed: ${zone}`,
  look: (zone: string) => `Look: ${zone}`,
  mixedAt: (time: string) => `weighed ${time}`,
  lookedTimes: (count: string) => `looks so far: ${count}`,
  moreTime: 'More time',
  caution: 'No dryer or lamp on lightener unless the maker says so. Stinging: rinse at once.',
};
