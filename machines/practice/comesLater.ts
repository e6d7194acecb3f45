import type { RuleId } from '../../shared/judgement/rules';

/** What would not have stung on the head: it comes days later, or in the breath. */
export interface LaterPart {
  readonly rule: RuleId;
  readonly how: 'daysLater' | 'inTheBreath';
}

/**
 * How does what this stop is about show itself, if no sting tells of it? An allergy to hair colour is mostly
 * delayed (from memory: dermatology textbooks): its test is left for two days (advice: FDA, Hair dyes), or read at 48 h
 * (published: Cosmetics Europe 2023); persulfates cause hives and asthma (published: Pang & Fiume, Int. J.
 * Toxicol. 20(S3):7–21, 2001).
 */
const later: Readonly<Partial<Record<RuleId, LaterPart['how']>>> = {
  'stop.reactionEver': 'daysLater',
  'stop.blackTattoo': 'daysLater',
  'stop.skinTestPositive': 'daysLater',
  'stop.persulfateReaction': 'inTheBreath',
};

/** Which stops that truly stand would have shown nothing on the head while it was on? "No sting" never clears them. */
export const listLater = (stops: readonly RuleId[]): readonly LaterPart[] =>
  stops.flatMap((rule) => {
    const how = later[rule];
    return how === undefined ? [] : [{ rule, how }];
  });
