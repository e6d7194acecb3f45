import type { TraineeRow } from '../../../machines/practice/tellTrainees';
import { useWords } from '../../parts/useWords';
import { useLessonSaying } from './sayingLesson';

/** One lesson that was sat: its title and how it went, by whom, how and when; a tap leads to all it came to. */
export function TraineeTile(props: {
  readonly row: TraineeRow;
  readonly write: (count: number) => string;
  readonly onDebrief: () => void;
}) {
  const words = useWords();
  const say = useLessonSaying();
  const said = () => words.trainer;
  const sayResult = () => {
    const { result, score } = props.row;
    const named = said().results[result];
    return score === null ? named : said().withScore(named, props.write(score));
  };
  const sayTitle = () => {
    const { title, lessonId } = props.row;
    return title === null ? said().goneLesson(lessonId) : say(title);
  };
  const sayWho = () => {
    const { by, isExam, beganAtMs } = props.row;
    const how = isExam ? words.practice.exam : words.practice.hints;
    return said().rowOf(by, how, words.moments.dayAndTime(beganAtMs));
  };
  return (
    <li>
      <button
        type="button"
        class="trainee-row"
        data-trainee={props.row.id}
        data-result={props.row.result}
        disabled={props.row.result === 'underWay'}
        onClick={() => props.onDebrief()}
      >
        <strong>{sayTitle()}</strong>
        <span>{sayWho()}</span>
        <span class="trainee-result">{sayResult()}</span>
      </button>
    </li>
  );
}
