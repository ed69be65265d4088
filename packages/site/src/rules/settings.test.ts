import { describe, expect, it } from 'vitest';
import { type SettingRow, settings } from './settings';

describe('settings', () => {
  it.each(Object.entries<SettingRow>(settings))('%s says where it comes from', (_, row) => {
    expect(row.title).not.toBe('');
    expect(Number.isFinite(row.value)).toBe(true);
    if (row.basis === 'practice') expect(row.title).toBe('common practice, no source');
    else expect(row.clause).not.toBe('');
  });
});
