import { writeFile } from 'node:fs/promises';
import crc32 from 'crc-32';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isLong, tellShare } from '../long';
import { findBarriers } from './accessibility';
import { type LooksRule, rules } from './looks/finding';
import { inspect } from './looks/inspect';
import { walkKeys } from './looks/keys';
import { notTheMainWay } from './looks/notTheMainWay';
import { allScenes } from './scenes/allScenes';
import { listQuestions, turnTo } from './scenes/questions';
import { keepTablets, type SceneTablets, settle } from './scenes/showScene';
import { useStation } from './station';

const station = useStation();
let tablets: SceneTablets;
beforeAll(() => {
  tablets = keepTablets(station.browser, station.address);
});

/** Drawn for these first, so everything is asked here. */
const first = ['1280x800', '800x1280'] as const;
/** These must work: nothing scrolls, is cut or overlaps. */
const also = ['1024x768', '1920x1080'] as const;

/** Of what a run tries in part, it is one scene in so many, and the long form tries all. */
const PARTS = 4;
/** Is this of that part? By its name, so that every run tries the same ones, and each look others. */
const isTried = (name: string, look: string): boolean =>
  isLong || (crc32.str(`${name} ${look}`) >>> 0) % PARTS === 0;

const readSize = (size: string) => {
  const [width = 0, height = 0] = size.split('x').map(Number);
  return { width, height };
};

/** Every question of a sheet is turned to where there is least room for it, and on the sheets that have no full state. */
const isAskedWhole = (name: string): boolean => !/-(empty|usual|error)$/.test(name);

const found = new Map<LooksRule, string[]>(rules.map((rule) => [rule, []]));

const looks = new Map<string, number>();
const count = (look: string) => looks.set(look, (looks.get(look) ?? 0) + 1);

const only = process.env.ONLY ?? '';
const scenes = allScenes.filter(({ name }) => name.includes(only));

describe.concurrent('every screen, in every state it can be met in', () => {
  it.each(scenes)('$name is shown and looked at', async ({ name, screen, scene }) => {
    const shown = await tablets.show(scene);
    const { page } = shown;
    const say = (rule: LooksRule, size: string, element: string, measured: string) => {
      if ((rule === 'scrolls' || rule === 'primary') && screen in notTheMainWay) return;
      found.get(rule)?.push(`${name} · ${size} · ${element} · ${measured}`);
    };
    try {
      if (shown.problem !== null) {
        found.get('notShown')?.push(`${name} · ${shown.problem.split('\n').slice(0, 3).join(' ')}`);
        return;
      }
      // Before any other size: on another glass the ruler is set anew, and back on its own it returns when it is looked at.
      for (const { rule, element, measured } of await walkKeys(page)) say(rule, first[0], element, measured);
      count(`Tab ${first[0]}`);
      for (const size of [...first, ...also]) {
        const isFirst = first.some((each) => each === size);
        if (!isFirst && !isTried(name, size)) continue;
        await page.setViewportSize(readSize(size));
        await settle(page);
        count(size);
        for (const { rule, element, measured } of await inspect(
          page,
          isFirst ? 'whole' : 'fit',
          !(screen in notTheMainWay),
        )) {
          say(rule, size, element, measured);
        }
        if (!isFirst || (size !== first[0] && !isTried(name, `axe ${size}`))) continue;
        count(`axe ${size}`);
        for (const barrier of await findBarriers(page))
          say('axe', size, barrier.slice(0, 160), 'by axe-core');
        if (size === first[0]) continue;
        count(`Tab ${size}`);
        for (const { rule, element, measured } of await walkKeys(page)) say(rule, size, element, measured);
      }
      for (const size of isAskedWhole(name) ? first : []) {
        await page.setViewportSize(readSize(size));
        for (const question of await listQuestions(page)) {
          await turnTo(page, question);
          count(`questions ${size}`);
          for (const { rule, element, measured } of await inspect(page)) {
            say(rule, `${size}, ${question}`, element, measured);
          }
        }
      }
      expect(shown.complaints).toEqual([]);
    } finally {
      await shown.close();
    }
  });
});

describe('on no screen', () => {
  it.each(rules)('is anything found by the rule %s', (rule) => {
    expect(found.get(rule)).toEqual([]);
  });
});

afterAll(() => {
  const counts = [...looks].map(([look, many]) => `${look} ${many}`).join(', ');
  console.log(tellShare('looks', `${scenes.length} scenes: ${counts}`, 'every look at every scene'));
});

afterAll(async () => {
  const { FINDINGS } = process.env;
  if (FINDINGS === undefined) return;
  const counts = rules.map((rule) => `${rule}: ${found.get(rule)?.length}`).join(', ');
  const lines = rules.flatMap((rule) => (found.get(rule) ?? []).map((line) => `${rule} · ${line}`));
  await writeFile(FINDINGS, [counts, ...lines, ''].join('\n'));
});
