import { createSignal, For, Show } from 'solid-js';
import { formatQuantity } from '../../../shared/units/format';
import type { UnitSettings } from '../../../shared/units/quantity';
import { BigButton } from '../../parts/BigButton';
import { useWords } from '../../parts/useWords';
import './chooseDays.css';
import { ASSUMED_MOST_DAYS, countDays, type DayRange, findNoon, judgeRange, stepBack } from './dayRange';

const ends = ['from', 'day'] as const;

/**
 * From which day to which? A day at a time with a finger, or typed. What cannot be shown is said, and stays as it was chosen.
 * Checked in tests/src/screens/day/dayRange.test.tsx.
 */
export function ChooseDays(props: {
  readonly shown: DayRange;
  readonly today: string;
  /** On which day the first record here closed; null where none did. */
  readonly firstDay: string | null;
  readonly units: UnitSettings;
  readonly onShow: (range: DayRange) => void;
}) {
  const words = useWords();
  const said = () => words.day.choose;
  const [range, setRange] = createSignal<DayRange>({ from: props.shown.from, day: props.shown.day });
  const write = (count: number) => formatQuantity(count, 'count', props.units, words.locale);
  const refusal = () => judgeRange(range(), props.today);
  const sayDay = (day: string) =>
    Number.isNaN(findNoon(day)) ? said().noDay : words.moments.shortDay(findNoon(day));
  const sayRefusal = () => {
    const why = refusal();
    if (why === 'tooMany') return said().refused.tooMany(write(countDays(range())), write(ASSUMED_MOST_DAYS));
    return why === null ? null : said().refused[why];
  };
  /** Days without a record are days too: said, and shown all the same. */
  const sayBefore = () => {
    if (props.firstDay === null) return said().nothingYet;
    return range().day < props.firstDay ? said().beforeAll(sayDay(props.firstDay)) : null;
  };
  const set = (end: keyof DayRange, day: string) => setRange({ ...range(), [end]: day });
  const show = () => refusal() === null && props.onShow(range());
  return (
    <form
      class="choose-days"
      onSubmit={(event) => {
        event.preventDefault();
        show();
      }}
    >
      <div class="choose-ends">
        <For each={ends}>
          {(end) => (
            <section data-end={end} aria-label={said().ends[end]}>
              <p class="choose-end">
                <strong> {said().ends[end]}</strong> {sayDay(range()[end])}
              </p>
              <input
                type="date"
                aria-label={said().ends[end]}
                aria-describedby="choose-said"
                max={props.today}
                value={range()[end]}
                onInput={(event) => set(end, event.currentTarget.value)}
              />
              <div class="choose-steps">
                <BigButton act={`${end}-back`} isWay onPress={() => set(end, stepBack(range()[end], 1))}>
                  {said().back}
                </BigButton>
                <BigButton
                  act={`${end}-on`}
                  isWay
                  isDisabled={range()[end] >= props.today}
                  onPress={() => set(end, stepBack(range()[end], -1))}
                >
                  {said().on}
                </BigButton>
              </div>
            </section>
          )}
        </For>
      </div>
      <p id="choose-said" role="status" data-refused={refusal() ?? undefined}>
        <Show when={sayRefusal()} fallback={sayBefore() ?? said().count(write(countDays(range())))}>
          {(why) => <strong>{why()}</strong>}
        </Show>
      </p>
      <div class="dialog-actions">
        <BigButton kind="primary" act="show-days" isWay isDisabled={refusal() !== null} onPress={show}>
          {said().show}
        </BigButton>
      </div>
    </form>
  );
}
