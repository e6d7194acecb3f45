import { endsIronedWet } from '../../../../seeds/endsIronedWet';
import type { Told } from '../../../../src/screens/diagnosis/told';

/** A tablet on which all is well. */
export const toldWell: Told = {
  atMs: endsIronedWet.startAtMs,
  build: '0.1.0 aaaaaaaa',
  waiting: null,
  mode: 'writing',
  facts: {
    isPersisted: true,
    usedBytes: 12_000_000,
    roomBytes: 600_000_000,
    zone: 'America/St_Johns',
    widthPx: 1280,
    heightPx: 800,
    pixelRatio: 2,
    isOwnApp: true,
    browser: 'a browser',
  },
  examined: { copies: { journal: null, index: null }, aside: [] },
  page: 'kept',
  screen: 'awake',
  sound: 'ready',
  voice: 'off',
  heard: { answer: 'heard', atMs: endsIronedWet.startAtMs },
  lastBackupAtMs: endsIronedWet.startAtMs - 3_600_000,
  jumpsMs: [],
  behindMs: 0,
  notices: {},
};
