import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { sayOffset } from '../../scripts/report/days.mjs';
import { formatJson, formatText } from '../../scripts/report/formatSheet.mjs';
import { readCall } from '../../scripts/report/readCall.mjs';
import { msPerDay } from '../../shared/units/time';
import { report as words } from '../../src/words/en/report';
import { backup, half, movedBy, named, opened, records, visit, whole } from '../shared/records/report/files';

const root = join(import.meta.dirname, '..', '..');
const folder = mkdtempSync(join(tmpdir(), 'report-'));
afterAll(() => rmSync(folder, { recursive: true }));

const put = (name: string, text: string): string => {
  writeFileSync(join(folder, name), text);
  return name;
};

/** The command as somebody types it, in a zone behind UTC. */
function run(...args: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(root, 'scripts', 'report.mjs'), ...args],
    {
      cwd: folder,
      encoding: 'utf8',
      env: { ...process.env, TZ: 'America/St_Johns' },
    },
  );
  return { status, stdout, stderr };
}

const bar = put('bar.json', records([visit('aaaa1', whole), visit('bbbb2', half)]));
const hall = put('hall.backup', backup([visit('aaaa1', whole), visit('cccc3', whole)]));

describe('npm run report', { timeout: 120_000 }, () => {
  it('tells the week of two tablets, and ends with 0', () => {
    const { status, stdout, stderr } = run(bar, hall);
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(stdout).toMatch(/^Report, Wed, Feb 25, 2026 to Tue, Mar 3, 2026\nDays by UTC\+00:00\.\n/);
    expect(stdout).toContain(
      [
        'CLIENTS',
        '  Ended                                    Clients',
        '  done                                           2',
        '  open still, or closed after these days         1',
        '  everybody with whom something was done         3',
      ].join('\n'),
    );
    expect(stdout).toContain('  Q.F.     may wait until another day');
    expect(stdout).toContain('In more than one file, counted once: 1.');
  });

  it('leaves out what cannot be read, says where, reads the rest, and ends with 1', () => {
    const torn = put('torn.json', records([visit('dddd4', whole)]).replace('"by":"Opal"', '"by":"Juno"'));
    const { status, stdout, stderr } = run(
      bar,
      torn,
      'gone.json',
      '--from',
      '2026-03-03',
      '--to',
      '2026-03-03',
    );
    expect(status).toBe(1);
    expect(stderr.trim().split('\n')).toEqual([
      'torn.json, consultation 1 (Q.F.): It was damaged or changed since it was saved. Copy or save it again.',
      'gone.json: It cannot be read. Is it there, and may you open it?',
    ]);
    expect(stdout).toMatch(/^Report of Tue, Mar 3, 2026\n/);
    expect(stdout).toContain('everybody with whom something was done         2');
  });

  it('moves no cursor, whatever a file is named', () => {
    const { status, stderr } = run('gone\u001b[2J\u009b1A\u202e\nall well.json');
    expect([status, stderr]).toEqual([
      1,
      'gone\ufffd[2J\ufffd1A\ufffd\ufffdall well.json: It cannot be read. Is it there, and may you open it?\n',
    ]);
  });

  it('refuses names where a file does not allow them, saying how it would, and tells the rest', () => {
    const { status, stdout, stderr } = run(bar, '--by-stylist', '--json', '--zone', 'Pacific/Kiritimati');
    expect(status).toBe(1);
    expect(stderr).toContain('bar.json: That station does not let figures name who works there.');
    const told = JSON.parse(stdout);
    expect(told).toMatchObject({
      people: null,
      zone: 'Pacific/Kiritimati',
      figures: { to: '2026-03-04', clients: 2 },
    });
    expect(stdout).not.toContain('Opal');
  });

  it('writes one page for paper, whatever a ticket says, and names people where it may', () => {
    const ticket = '<script>alert("1")</script>&\u202e';
    const hostile = put('<i>.json', records([visit('aaaa1', whole, named)], { isDemo: true }));
    const page = join(folder, 'page.html');
    const { status, stdout, stderr } = run(hostile, '--by-stylist', '--html', page);
    expect([status, stderr.trim()]).toEqual([0, `Written: ${page}`]);
    expect(stdout).toContain('INVENTED');
    expect(stdout).toMatch(/BY FIRST NAME\n {2}Name .*\n {2}Opal/);
    const html = readFileSync(page, 'utf8');
    expect(html).toContain('&lt;i&gt;.json');
    expect(html).not.toMatch(/<script|<i>|https?:|src=|url\(/);
    expect(words.sayFault({ of: 'differing', ticket, places: [] })).toContain(ticket);
  });

  it('tells the week that was, though a clock in it went wrong, and names whose', () => {
    const years = movedBy(visit('dddd4', opened), 73 * 365 * msPerDay);
    const ahead = put('ahead.backup', backup([years, visit('cccc3', whole)]));
    const beyond = put('beyond.backup', backup([visit('eeee5', half), movedBy(visit('bbbb3', half), 1e17)]));
    const { status, stdout, stderr } = run(bar, ahead, beyond);
    expect(stdout).toMatch(/^Report, Wed, Feb 25, 2026 to Tue, Mar 3, 2026\n/);
    expect(stdout).toMatch(/\n {2}done +2\n/);
    expect(status).toBe(1);
    const lines = half.consultation.log.length;
    expect(stderr.trim().split('\n')).toEqual([
      `beyond.backup, line ${lines + 3}: Entry 1 of the record of Q.F. says a moment beyond any date. It is left out of these figures.`,
      'ahead.backup, line 3: Entry 1 of the record of Q.F. is of more than a day after the file was saved, so a clock was wrong: do not rely on its days.',
    ]);
  });

  it('names a file that was saved at no date at all', () => {
    const never = put('never.backup', backup([visit('aaaa1', whole)], { madeAtMs: 9e15 }));
    const { status, stdout, stderr } = run(never);
    expect([status, stdout]).toEqual([1, '']);
    expect(stderr).toBe(
      'never.backup, line 1: It says that it was saved at a moment beyond any date. Set the clock of its tablet right, and save it again.\n',
    );
  });

  it('says so where it is asked from a day after the newest entry, and ends with 2', () => {
    expect(run(bar, '--from', '2026-04-01')).toEqual({
      status: 2,
      stdout: '',
      stderr: `${words.calls.backwards('2026-04-01', '2026-03-03')}\n`,
    });
  });

  it('says so where the clocks of the files stood apart', () => {
    const summer = records([visit('cccc3', whole)], { madeAtMs: whole.atMs - 1 });
    const east = put('east.json', summer.replace(/("madeAt":"[^"]+)\+00:00"/, '$1+01:00"'));
    expect(run(bar, east).stdout).toContain(words.offsetsDiffer('UTC+00:00, UTC+01:00'));
  });

  it('called wrongly ends with 2, and says how it is called', () => {
    const { status, stdout, stderr } = run(bar, '--week');
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toContain('--week');
    expect(stderr).toContain('npm run report -- FILE…');
  });

  it('never writes its page over a file that it reads, nor over one that no report wrote', () => {
    const kept = put('kept.json', records([visit('aaaa1', whole)]));
    const other = put('other.html', '<!doctype html>\n<title>Rota</title>\n');
    const texts = [kept, other].map((name) => readFileSync(join(folder, name), 'utf8'));
    expect(run(kept, '--html', join('.', '..', folder.split('/').at(-1) ?? '', kept))).toMatchObject({
      status: 2,
      stdout: '',
      stderr: expect.stringContaining('This file is read'),
    });
    expect(run(kept, '--html', other)).toEqual({
      status: 2,
      stdout: '',
      stderr: `${words.calls.isOfOthers(other)}\n`,
    });
    expect([kept, other].map((name) => readFileSync(join(folder, name), 'utf8'))).toEqual(texts);
    const page = put('week.html', '');
    expect([1, 2].map(() => run(kept, '--html', page).status)).toEqual([0, 0]);
    expect(readFileSync(join(folder, page), 'utf8')).toContain('Strandproof report');
  });

  it('says so where the page cannot be written', () => {
    const { status, stderr } = run(bar, '--html', join(folder, 'none', 'page.html'));
    expect(status).toBe(1);
    expect(stderr).toContain('The page could not be written');
  });
});

it('says how far a clock was ahead of UTC, or behind it', () => {
  expect([sayOffset(-210), sayOffset(0), sayOffset(765)]).toEqual(['UTC−03:30', 'UTC+00:00', 'UTC+12:45']);
});

it('moves no cursor, whatever its title and its lines say', () => {
  const part = { title: 'B', heads: ['C'], rows: [], none: 'none' };
  const sheet = {
    title: 'A\u001b[2J',
    stamp: '\u0007',
    lines: ['by \u202eUTC', 'b'],
    parts: [part],
    note: 'note',
  };
  expect(formatText(sheet)).toBe('A\ufffd[2J\n\ufffd\nby \ufffdUTC\nb\n\nB\n  none\n\nnote');
});

it('moves no cursor as JSON either, and says the same there', () => {
  const told = { ticket: 'A\u202eB\u009b1A\u200f\u2028\u{e0041}C', 'na\u2066me': ['\u001b[2J', 'ä🟡\n'] };
  const text = formatJson(told);
  expect(text).not.toMatch(/[^\n\P{Cc}]|[\p{Cf}\u2028\u2029]/u);
  expect(text).toContain('A\\u202eB\\u009b1A\\u200f\\u2028\\udb40\\udc41C');
  expect(JSON.parse(text)).toEqual(told);
});

describe('a call of it', () => {
  const call = (...args: readonly string[]) => readCall(args, words.calls);

  it.each([
    ['no file', [], 'Which files?'],
    ['a day that there is none of', ['a', '--from', '2026-02-30'], '--from takes a day such as'],
    ['a day in words', ['a', '--to', 'Monday'], '--to takes a day such as'],
    [
      'days that end before they begin',
      ['a', '--from', '2026-03-04', '--to', '2026-03-03'],
      'before they begin',
    ],
    ['a zone that there is none of', ['a', '--zone', 'Salon/Bar'], 'no time zone “Salon/Bar”'],
    ['an option without its value', ['a', '--html'], '--html'],
  ])('with %s is refused in a sentence', (_what, args, why) => {
    expect(call(...args)).toEqual({ wrong: expect.stringContaining(why) });
  });

  it('may ask for help, and takes the same file once', () => {
    expect(call('--help', '--from', 'now')).toBe('help');
    expect(call('a', 'b', 'a', '--from', '2026-02-28')).toMatchObject({
      call: { files: ['a', 'b'], from: '2026-02-28', to: undefined, isJson: false, isByStylist: false },
    });
  });
});
