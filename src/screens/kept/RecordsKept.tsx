import { createMemo, createSignal, Match, Switch } from 'solid-js';
import type { EraseCode } from '../../../shared/records/tombstone';
import { useWords } from '../../parts/useWords';
import type { StationInUse } from '../../station/createStation';
import { listPastKeeping } from '../../station/keeping';
import type { Who } from '../who';
import { EraseThese } from './EraseThese';
import { FindHers } from './FindHers';
import './kept.css';
import { KeptOverview } from './KeptOverview';
import { PickThings } from './PickThings';
import { type KeptThing, listThings } from './viewKept';

type At =
  | { readonly show: 'all' | 'find' }
  | {
      readonly show: 'pick' | 'erase';
      /** Whose; null: whatever is past its time. */
      readonly ticket: string | null;
      readonly things: readonly KeptThing[];
      readonly staying: ReadonlySet<string>;
    };

/** What this tablet keeps of clients who have left, for how long and why; and the erasing of it, by ticket or by time. */
export function RecordsKept(props: {
  readonly station: Pick<StationInUse, 'state' | 'nowMs' | 'erase' | 'finishErasing'>;
  readonly who: Who;
  readonly onDay: () => void;
  readonly onBar: () => void;
}) {
  const words = useWords();
  const [at, setAt] = createSignal<At>({ show: 'all' });
  const [hasErased, setHasErased] = createSignal(false);
  const state = () => props.station.state();
  const past = createMemo(() => listPastKeeping(state(), props.station.nowMs()));
  const chosen = () => {
    const here = at();
    return 'things' in here ? here : null;
  };
  const pick = (ticket: string | null, things: readonly KeptThing[]) => {
    setHasErased(false);
    setAt({ show: 'pick', ticket, things, staying: new Set() });
  };
  /** Nobody erases anything unnamed. */
  const asSomebody = (goOn: () => void) => () => props.who.asSomebody(goOn);

  return (
    <Switch
      fallback={
        <KeptOverview
          state={state()}
          past={past()}
          hasErased={hasErased()}
          onPast={asSomebody(() => pick(null, listThings(past())))}
          onFind={asSomebody(() => setAt({ show: 'find' }))}
          finish={props.station.finishErasing}
          onDay={props.onDay}
          onBar={props.onBar}
        />
      }
    >
      <Match when={at().show === 'find'}>
        <FindHers state={state()} onFound={pick} onBack={() => setAt({ show: 'all' })} />
      </Match>
      <Match when={at().show === 'pick' && chosen()}>
        {(here) => (
          <PickThings
            state={state()}
            title={here().ticket === null ? words.kept.pastTitle : words.kept.pickTitle(here().ticket ?? '')}
            hint={here().ticket === null ? words.kept.pastPickHint : words.kept.pickHint}
            things={here().things}
            staying={here().staying}
            onStaying={(staying) => setAt({ ...here(), staying })}
            onBack={() => setAt({ show: here().ticket === null ? 'all' : 'find' })}
            onGoOn={() => setAt({ ...here(), show: 'erase' })}
          />
        )}
      </Match>
      <Match when={at().show === 'erase' && chosen()}>
        {(here) => (
          <EraseThese
            state={state()}
            nowMs={props.station.nowMs()}
            by={props.who.by()}
            things={here().things.filter(({ id }) => !here().staying.has(id))}
            code={here().ticket === null ? 'keptLongEnough' : null}
            erase={(by: string, ids: readonly string[], code: EraseCode) =>
              props.station.erase(by, { ids, code })
            }
            onBack={() => setAt({ ...here(), show: 'pick' })}
            onDone={() => {
              setHasErased(true);
              setAt({ show: 'all' });
            }}
          />
        )}
      </Match>
    </Switch>
  );
}
