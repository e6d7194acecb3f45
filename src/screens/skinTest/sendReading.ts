import type { ConsultationRecord } from '../../../shared/records/record';
import type { Sender } from '../sender';

/** What was seen of the skin test that is noted; nothing is sent where none is. Was it taken? */
export function sendReading(
  { skinTest }: Pick<ConsultationRecord, 'skinTest'>,
  sender: Sender,
  seen: 'nothing' | 'reaction',
): Promise<boolean> {
  if (skinTest === null) return Promise.resolve(false);
  const { method, site, putOnAtMs } = skinTest;
  return sender.send({ type: 'SKIN_TEST_NOTED', answers: { method, site, putOnAtMs, seen } });
}
