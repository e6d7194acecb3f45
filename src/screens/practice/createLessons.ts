import { type Accessor, createEffect, createMemo, createSignal, on } from 'solid-js';
import type { Debrief } from '../../../machines/practice/debrief';
import type { Flag, Lesson } from '../../../machines/practice/lesson';
import { listPassedOver } from '../../../machines/practice/passedOver';
import { digestLesson } from '../../../machines/practice/practiceEvent';
import { type Result, refuse } from '../../../shared/result';
import type { StationInUse } from '../../station/createStation';
import type { PracticeInUse } from '../../station/practice/createPractice';
import type { SubmitRefusal } from '../../station/submitRefusal';
import type { Who } from '../who';
import type { LessonInUse } from './lessonInUse';
import { listSittings, nameSeat, type SittingKept } from './sittings';
import { tellDebrief } from './tellDebrief';

type Station = Pick<StationInUse, 'state' | 'beginLesson' | 'tellOfSitting' | 'submit' | 'readSettings'>;

/** What was passed over at a step that is done, as it is hinted at. */
export interface PassedOver {
  readonly id: string;
  readonly step: Extract<Parameters<typeof listPassedOver>[3], string>;
  readonly flags: readonly Flag[];
}

/** The lessons of practice as they stand, and what is done with them. */
export interface LessonsInUse {
  /** Every lesson there is, this salon's own last; null while they are fetched. */
  readonly all: Accessor<readonly Lesson[] | null>;
  readonly sittings: Accessor<readonly SittingKept[]>;
  /** How one of them went; null where that cannot be told. */
  readonly tell: (sitting: SittingKept) => Debrief | null;
  /** The one that is under way. */
  readonly underWay: Accessor<SittingKept | null>;
  /** As the screens of its client read it; null where the lesson itself is gone. */
  readonly here: Accessor<LessonInUse | null>;
  readonly begin: (lesson: Lesson, isExam: boolean) => Promise<Result<string, SubmitRefusal>>;
  /** Closes it as called off. */
  readonly leaveOff: (id: string) => Promise<Result<void, SubmitRefusal>>;
  readonly passedOver: Accessor<PassedOver | null>;
  readonly dismissPassedOver: () => void;
}

const drawSeed = (): number => crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;

/**
 * The lessons of this station, while it is in practice: what was sat, the one under way, and what belongs to its end.
 * Checked in tests/src/screens/practice/practice.test.tsx.
 */
export function createLessons(
  station: Station,
  who: Who,
  school: PracticeInUse['school'],
  isOn: boolean,
): LessonsInUse {
  const state = () => station.state();
  const own = () => state().practice?.own ?? [];
  const all = createMemo(() => {
    const here = school();
    return here === null ? null : [...here.lessons, ...own()];
  });
  const sittings = createMemo(() =>
    isOn ? listSittings(state(), [...(all() ?? []), ...(state().practice?.removed ?? [])]) : [],
  );
  const underWay = createMemo(() => sittings().findLast(({ id }) => state().open.has(id)) ?? null);
  const here = createMemo((): LessonInUse | null => {
    const now = underWay();
    if (now === null || now.lesson === null) return null;
    const { id, lesson, sat } = now;
    return {
      lesson,
      sat,
      sitting: { lesson, seed: sat.seed },
      askCloser: (path) =>
        void station.tellOfSitting(id, who.by() || sat.by, { type: 'ASKED_CLOSER', payload: { path } }),
    };
  });

  /** What is over says so in its own log, in the name of whoever began it. */
  const isWriter = () => state().mode === 'writing';
  const ended = createMemo(() => {
    const closed = new Map(state().closed.map((record) => [record.id, record.how]));
    return sittings()
      .filter(({ id, sat }) => sat.ended === null && closed.has(id))
      .map(({ id, sat }) => {
        const how = closed.get(id) === 'calledOff' ? ('leftOff' as const) : ('finished' as const);
        return { id, by: sat.by, how };
      });
  });
  const said = new Set<string>();
  createEffect(() => {
    if (!isOn || !isWriter()) return;
    for (const { id, by, how } of ended()) {
      if (said.has(id)) continue;
      said.add(id);
      void station.tellOfSitting(id, by, { type: 'LESSON_ENDED', payload: { how } });
    }
  });

  const [passedOver, setPassedOver] = createSignal<PassedOver | null>(null);
  const confirmed = createMemo(() => {
    const now = underWay();
    const log = now === null ? [] : (state().open.get(now.id)?.log ?? []);
    return now === null ? null : { id: now.id, length: log.length, last: log.at(-1) };
  });
  createEffect(
    on(confirmed, (now, before) => {
      const sitting = underWay();
      if (now === null || sitting === null || sitting.lesson === null || sitting.sat.isExam) return;
      // Only what is confirmed while somebody looks: nothing is hinted at anew by a reload.
      if (before == null || before.id !== now.id || now.length <= before.length || !isWriter()) return;
      const consultation = state().open.get(now.id);
      if (consultation === undefined || now.last?.type !== 'STEP_CONFIRMED') return;
      const { step } = now.last.payload;
      const { settings } = state().settings;
      const flags = listPassedOver(sitting.lesson, sitting.sat, consultation, step, settings);
      if (flags.length === 0) return;
      setPassedOver({ id: now.id, step, flags });
      for (const { id: flag } of flags) {
        void station.tellOfSitting(now.id, sitting.sat.by, { type: 'HINT_SHOWN', payload: { flag } });
      }
    }),
  );

  return {
    all,
    sittings,
    tell: (sitting) => tellDebrief(sitting, state().closed, station.readSettings, school()),
    underWay,
    here,
    async begin(lesson, isExam) {
      const settle = school()?.settle;
      if (settle === undefined) return refuse({ kind: 'notNow' });
      const inForce = state().settings.settings;
      const { staff, spoken } = inForce;
      const rules = settle(lesson, inForce);
      const chairs = Math.max(rules.chairs, lesson.seat.chair);
      return station.beginLesson(who.by(), {
        settings: { ...rules, staff, spoken, chairs },
        seat: { ticket: nameSeat(lesson, sittings()), chair: String(lesson.seat.chair), stylist: '' },
        begun: { lessonId: lesson.id, seed: drawSeed(), isExam, digest: digestLesson(lesson) },
      });
    },
    leaveOff: (id) => station.submit(id, who.by(), { type: 'CALLED_OFF', answers: { reason: 'other' } }),
    passedOver,
    dismissPassedOver: () => setPassedOver(null),
  };
}
