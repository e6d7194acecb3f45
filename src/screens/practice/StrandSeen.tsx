import { createMemo, Show } from 'solid-js';
import { seeGlass, seeHead, seeSkinTest, seeStrand } from '../../../machines/practice/strandSight';
import type { Zone } from '../../../shared/records/zones';
import { formatQuantity } from '../../../shared/units/format';
import { StrandPicture } from '../../parts/strandSight/StrandPicture';
import { useWords } from '../../parts/useWords';
import type { StepProps } from '../stepProps';
import '../strandTest/undertone.css';
import { type LessonInUse, useLesson } from './lessonInUse';
import './heard.css';

type Looking = Pick<StepProps, 'consultation' | 'settings' | 'nowMs'>;
type InLesson = Looking & { readonly here: LessonInUse };

/** In a lesson: what is seen of this zone's strand now; once it is off, also what hands find. */
export function StrandSeen(props: Looking & { readonly zone: Zone; readonly isFelt?: boolean }) {
  const lesson = useLesson();
  return <Show when={lesson()}>{(here) => <Strand {...props} here={here()} />}</Show>;
}

function Strand(props: InLesson & { readonly zone: Zone; readonly isFelt?: boolean }) {
  const words = useWords();
  const seen = createMemo(
    () => seeStrand(props.here.sitting, props.consultation.record, props.zone, props.nowMs),
    null,
    { equals: isAlike },
  );
  const say = (sight: NonNullable<ReturnType<typeof seen>>): string => {
    const { strandTest } = words;
    if (sight.hasGone) return words.practice.strandGone;
    const { outcome } = strandTest.forms;
    const level = strandTest.processing.levelIs(
      formatQuantity(sight.level, 'level', props.settings.units, words.locale),
    );
    return [
      level,
      ...(sight.hasUndertone ? [strandTest.lift.undertones[sight.undertone]] : []),
      strandTest.forms.look.feel.options[sight.feel],
      ...(props.isFelt === true
        ? [outcome.stretch.options[sight.stretch], outcome.evenness.options[sight.evenness]]
        : []),
    ].join(' · ');
  };
  return (
    <Show when={seen()}>
      {(sight) => (
        <section class="seen" data-seen="strand" aria-label={words.practice.seen}>
          <StrandPicture
            undertone={sight().undertone}
            fibre={sight().hasGone ? 'broken' : sight().fibre}
            evenness={sight().evenness}
            said={say(sight())}
          />
          <p>{say(sight())}</p>
        </section>
      )}
    </Show>
  );
}

/** In a lesson: what is seen on the head where this zone's bowl is on, or was rinsed. */
export function HeadSeen(props: Looking & { readonly zone: Zone; readonly isFelt?: boolean }) {
  const lesson = useLesson();
  return <Show when={lesson()}>{(here) => <Head {...props} here={here()} />}</Show>;
}

const fibreOnHead = { sound: 'sound', stretchy: 'gummy', breaking: 'broken' } as const;

function Head(props: InLesson & { readonly zone: Zone; readonly isFelt?: boolean }) {
  const words = useWords();
  const seen = createMemo(
    () => seeHead(props.here.sitting, props.consultation.record, props.zone, props.nowMs),
    null,
    { equals: isAlike },
  );
  const say = (sight: NonNullable<ReturnType<typeof seen>>): string => {
    if (props.isFelt === true) return words.toner.felt.stretch.options[sight.stretch];
    const stings = sight.stinging === 'yes' ? words.practice.headStings : words.practice.headCalm;
    return `${stings} ${words.colourOn.hair[sight.hair]}`;
  };
  return (
    <Show when={seen()}>
      {(sight) => (
        <section class="seen" data-seen="head" aria-label={words.practice.seen}>
          <StrandPicture
            undertone={sight().undertone}
            fibre={fibreOnHead[sight().hair]}
            evenness="even"
            said={say(sight())}
          />
          <p>{say(sight())}</p>
        </section>
      )}
    </Show>
  );
}

/** In a lesson: what her cutting does in the glass. */
export function GlassSeen(props: Looking) {
  const words = useWords();
  const lesson = useLesson();
  const seen = createMemo(() => {
    const here = lesson();
    return here === null ? null : seeGlass(here.lesson, props.consultation.record, props.nowMs);
  });
  return (
    <Show when={seen()}>
      {(found) => (
        <p class="seen" data-seen="glass" aria-live="polite">
          {words.practice.glassSeen[found()]}
        </p>
      )}
    </Show>
  );
}

/** In a lesson: the skin test she brings, and what is seen of it today. */
export function SkinTestSeen() {
  const words = useWords();
  const lesson = useLesson();
  const say = ({ lesson: of, sat }: LessonInUse): string => {
    const test = seeSkinTest(of, sat.beganAtMs);
    if (test === null) return words.practice.bringsNone;
    return words.practice.bringsTest(
      words.moments.dayAndTime(test.putOnAtMs),
      words.practice.testSeen[test.seen],
    );
  };
  return (
    <Show when={lesson()}>
      {(here) => (
        <p class="seen" data-seen="skinTest">
          {say(here())}
        </p>
      )}
    </Show>
  );
}

const isAlike = (one: object | null, other: object | null): boolean =>
  JSON.stringify(one) === JSON.stringify(other);
