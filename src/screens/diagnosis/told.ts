import type { Examined } from '../../station/examining';
import type { Notice } from '../../station/notice';
import type { StationState } from '../../station/stationState';
import type { TabletInUse } from '../../tablet/createTablet';
import type { UpdatesInUse } from '../../tablet/createUpdates';
import type { TabletFacts } from '../../tablet/tabletFacts';

/** All that the diagnosis goes by. Nothing of a client, of what is on the shelf or of who works here is among it. */
export interface Told {
  readonly atMs: number;
  /** Empty where the page is being worked on. */
  readonly build: string;
  /** null: none waits. */
  readonly waiting: string | null;
  readonly mode: StationState['mode'];
  readonly facts: TabletFacts;
  /** null: another window knows. */
  readonly examined: Examined | null;
  readonly page: ReturnType<TabletInUse['page']> | null;
  readonly screen: ReturnType<TabletInUse['screen']> | null;
  readonly sound: ReturnType<TabletInUse['sound']> | null;
  readonly voice: ReturnType<TabletInUse['voice']> | null;
  readonly heard: { readonly answer: 'heard' | 'notHeard' | 'later'; readonly atMs: number } | null;
  readonly lastBackupAtMs: number | null;
  /** Jumps of the clock that nobody has explained: by how much, ms. */
  readonly jumpsMs: readonly number[];
  /** So far behind what it once showed, ms; 0 where it is not. */
  readonly behindMs: number;
  /** So many notices of each kind stand. */
  readonly notices: Readonly<Partial<Record<Notice['kind'], number>>>;
}

/** What is asked of this tablet and station, put together; from the station its counts and kinds alone. */
export function gatherTold(
  of: Pick<Told, 'atMs' | 'facts' | 'examined' | 'lastBackupAtMs' | 'behindMs'> & {
    readonly state: Pick<StationState, 'mode' | 'notices'>;
    readonly tablet: TabletInUse | undefined;
    readonly updates: Pick<UpdatesInUse, 'build' | 'waiting'> | undefined;
    readonly jumps: readonly { readonly aheadMs: number }[];
  },
): Told {
  const { state, tablet, updates, jumps, ...told } = of;
  const notices: Partial<Record<Notice['kind'], number>> = {};
  for (const { kind } of state.notices) notices[kind] = (notices[kind] ?? 0) + 1;
  return {
    ...told,
    build: updates?.build ?? '',
    waiting: updates?.waiting() ?? null,
    mode: state.mode,
    page: tablet?.page() ?? null,
    screen: tablet?.screen() ?? null,
    sound: tablet?.sound() ?? null,
    voice: tablet?.voice() ?? null,
    heard: tablet?.soundCheck() ?? null,
    jumpsMs: jumps.map(({ aheadMs }) => aheadMs),
    notices,
  };
}
