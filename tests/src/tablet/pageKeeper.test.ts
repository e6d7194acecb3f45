import { describe, expect, it } from 'vitest';
import { keepPage, type PageState, type PageWorkers } from '../../../src/tablet/pageKeeper';

/** A worker that becomes what the test says. */
function makeWorker(state: string) {
  const heard: (() => void)[] = [];
  const worker = {
    state,
    addEventListener: (_type: 'statechange', listener: () => void) => heard.push(listener),
  };
  const become = (next: string) => {
    worker.state = next;
    for (const listener of heard) listener();
  };
  return { worker, become };
}

type Registered = Awaited<ReturnType<PageWorkers['register']>>;
const nothing: Registered = { active: null, waiting: null, installing: null };

async function keep(register: (() => Promise<Registered>) | null) {
  const told: PageState[] = [];
  const asked: string[] = [];
  const workers = register && {
    register: (address: string) => {
      asked.push(address);
      return register();
    },
  };
  await keepPage(workers, (state) => told.push(state));
  return { told, asked };
}

describe('a page that is to open without the network', () => {
  it('is kept at once where it was kept before, whatever is being laid beside it', async () => {
    const { told, asked } = await keep(async () => ({
      active: makeWorker('activated').worker,
      waiting: null,
      installing: makeWorker('installing').worker,
    }));
    expect([told, asked]).toEqual([['kept'], ['/serviceWorker.js']]);
  });

  it.each([
    ['activated', 'kept'],
    ['redundant', 'refused'],
  ] as const)('the first time is not told of before the worker is %s: %s', async (end, state) => {
    const first = makeWorker('installing');
    const { told } = await keep(async () => ({ ...nothing, installing: first.worker }));
    for (const step of ['installed', 'activating']) first.become(step);
    expect(told).toEqual([]);
    first.become(end);
    expect(told).toEqual([state]);
  });

  it('is told of when the worker was quicker than the question', async () => {
    const { told } = await keep(async () => ({ ...nothing, waiting: makeWorker('activated').worker }));
    expect(told).toEqual(['kept']);
  });

  it.each([
    ['forbids it', () => Promise.reject(new DOMException('no', 'SecurityError'))],
    ['answers with nothing', async () => nothing],
    ['has no such thing', null],
  ])('is refused where the browser %s', async (_title, register) => {
    expect((await keep(register)).told).toEqual(['refused']);
  });
});
