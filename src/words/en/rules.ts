import type { RuleId } from '../../../shared/judgement/rules';

/** One stop: what it is, why it is there, and what clears it. */
export interface RuleWords {
  readonly what: string;
  readonly why: string;
  readonly clears: string;
}

const byCorrection = 'Nothing lifts it today. Only if the answer was wrong: a named correction.';
const byJudgement = 'A named person may lift it for this service, with a reason.';
const label = 'The law’s label text says not to colour (EU Reg. 1223/2009, Annex III).';

/** The words of every stop. */
export const rules: Readonly<Record<RuleId, RuleWords>> = {
  'stop.reactionEver': {
    what: 'She has reacted to colour or lightener before.',
    why: label,
    clears: byCorrection,
  },
  'stop.anyReaction': {
    what: 'It tingled before. Here any reaction stops.',
    why: 'The label text says “any reaction ever” (EU Reg. 1223/2009, Annex III); this house reads it strictly.',
    clears: byCorrection,
  },
  'stop.persulfateReaction': {
    what: 'Hives or a tight chest after colour or lightener.',
    why: 'Persulfates can cause hives, asthma and, rarely, shock (Pang & Fiume 2001).',
    clears: byCorrection,
  },
  'stop.blackTattoo': {
    what: 'She has reacted to a temporary black henna tattoo.',
    why: label,
    clears: byCorrection,
  },
  'stop.scalpBroken': {
    what: 'The scalp is irritated or broken.',
    why: label,
    clears: 'When it has healed: a named correction, “it has changed”.',
  },
  'stop.faceRash': {
    what: 'There is a rash on the face.',
    why: label,
    clears: 'When it has gone: a named correction, “it has changed”.',
  },
  'stop.underAge': {
    what: 'She is too young to be coloured here.',
    why: 'The law’s label text: not meant for under 16 (EU Reg. 1223/2009). Your settings say from which age.',
    clears: byCorrection,
  },
  'stop.skinTestPositive': {
    what: 'The skin test reacted.',
    why: label,
    clears: byCorrection,
  },
  'stop.incompatibilityReacted': {
    what: 'The hair reacted in the glass.',
    why: 'Metal salts in the hair can heat, bubble or break it. Common practice; the maker’s method comes first.',
    clears: byCorrection,
  },
  'stop.inherited': {
    what: 'An earlier record under this ticket ended in a stop.',
    why: 'A stop goes with the client, not with the visit.',
    clears: 'If this is somebody else, or it was wrong: a named correction.',
  },
  'judgement.tingled': {
    what: 'It tingled before, and stopped on rinsing.',
    why: 'Common practice: it may be the scalp, it may be a beginning.',
    clears: byJudgement,
  },
  'judgement.scalpTight': {
    what: 'The scalp is tight today.',
    why: 'Common practice: tight skin burns sooner.',
    clears: byJudgement,
  },
  'judgement.relaxedRecently': {
    what: 'Relaxer, perm or keratin within two weeks, or not known.',
    why: 'Common practice: wait two weeks between the two.',
    clears: byJudgement,
  },
  'judgement.relaxerThenLightener': {
    what: 'Relaxed hair, and she wants to go lighter.',
    why: 'Common practice: hydroxide and lightener together break hair.',
    clears: byJudgement,
  },
  'judgement.relaxerAndPerm': {
    what: 'Both a relaxer and a perm on this hair.',
    why: 'Common practice: hydroxide and thio never overlap; where they did, hair breaks.',
    clears: byJudgement,
  },
  'judgement.snapsWhenWet': {
    what: 'A wet strand snaps when pulled.',
    why: 'Common practice: hair that snaps wet has nothing left to give.',
    clears: byJudgement,
  },
  'judgement.onScalp': {
    what: 'Lightener on the scalp, over 6 % (20 vol) or with dry heat.',
    why: 'Common practice: that burns skin, and the strand had none.',
    clears: byJudgement,
  },
  'judgement.freerThanSuggested': {
    what: 'Freer than the table suggests.',
    why: 'The table is an estimate; a named person may know this hair better.',
    clears: byJudgement,
  },
};
