import type { BowlRecord, ConsultationRecord } from './record';

/** The look at which the hair under this bowl broke; nothing where it holds. Checked in tests/shared/records/headLooks.test.ts. */
export const findBreakOnHead = ({
  looks,
}: Pick<BowlRecord, 'looks'>): BowlRecord['looks'][number] | undefined =>
  looks.find(({ hair }) => hair === 'breaking');

/** Was the hair under this bowl stretchy or breaking at a look? */
export const hasShownWeakOnHead = ({ looks }: Pick<BowlRecord, 'looks'>): boolean =>
  looks.some(({ hair }) => hair === 'stretchy' || hair === 'breaking');

/** Was the hair under this clock stretchy or breaking at a look? Then nothing stays on longer. */
export const hasWeakenedOnHead = ({ bowls }: Pick<ConsultationRecord, 'bowls'>, clock: string): boolean =>
  bowls.some((bowl) => bowl.clock === clock && hasShownWeakOnHead(bowl));
