import { createMemo, createSignal, Show } from 'solid-js';
import { BY_MAX_LENGTH } from '../../../shared/records/event';
import type { Form } from '../../../shared/records/form';
import { readForm } from '../../../shared/records/readForm';
import { type EraseCode, eraseCodes } from '../../../shared/records/tombstone';
import type { Result } from '../../../shared/result';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { createDraft } from '../../parts/form/draft';
import { Sheet } from '../../parts/form/Sheet';
import { HoldButton } from '../../parts/HoldButton';
import { PlainPage } from '../../parts/PlainPage';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import type { StationState } from '../../station/stationState';
import type { SubmitRefusal } from '../../station/submitRefusal';
import { makeReading } from '../ask/readContext';
import { isReadLater, type KeptThing, protectsHer, sayThings } from './viewKept';

const by = { kind: 'text', maxLength: BY_MAX_LENGTH } as const;
const code = { kind: 'choice', options: eraseCodes } as const;

/** By whom and why; then what goes, what stays and what it takes away, and the hold. */
export function EraseThese(props: {
  readonly state: StationState;
  readonly nowMs: number;
  readonly by: string;
  readonly things: readonly KeptThing[];
  /** Why, where that is plain; null: asked. */
  readonly code: EraseCode | null;
  readonly erase: (
    by: string,
    ids: readonly string[],
    code: EraseCode,
  ) => Promise<Result<void, SubmitRefusal>>;
  readonly onBack: () => void;
  readonly onDone: () => void;
}) {
  const words = useWords();
  const said = () => words.kept;
  const settings = () => props.state.settings.settings;
  const write = (count: number) => formatQuantity(count, 'count', settings().units, words.locale);
  const form: Form = props.code === null ? { by, code } : { by };
  const draft = createDraft({ by: props.by });
  const [refusal, setRefusal] = createSignal<SubmitRefusal | null>(null);
  const [hasTried, setHasTried] = createSignal(false);
  const read = createMemo(() => readForm(form, draft.raw(), makeReading(settings(), props.nowMs)));
  const refusals = () => {
    const answers = read();
    return hasTried() && !answers.ok ? answers.error : [];
  };
  const hasStop = createMemo(() => props.things.some((thing) => protectsHer(thing, props.state)));
  const erase = async () => {
    setHasTried(true);
    const answers = read();
    if (!answers.ok) return;
    const given = answers.value as { readonly by: string; readonly code?: EraseCode };
    const why = given.code ?? props.code;
    if (why === null) return;
    const erased = await props.erase(
      given.by,
      props.things.map(({ id }) => id),
      why,
    );
    // Erased it is, also where a copy is still to be written anew: the page before says so, and how it goes on.
    if (erased.ok || erased.error.kind === 'eraseUnfinished') props.onDone();
    else setRefusal(erased.error);
  };
  return (
    <PlainPage
      step="kept"
      kicker={said().title}
      title={said().eraseTitle}
      actions={
        <BigButton act="kept-back" isWay onPress={props.onBack}>
          {words.general.back}
        </BigButton>
      }
    >
      <Sheet
        form={form}
        words={said().form}
        draft={draft}
        onChange={() => setRefusal(null)}
        refusals={refusals()}
        units={settings().units}
        hasAgeLine={false}
        nowMs={props.nowMs}
        picks={{ by: settings().staff }}
        summary={said().eraseTitle}
      >
        <div class="kept-summary">
          <Show when={hasStop()}>
            <Caution kind="stop">
              <p>{said().stopGoes}</p>
            </Caution>
          </Show>
          <p class="lead">{said().goesNow(sayThings(props.things, words, write))}</p>
          <div class="kept-hold">
            <p>
              {said().staysAfter}{' '}
              <Show when={isReadLater(props.things, props.state)}>{said().laterReads} </Show>
              {said().elsewhere}
            </p>
            <HoldButton
              label={said().hold(write(props.things.length))}
              act="erase-for-good"
              onHeld={() => void erase()}
            />
          </div>
        </div>
      </Sheet>
      <Refusal refusal={refusal()} />
    </PlainPage>
  );
}
