import { describe, expect, it } from 'vitest';
import { openSiteValue } from '../document/openSite';
import { pipe, typed, yard } from '../testing/yard';
import { addDig, changeDig, changeOneCall } from './digEdits';
import { soundEdit } from './soundEdit';

const trench = { id: 'd', is: 'trench', path: 'main', from: 2, to: 9, name: '', note: '' } as const;
const bare = yard({ paths: [pipe('main', [typed(0, 0), typed(12, 0)])] });
const planned = addDig(bare, { dig: trench });

describe('facts of a dig', () => {
  it('stay when they are left out, and go without a trace when they are undefined', () => {
    const said = changeDig(planned, { id: 'd', facts: { depth: 1.2, protection: 'shield', spoil: 'left' } });
    const moved = changeDig(said, { id: 'd', facts: { from: 3 } });
    expect(moved.digging.digs).toEqual([
      { ...trench, from: 3, depth: 1.2, protection: 'shield', spoil: 'left' },
    ]);
    const facts = { depth: undefined, protection: undefined, spoil: undefined };
    const cleared = changeDig(said, { id: 'd', facts });
    expect(Object.entries(cleared.digging.digs[0] ?? {})).toEqual(Object.entries(trench));
    expect(openSiteValue(moved).ok).toBe(true);
  });

  it('of a pit do not fit a trench', () => {
    const odd = changeDig(planned, { id: 'd', facts: { length: 2 } });
    expect(soundEdit(planned, odd).ok).toBe(false);
  });

  it('of a dig that is not there are a mistake', () => {
    expect(() => changeDig(planned, { id: 'gone', facts: { depth: 1 } })).toThrow('gone');
  });
});

describe('the one-call ticket', () => {
  it('is kept from its first fact on, and is none when the last is cleared', () => {
    const dated = changeOneCall(bare, { facts: { validUntil: '2026-05-18' } });
    expect(dated.digging.oneCall).toEqual({ ticket: '', validUntil: '2026-05-18' });
    const numbered = changeOneCall(dated, { facts: { ticket: '26-0417' } });
    expect(numbered.digging.oneCall).toEqual({ ticket: '26-0417', validUntil: '2026-05-18' });
    const undated = changeOneCall(numbered, { facts: { validUntil: undefined } });
    expect(undated.digging.oneCall).toEqual({ ticket: '26-0417' });
    expect(changeOneCall(undated, { facts: { ticket: '' } })).toEqual(bare);
  });
});
