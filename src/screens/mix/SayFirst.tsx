import { findFromTips } from '../../../shared/judgement/limits';
import { areRootsToCome } from '../../../shared/judgement/rootsLast';
import type { BowlRecord, ConsultationRecord } from '../../../shared/records/record';
import { findHeadLookMin } from '../../../shared/records/reduce/bowls';
import type { Settings } from '../../../shared/records/settings';
import { findUseByMs } from '../../../shared/records/useWithin';
import { brand } from '../../../shared/units/brand';
import { formatMass, formatQuantity } from '../../../shared/units/format';
import { useWords } from '../../parts/useWords';
import { sayPoured } from '../bottleAndBowl';
import { findStuff } from '../findStuff';
import { sayAbout } from '../map/saySizes';

/** The dot stays with what it follows when the line breaks. */
const listed = '\u00a0· ';

/**
 * The pause before a bowl goes on: whose head, where, which line and bottle, how long, how often looked at, how warm, until
 * when. Eight values read off the screen; the ninth, the skin, is answered with the tap that begins.
 */
export function SayFirst(props: {
  readonly record: ConsultationRecord;
  readonly bowl: BowlRecord;
  readonly settings: Settings;
}) {
  const words = useWords();
  const write = (value: number, quantity: 'count' | 'minutes') =>
    formatQuantity(value, quantity, props.settings.units, words.locale);
  const where = () => {
    const zone = words.general.zones[props.bowl.zone];
    const { decision } = props.record;
    const tips = decision === null ? null : findFromTips(props.record.answers, decision.decision);
    return [
      zone,
      ...(areRootsToCome(props.record.answers, props.bowl) ? [words.mix.rootsLast] : []),
      ...(tips === null ? [] : [words.mix.fromTips(sayAbout(tips, props.settings.units, words.locale))]),
    ].join(', ');
  };
  const values = () => [
    words.mix.who(write(props.record.chair, 'count'), props.record.ticket),
    where(),
    props.bowl.line,
    sayPoured(props.bowl, words, props.settings),
    write(props.bowl.minutes, 'minutes'),
    words.mix.lookEvery(write(findHeadLookMin(props.record), 'minutes')),
    words.mix.limitHeat[props.bowl.heat],
    words.mix.useBy(words.moments.time(findUseByMs(props.bowl, props.settings))),
  ];
  const weighed = () => {
    const { bowl } = props;
    return [
      words.mix.weighedColour(
        formatMass(brand(bowl.colourG), props.settings.units, words.locale),
        findStuff(props.settings, props.record.answers, bowl.line),
      ),
      words.mix.limitRatio(write(bowl.ratio, 'count')),
      ...(bowl.batch === '' ? [] : [words.mix.batch(bowl.batch)]),
      words.mix.weighedBy(bowl.by, words.moments.time(bowl.atMs)),
    ].join(listed);
  };
  return (
    <div class="say-first" data-panel="say-first">
      <p class="soft">{words.mix.sayFirst}</p>
      <p>
        <strong>{values().join(listed)}</strong>
      </p>
      <p class="soft">{weighed()}</p>
    </div>
  );
}
