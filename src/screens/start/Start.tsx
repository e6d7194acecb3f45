import { createMemo, createSignal, Show } from 'solid-js';
import { type FieldRefusal, type RawForm, readForm } from '../../../shared/records/readForm';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import type { Result } from '../../../shared/result';
import { formatQuantity } from '../../../shared/units/format';
import { BigButton } from '../../parts/BigButton';
import { Caution } from '../../parts/Caution';
import { createDraft, listMistakes } from '../../parts/form/draft';
import { FormFields } from '../../parts/form/FormFields';
import { PageActions } from '../../parts/PageActions';
import { Refusal } from '../../parts/Refusal';
import { useWords } from '../../parts/useWords';
import type { StationState } from '../../station/stationState';
import type { SubmitRefusal } from '../../station/submitRefusal';
import { makeReading } from '../ask/readContext';
import { showFirstRefused } from '../showFirstRefused';
import { ChairField, type ChairRefusal } from './ChairField';
import './start.css';
import { findSameTicket, findStartForm, listSeats } from './startView';

/** Whose consultation is it, and at which chair? A ticket that is open already is said before a second one starts. */
export function Start(props: {
  readonly settings: Settings;
  readonly nowMs: number;
  readonly clients: StationState['open'];
  readonly chair: string | null;
  readonly open: (answers: RawForm) => Promise<Result<string, SubmitRefusal>>;
  readonly onOpened: (id: string) => void;
  readonly onBar: () => void;
}) {
  const words = useWords();
  const draft = createDraft(props.chair === null ? {} : { chair: props.chair });
  const [isTried, setIsTried] = createSignal(false);
  const [refusal, setRefusal] = createSignal<SubmitRefusal | null>(null);
  const write = (count: number) => formatQuantity(count, 'count', props.settings.units, words.locale);
  const form = () => findStartForm(props.settings.chairs);
  const seats = createMemo(() => listSeats(props.clients, props.settings.chairs));
  const same = createMemo(() => findSameTicket(props.clients, draft.raw().ticket));
  const refusals = (): readonly FieldRefusal[] => {
    const reading = makeReading(props.settings, props.nowMs);
    if (!isTried()) return listMistakes(form(), draft.raw(), reading);
    const read = readForm(form(), draft.raw(), reading);
    return read.ok ? [] : read.error;
  };
  const chair = () => String(draft.raw().chair ?? '');
  const taken = () => seats().find((seat) => write(seat.chair) === chair().trim() && seat.ticket !== null);
  const refuseChair = (): ChairRefusal | null => {
    const { start } = words;
    const chairs = write(seats().length);
    const wrong = refusals().find(({ path }) => path === 'chair');
    if (wrong !== undefined) {
      const isEmpty = chair().trim() === '';
      return { code: wrong.code, says: isEmpty ? start.chooseChair(chairs) : start.noSuchChair(chairs) };
    }
    const whose = taken()?.ticket ?? null;
    return whose === null ? null : { code: 'taken', says: start.taken(whose, chair().trim()) };
  };
  const sayWhere = ({ parked, chair: at }: ConsultationRecord) =>
    parked === null
      ? words.start.isOpenAt(write(at))
      : words.start.isParked(words.moments.dayAndTime(parked.untilAtMs));
  const chooseChair = (text: string) => {
    draft.set('chair', text);
    setRefusal(null);
  };

  async function go(): Promise<void> {
    setIsTried(true);
    if (refusals().length > 0 || taken() !== undefined) {
      showFirstRefused();
      return;
    }
    const opened = await props.open(draft.raw());
    if (opened.ok) props.onOpened(opened.value);
    else setRefusal(opened.error);
  }

  return (
    <main class="start-page">
      <h1>{words.start.title}</h1>
      <div class="start-content">
        <FormFields
          form={{ ticket: form().ticket }}
          words={words.start.form}
          draft={draft}
          onChange={() => setRefusal(null)}
          refusals={refusals()}
          units={props.settings.units}
          hasAgeLine={false}
          nowMs={props.nowMs}
        />
        <Show when={same()}>
          {(found) => (
            <Caution>
              <p data-same-ticket={found().id}>
                <strong>{sayWhere(found().record)}</strong> {words.start.sameTicket}
              </p>
            </Caution>
          )}
        </Show>
        <div class="form">
          <ChairField
            seats={seats()}
            write={write}
            value={chair()}
            refusal={refuseChair()}
            onChange={chooseChair}
          />
        </div>
        <Show when={seats().every(({ ticket }) => ticket !== null)}>
          <Caution>
            <p>{words.start.noFreeChair}</p>
          </Caution>
        </Show>
        <Refusal refusal={refusal()} />
      </div>
      <PageActions>
        <BigButton act="cancel" isWay onPress={() => props.onBar()}>
          {words.general.cancel}
        </BigButton>
        <Show
          when={same()}
          fallback={
            <BigButton kind="primary" act="open" onPress={() => void go()}>
              {words.start.go}
            </BigButton>
          }
        >
          {(found) => (
            <>
              <BigButton act="open-anyway" onPress={() => void go()}>
                {words.start.goAnyway}
              </BigButton>
              <BigButton kind="primary" act="go-there" onPress={() => props.onOpened(found().id)}>
                {words.start.goThere}
              </BigButton>
            </>
          )}
        </Show>
      </PageActions>
    </main>
  );
}
