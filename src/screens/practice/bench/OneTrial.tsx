import { createSignal, For, Match, Show, Switch } from 'solid-js';
import type { BenchStage } from '../../../../shared/hair/benchTrial';
import type { RawBenchEvent } from '../../../../shared/records/bench/classify';
import { curlReadForm, type PiecesAnswer, piecesReadForm } from '../../../../shared/records/forms/bench';
import type { Result } from '../../../../shared/result';
import { formatCountdown } from '../../../../shared/units/format';
import { BigButton } from '../../../parts/BigButton';
import { Caution } from '../../../parts/Caution';
import '../../../parts/clock.css';
import '../../layout.css';
import { Facts } from '../../../parts/Facts';
import { PlainPage } from '../../../parts/PlainPage';
import { Refusal } from '../../../parts/Refusal';
import { useWords } from '../../../parts/useWords';
import type { SubmitRefusal } from '../../../station/submitRefusal';
import { Tile, Tiles } from '../../Tiles';
import './bench.css';
import { type BenchRow, sayHairOf, saySeen, sayWhen } from './viewBench';

const tones: Readonly<Record<BenchStage, 'running' | 'look' | 'over' | 'ended'>> = {
  boiling: 'running',
  drying: 'running',
  cooling: 'running',
  boiled: 'over',
  readable: 'look',
  late: 'over',
  read: 'ended',
};

type Pulled = PiecesAnswer['dryPiece'];

/** One trial: what is to be done now with its countdown, what is looked at, who did what; taken back by name. */
export function OneTrial(props: {
  readonly row: BenchRow;
  readonly nowMs: number;
  readonly change: (raw: RawBenchEvent) => Promise<Result<void, SubmitRefusal>>;
  readonly onTakeBack: () => void;
  readonly onBack: () => void;
}) {
  const words = useWords();
  const said = () => words.bench;
  const trial = () => props.row.trial;
  const [refusal, setRefusal] = createSignal<SubmitRefusal | null>(null);
  const [dryPiece, setDryPiece] = createSignal<Pulled | null>(null);
  const [wetPiece, setWetPiece] = createSignal<Pulled | null>(null);
  const send = async (type: RawBenchEvent['type'], answers: RawBenchEvent['answers'] = {}) => {
    const taken = await props.change({ type, answers });
    setRefusal(taken.ok ? null : taken.error);
  };
  const isReadable = () => props.row.stage === 'readable' || props.row.stage === 'late';
  const isWaiting = () => ['boiling', 'drying', 'cooling'].includes(props.row.stage);
  const when = words.moments.dayAndTime;
  const facts = (): readonly (readonly [string, string])[] => {
    const { startedAtMs, startedBy, hair, outAtMs, outBy, reading, readingsTakenBack } = trial();
    const { facts: named } = said();
    return [
      [named.started, said().by(when(startedAtMs), startedBy)],
      [named.hair, sayHairOf(hair, words)],
      ...(outAtMs === null ? [] : [[named.out, said().by(when(outAtMs), outBy ?? '')] as const]),
      ...(reading === null
        ? []
        : [[named.seen, said().seen(saySeen(trial(), words), when(reading.atMs), reading.by)] as const]),
      ...readingsTakenBack.map(
        (back) => [named.takenBack, said().takenBackBy(when(back.atMs), back.by, back.words)] as const,
      ),
    ];
  };
  const renderPulled = (question: 'dryPiece' | 'wetPiece') => {
    const [chosen, choose] = question === 'dryPiece' ? [dryPiece, setDryPiece] : [wetPiece, setWetPiece];
    return (
      <div class="column">
        <p class="bench-ask" aria-hidden="true">
          {said()[question]}
        </p>
        <Tiles question={question} label={said()[question]} size="plain">
          <For each={piecesReadForm[question].options}>
            {(each) => (
              <Tile option={each} isPressed={chosen() === each} isLooked onPress={() => choose(each)}>
                {said().pulled[each]}
              </Tile>
            )}
          </For>
        </Tiles>
      </div>
    );
  };
  return (
    <PlainPage
      step="bench"
      kicker={said().kicker}
      title={said().kinds[trial().kind]}
      actions={
        <>
          <BigButton act="back-to-list" isWay onPress={props.onBack}>
            {words.general.back}
          </BigButton>
          <BigButton act="take-back" onPress={props.onTakeBack}>
            {said().takeBack}
          </BigButton>
          <Switch>
            <Match when={props.row.stage === 'boiled'}>
              <BigButton kind="primary" act="taken-out" onPress={() => void send('BENCH_TAKEN_OUT')}>
                {said().takeOut}
              </BigButton>
            </Match>
            <Match when={isReadable() && trial().kind === 'dryWet'}>
              <BigButton
                kind="primary"
                act="keep-pieces"
                isDisabled={dryPiece() === null || wetPiece() === null}
                onPress={() => void send('BENCH_PIECES_READ', { dryPiece: dryPiece(), wetPiece: wetPiece() })}
              >
                {said().keep}
              </BigButton>
            </Match>
          </Switch>
        </>
      }
    >
      <section
        class="clock-face bench-clock"
        data-stage={props.row.stage}
        data-tone={tones[props.row.stage]}
        role="status"
      >
        <p class="clock-name">
          <strong>{said().stages[props.row.stage]}</strong> {sayWhen(props.row, words)}
        </p>
        <Show when={isWaiting()}>
          <div class="clock-digits" aria-hidden="true">
            {formatCountdown((props.row.dueAtMs ?? 0) - props.nowMs)}
          </div>
        </Show>
      </section>
      <Show when={props.row.stage === 'boiling' || props.row.stage === 'boiled'}>
        <Caution>{said().besideIt}</Caution>
      </Show>
      <Show when={isReadable()}>
        <p class="lead">{said().lookNow[trial().kind]}</p>
        <Show
          when={trial().kind === 'boilSet'}
          fallback={
            <div class="columns">
              {renderPulled('dryPiece')}
              {renderPulled('wetPiece')}
            </div>
          }
        >
          <Tiles question="curl" label={said().lookNow.boilSet} size="large">
            <For each={curlReadForm.curl.options}>
              {(each) => (
                <Tile option={each} isLooked onPress={() => void send('BENCH_CURL_READ', { curl: each })}>
                  {said().curl[each]}
                </Tile>
              )}
            </For>
          </Tiles>
        </Show>
      </Show>
      <Facts class="skin-test-facts" facts={facts()} />
      <Show when={props.row.stage === 'read'}>
        <p>{said().tells[trial().kind]}</p>
      </Show>
      <Refusal refusal={refusal()} />
    </PlainPage>
  );
}
