import { describe, expect, it } from 'vitest';
import { audiences } from '../../../server/live/audiences.ts';
import type { StampedSlip } from '../../../shared/wire/stamped-slip.ts';

const slip = (position: number, stream: string): StampedSlip => ({
  position, stream, version: position, at: '2025-03-03T06:30:00.000Z', by: '1002', bench: 'Final visual', clientId: `note-${position}`, hash: '', body: { type: 'noteAdded', text: 'clean' },
});
const told = (news: readonly StampedSlip[], watching: Readonly<Record<string, readonly string[]>>) =>
  [...audiences(news, (stream) => (watching[stream] === undefined ? undefined : new Set(watching[stream])))]
    .map(({ sockets, slips }) => ({ sockets, positions: slips.map(({ position }) => position) }));

describe('who is told of what is new', () => {
  it('nobody, where nobody watches', () => {
    expect(told([slip(1, 'lot:A')], {})).toEqual([]);
    expect(told([slip(1, 'lot:A'), slip(2, 'lot:B')], {})).toEqual([]);
  });

  it('all who watch one lot, with one message', () => {
    expect(told([slip(1, 'lot:A')], { 'lot:A': ['one', 'two'] })).toEqual([{ sockets: ['one', 'two'], positions: [1] }]);
  });

  it('each once, of all it watches and nothing else, in order of arrival', () => {
    const news = [slip(1, 'lot:A'), slip(2, 'lot:B'), slip(3, 'lot:A'), slip(4, 'lot:C')];
    expect(told(news, { 'lot:A': ['one', 'two', 'three'], 'lot:B': ['two', 'three'], 'lot:C': ['four'] })).toEqual([
      { sockets: ['one'], positions: [1, 3] }, { sockets: ['two', 'three'], positions: [1, 2, 3] }, { sockets: ['four'], positions: [4] },
    ]);
  });
});
