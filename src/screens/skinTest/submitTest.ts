import type { SkinTest } from '../../../shared/records/skinTest/skinTest';
import { accept } from '../../../shared/result';
import type { StationInUse } from '../../station/createStation';
import type { Submit } from '../stepProps';
import { goAsSomebody, type Who } from '../who';

/**
 * The taps of a skin test that belongs to no consultation in view, as they would be sent from one: noted, read,
 * corrected. Where nobody is chosen it asks first. `test`: null for one that is put on.
 */
export function makeSubmitTest(
  station: Pick<StationInUse, 'putOnSkinTest' | 'changeSkinTest'>,
  who: Who,
  test: () => SkinTest | null,
): Submit {
  const send: Submit = async (raw, by = who.by()) => {
    const known = test();
    const answers = raw.answers ?? {};
    if (known === null) {
      const put = await station.putOnSkinTest(by, answers);
      return put.ok ? accept(undefined) : put;
    }
    const type = raw.type === 'CORRECTED' ? 'SKIN_TEST_TAKEN_BACK' : 'SKIN_TEST_READ';
    return station.changeSkinTest(known.id, by, { type, answers });
  };
  return (raw, by) => goAsSomebody(who, () => send(raw, by));
}
