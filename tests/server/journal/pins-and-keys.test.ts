import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { SqliteJournal } from '../../../server/journal/sqlite/sqlite-journal.ts';
import { newSqlitePlace, type SqlitePlace } from './sqlite-place.ts';

describe('kept beside the journal', () => {
  let place: SqlitePlace;
  let journal: SqliteJournal;
  beforeEach(async () => {
    place = await newSqlitePlace();
    journal = await place.open();
  });
  afterEach(async () => {
    await journal.close();
    await place.clear();
  });
  const restart = async () => {
    await journal.close();
    journal = await place.open();
  };

  it('a PIN’s hash outlives a restart and can be replaced and forgotten', async () => {
    expect(await journal.pins.get('B-07')).toBeNull();
    await journal.pins.put('B-07', 'hash one');
    await restart();
    expect(await journal.pins.get('B-07')).toEqual({ badge: 'B-07', hash: 'hash one', failedAttempts: 0, lastFailedAt: null });
    await journal.pins.put('B-07', 'hash two');
    expect((await journal.pins.get('B-07'))?.hash).toBe('hash two');
    await journal.pins.remove('B-07');
    expect(await journal.pins.get('B-07')).toBeNull();
  });

  it('wrong PINs are counted over a restart until the right one or a new one comes', async () => {
    await journal.pins.put('B-07', 'hash');
    expect(await journal.pins.countFailure('B-07', '2025-03-03T06:30:00.000Z')).toBe(1);
    await restart();
    expect(await journal.pins.countFailure('B-07', '2025-03-03T06:30:09.000Z')).toBe(2);
    expect(await journal.pins.get('B-07')).toMatchObject({ failedAttempts: 2, lastFailedAt: '2025-03-03T06:30:09.000Z' });
    await journal.pins.clearFailures('B-07');
    expect(await journal.pins.get('B-07')).toMatchObject({ failedAttempts: 0, lastFailedAt: null });
    await journal.pins.countFailure('B-07', '2025-03-03T06:31:00.000Z');
    await journal.pins.put('B-07', 'new hash');
    expect(await journal.pins.get('B-07')).toMatchObject({ failedAttempts: 0, lastFailedAt: null });
  });

  it('a badge without a PIN collects no failures', async () => {
    expect(await journal.pins.countFailure('B-99', '2025-03-03T06:30:00.000Z')).toBe(0);
    expect(await journal.pins.get('B-99')).toBeNull();
  });

  it('a key comes back as it was put, bytes as bytes and text as text', async () => {
    await journal.keys.put('signing key', Uint8Array.of(0, 255, 7));
    await journal.keys.put('plant', 'an invented plant');
    await restart();
    expect([...(await journal.keys.getBytes('signing key')) ?? []]).toEqual([0, 255, 7]);
    expect(await journal.keys.getText('plant')).toBe('an invented plant');
    expect(await journal.keys.getText('never put')).toBeNull();
    await expect(journal.keys.getText('signing key')).rejects.toThrow(/that of a text/);
    await expect(journal.keys.getBytes('plant')).rejects.toThrow(/that of bytes/);
  });

  it('the first of two servers making a key wins', async () => {
    expect(await journal.keys.putIfAbsent('signing key', 'first')).toBe(true);
    expect(await journal.keys.putIfAbsent('signing key', 'second')).toBe(false);
    expect(await journal.keys.getText('signing key')).toBe('first');
    await journal.keys.put('signing key', 'replaced');
    expect(await journal.keys.getText('signing key')).toBe('replaced');
  });

  it('neither stands in the chain', async () => {
    const before = await journal.headsDigest();
    await journal.pins.put('B-07', 'hash');
    await journal.keys.put('signing key', 'secret');
    expect(await journal.headsDigest()).toEqual(before);
    expect(await journal.follow(0, 10)).toEqual([]);
  });
});
