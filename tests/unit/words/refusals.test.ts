import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { refusalStatus } from '../../../shared/wire/refusal-status.ts';
import { words } from '../../../shared/words/index.ts';
import { doorRefusalWords, refusalWords } from '../../../shared/words/refusals.en.ts';
import { sampleDoorRefusals, sampleRefusals } from './sample-refusals.ts';

const english = words('en', 'UTC');
const page = readFileSync(new URL('../../../docs/refusals.md', import.meta.url), 'utf8');
const sections = new Map(page.split('\n### ').slice(1).map((section) => [section.slice(0, section.indexOf('\n')).trim(), section] as const));
const samples = [...Object.values(sampleRefusals), ...Object.values(sampleDoorRefusals)];

describe('refusals', () => {
  it('codes, words and docs/refusals.md name the same refusals', () => {
    const codes = samples.map(({ code }) => code).sort();
    expect([...Object.keys(refusalWords), ...Object.keys(doorRefusalWords)].sort()).toEqual(codes);
    expect([...sections.keys()].sort()).toEqual(codes);
    expect(page.match(/\n### /g)).toHaveLength(codes.length);
  });

  it.each(samples.map((refusal) => [refusal.code, refusal] as const))('%s is told in the docs as the kiosk tells it, with its status and fields', (code, refusal) => {
    const { happened, kept, next } = english.refusal(refusal);
    const section = sections.get(code) ?? '';
    expect(section).toContain(`- **What happened:** ${happened}\n`);
    expect(section).toContain(`- **What was kept:** ${kept}\n`);
    expect(`${section}\n`).toContain(`- **What to do next:** ${next}\n`);
    expect(section).toContain(`HTTP ${refusalStatus(code)}`);
    for (const field of Object.keys(refusal).filter((key) => key !== 'code')) expect(section).toContain(`\`${field}\``);
  });

  it.each(samples.map((refusal) => [refusal.code, refusal] as const))('%s is calm, whole and says what to do', (_, refusal) => {
    for (const text of Object.values(english.refusal(refusal))) {
      expect(text).toMatch(/^.{8,}[.?]$/);
      expect(text).not.toMatch(/undefined|NaN|\[object|null|!|  |invalid|illegal|error/i);
    }
  });

  it('has an HTTP status fixed for each kind of answer', () => {
    expect([refusalStatus('malformed'), refusalStatus('notSignedIn'), refusalStatus('wrongPin'), refusalStatus('notYourRole'), refusalStatus('notFound')]).toEqual([400, 401, 401, 403, 404]);
    expect([refusalStatus('staleVersion'), refusalStatus('subjectIsHeld'), refusalStatus('tooLarge'), refusalStatus('signInLocked'), refusalStatus('storageFault')]).toEqual([409, 409, 413, 429, 503]);
  });
});
