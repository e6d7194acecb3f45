import { type Decision, decisions } from '../../../shared/judgement/decisions';
import type { Findings, ZoneFinding } from '../../../shared/judgement/decisionTable';
import { risks } from '../../../shared/judgement/risk';
import { zones } from '../../../shared/records/zones';

export const zoneFindings = ['notPlanned', 'untested', 'sound', 'rough', 'gummy', 'broken'] as const;
const stops = ['none', 'judgement', 'absolute'] as const;
const shorts = [0, 0.5, 1, 2, 3] as const;
const strandCounts = [0, 1, 2, 3] as const;

/** What is one step worse for a zone. Untested is worse than sound and compares with nothing else. */
const worseZone: Readonly<Record<ZoneFinding, readonly ZoneFinding[]>> = {
  notPlanned: [],
  untested: [],
  sound: ['rough', 'untested'],
  rough: ['gummy'],
  gummy: ['broken'],
  broken: [],
};

const after = <T>(list: readonly T[], value: T): readonly T[] => {
  const next = list[list.indexOf(value) + 1];
  return next === undefined ? [] : [next];
};
const before = <T>(list: readonly T[], value: T): readonly T[] => after([...list].reverse(), value);

/** Every combination of what the table looks at. */
export function listFindings(): readonly Findings[] {
  const all: Findings[] = [];
  for (const isLifting of [true, false])
    for (const roots of zoneFindings)
      for (const lengths of zoneFindings)
        for (const ends of zoneFindings)
          for (const risk of risks)
            for (const strands of strandCounts)
              for (const shortBy of shorts)
                for (const isEven of [true, false])
                  for (const stop of stops) {
                    all.push({
                      isLifting,
                      zones: { roots, lengths, ends },
                      risk,
                      strands,
                      shortBy,
                      isEven,
                      stop,
                    });
                  }
  return all;
}

/** Everything that is one step worse, one thing at a time. Each worse combination is a chain of such steps. */
export function listWorse(findings: Findings): readonly Findings[] {
  const { isLifting, risk, strands, shortBy, isEven, stop } = findings;
  return [
    ...zones.flatMap((zone) =>
      worseZone[findings.zones[zone]].map((worse) => ({
        ...findings,
        zones: { ...findings.zones, [zone]: worse },
      })),
    ),
    ...after(risks, risk).map((worse) => ({ ...findings, risk: worse })),
    ...before(strandCounts, strands).map((fewer) => ({ ...findings, strands: fewer })),
    ...after(shorts, shortBy).map((shorter) => ({ ...findings, shortBy: shorter })),
    ...after(stops, stop).map((worse) => ({ ...findings, stop: worse })),
    ...(isEven ? [{ ...findings, isEven: false }] : []),
    ...(isLifting ? [] : [{ ...findings, isLifting: true }]),
  ];
}

/** Where a worse finding gives a freer decision, or something that is no decision at all. The first few only. */
export function findBreaches(suggest: (findings: Findings) => Decision | undefined): readonly string[] {
  const breaches: string[] = [];
  const rank = (findings: Findings) => decisions.indexOf(suggest(findings) as Decision);
  for (const findings of listFindings()) {
    const own = rank(findings);
    if (own < 0) breaches.push(`no decision for ${JSON.stringify(findings)}`);
    for (const worse of listWorse(findings)) {
      if (rank(worse) > own) breaches.push(`${JSON.stringify(findings)} < ${JSON.stringify(worse)}`);
    }
    if (breaches.length > 2) break;
  }
  return breaches;
}
