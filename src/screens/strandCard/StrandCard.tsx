import { createMemo, For } from 'solid-js';
import type { ConsultationRecord } from '../../../shared/records/record';
import type { Settings } from '../../../shared/records/settings';
import { formatPercent, formatQuantity } from '../../../shared/units/format';
import { useWords } from '../../parts/useWords';
import { sayVolumes } from '../bottleAndBowl';
import './strandCard.css';
import { type CardStrand, listCardLevels } from './viewCard';

/** One tested strand on paper: what it was, what went on it, what it showed and said, and room for the hair itself. */
export function StrandCard(props: {
  readonly record: ConsultationRecord;
  readonly strand: CardStrand;
  readonly settings: Settings;
}) {
  const words = useWords();
  const said = () => words.strandCard;
  const forms = () => words.strandTest.forms;
  const write = (value: number, quantity: 'count' | 'level' | 'minutes') =>
    formatQuantity(value, quantity, props.settings.units, words.locale);
  const percent = (value: number) => formatPercent(value, props.settings.units, words.locale);
  const strand = () => props.strand;
  const outcome = () => props.strand.outcome;
  const sayLevels = () => {
    const { shown, left } = listCardLevels(props.record, strand());
    const all = shown.map(({ atMin, level }) =>
      said().levelAt(write(level, 'level'), write(Math.floor(atMin), 'count')),
    );
    const [first = said().noLevel, ...rest] = all;
    const told = left === 0 ? [first, ...rest] : [first, said().levelsLeft(write(left, 'count')), ...rest];
    // A line ends behind a dot and never begins with one.
    return told.join('\u00a0· ');
  };
  const sayStretch = () => {
    const { stretch, wentPast30 } = outcome();
    const past = wentPast30 === 'yes' ? [said().wentPast] : [];
    return [forms().outcome.stretch.options[stretch], ...past].join(', ');
  };
  const rows = createMemo((): readonly (readonly [key: string, name: string, told: string])[] => {
    const { zone, place, line, batch, developerPercent, ratio, heat, minutesOn, hairs } = strand();
    const { level, evenness, grade, fibre } = outcome();
    return [
      ['place', said().from, [words.general.zones[zone], forms().strand.place.options[place]].join(' · ')],
      ['hairs', forms().strand.hairs.ask, write(hairs, 'count')],
      ['line', forms().strand.line.ask, line],
      ['batch', forms().strand.batch.ask, batch === '' ? said().none : batch],
      [
        'developer',
        said().developer,
        words.mix.bottle(
          percent(developerPercent),
          sayVolumes(developerPercent, words, props.settings.units),
        ),
      ],
      ['ratio', said().ratio, words.mix.limitRatio(write(ratio, 'count'))],
      ['heat', forms().strand.heat.ask, forms().strand.heat.options[heat]],
      ['minutes', said().minutesOn, minutesOn === null ? said().none : write(minutesOn, 'minutes')],
      ['levels', said().levels, sayLevels()],
      [
        'fibre',
        said().fibre,
        [
          forms().outcome.fibre.options[fibre],
          ...(grade === fibre ? [] : [said().graded(words.strandTest.grades[grade])]),
        ].join(' · '),
      ],
      ['stretch', said().stretch, sayStretch()],
      ['level', forms().outcome.level.ask, level === undefined ? said().none : write(level, 'level')],
      [
        'evenness',
        said().evenness,
        evenness === undefined ? said().none : forms().outcome.evenness.options[evenness],
      ],
      ['by', said().by, `${outcome().by}, ${words.moments.time(outcome().atMs)}`],
    ];
  });
  return (
    <article class="strand-card" data-strand={strand().number}>
      <div class="strand-card-face">
        <header>
          <h3>{said().title(write(strand().number, 'count'))}</h3>
          <p data-line="whose">
            {[
              words.general.chairAndTicket(write(props.record.chair, 'count'), props.record.ticket),
              words.moments.date(outcome().atMs),
            ].join(' · ')}
          </p>
        </header>
        <dl>
          <For each={rows()}>
            {([key, name, told]) => (
              <div data-row={key}>
                <dt>{name}</dt>
                <dd>{told}</dd>
              </div>
            )}
          </For>
        </dl>
        <p class="strand-card-tape">
          <span>{said().tape}</span>
        </p>
        <footer>{words.general.estimate}</footer>
      </div>
    </article>
  );
}
