import { defaultSettings, type Settings } from '../shared/records/settings';

/** An invented salon: staff, shelf and altitude are made up for this project. */
export const salon: Settings = {
  ...defaultSettings,
  altitudeM: 180,
  staff: ['Opal', 'Juno', 'Wren'],
  shelf: [
    { name: 'Sandbar powder', kind: 'lightener' },
    { name: 'Sandbar cream', kind: 'colour' },
    { name: 'Cove mist', kind: 'spray' },
  ],
};
