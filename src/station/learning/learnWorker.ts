import { type DatedLesson, teach } from '../../../shared/learning/teach';

// Beside the page, so that no tap waits for a fit.
addEventListener('message', ({ data }: MessageEvent<readonly DatedLesson[]>) => {
  postMessage(teach(data));
});
