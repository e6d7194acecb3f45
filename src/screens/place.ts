import { type Accessor, createSignal } from 'solid-js';
import type { Consultation } from '../../machines/consultation/consultation';
import type { ClosedRecord } from '../../shared/records/closedRecord';
import type { StationState } from '../station/stationState';
import { isUnderWay } from './urgent';
import type { Who } from './who';

/** Where this tablet is. In memory only: no address shows a client, and every start begins at the bar. */
type Place =
  | {
      readonly at:
        | 'bar'
        | 'day'
        | 'skinTests'
        | 'kept'
        | 'taught'
        | 'press'
        | 'bench'
        | 'settings'
        | 'lessons'
        | 'trainer';
    }
  | { readonly at: 'debrief'; readonly id: string }
  | { readonly at: 'start'; readonly chair: number | null }
  | { readonly at: 'consultation'; readonly id: string };

/** The place, what stands there, and the ways to another one. */
export interface PlaceOfTablet {
  readonly at: Accessor<Place['at']>;
  /** The client in view, while she is open. */
  readonly here: Accessor<Consultation | undefined>;
  /** The client in view has just been closed: that is said, and the bar is shown. */
  readonly endedHere: Accessor<ClosedRecord | undefined>;
  /** The sitting whose debrief is read: also that of the client in view, once she is closed. */
  readonly debriefOf: Accessor<string | undefined>;
  /** The free place that was tapped. */
  readonly chair: Accessor<number | null>;
  /** What is in view is kept behind the PIN, where there is one. */
  readonly isGuarded: Accessor<boolean>;
  readonly toBar: () => void;
  readonly toDay: () => void;
  readonly toSkinTests: () => void;
  readonly toKept: () => void;
  readonly toTaught: () => void;
  readonly toPress: () => void;
  readonly toBench: () => void;
  readonly toLessons: () => void;
  readonly toTrainer: () => void;
  readonly toDebrief: (id: string) => void;
  readonly toSettings: () => void;
  readonly toStart: (chair: number | null) => void;
  readonly toClient: (id: string) => void;
}

/** Where is this tablet? Nobody starts, sets or opens anything unnamed; what is under way opens at once. */
export function createPlace(
  state: Accessor<StationState>,
  who: Who,
  /** Somebody goes to her. */
  onClient: (id: string) => void,
  begin: 'bar' | 'lessons' = 'bar',
  /** Begins what the PIN guards. */
  pass: (goOn: () => void) => void = (goOn) => goOn(),
): PlaceOfTablet {
  const [place, setPlace] = createSignal<Place>({ at: begin });
  const go = (next: Place) => () => setPlace(next);
  const idHere = () => {
    const now = place();
    return now.at === 'consultation' ? now.id : undefined;
  };
  return {
    at: () => place().at,
    here: () => state().open.get(idHere() ?? ''),
    endedHere: () => state().closed.find(({ id }) => id === idHere()),
    debriefOf: () => {
      const now = place();
      return now.at === 'debrief' ? now.id : state().closed.find(({ id }) => id === idHere())?.id;
    },
    chair: () => {
      const now = place();
      return now.at === 'start' ? now.chair : null;
    },
    isGuarded: () => ['settings', 'kept', 'taught', 'trainer'].includes(place().at),
    toBar: go({ at: 'bar' }),
    toDay: go({ at: 'day' }),
    toSkinTests: go({ at: 'skinTests' }),
    toKept: () => pass(go({ at: 'kept' })),
    toTaught: () => pass(go({ at: 'taught' })),
    toPress: go({ at: 'press' }),
    toBench: go({ at: 'bench' }),
    toLessons: go({ at: 'lessons' }),
    toTrainer: () => pass(go({ at: 'trainer' })),
    toDebrief: (id) => setPlace({ at: 'debrief', id }),
    toSettings: () => who.asSomebody(() => pass(go({ at: 'settings' }))),
    toStart: (chair) => who.asSomebody(go({ at: 'start', chair })),
    toClient: (id) => {
      const consultation = state().open.get(id);
      const open = () => {
        onClient(id);
        setPlace({ at: 'consultation', id });
      };
      if (consultation !== undefined && isUnderWay(consultation)) open();
      else who.asSomebody(open);
    },
  };
}
