import { releaseDeskWords as words } from '../../shared/words/release-desk.en.ts';

/** What became of checking a certificate; `failed` where nothing could be said about it. */
export type FileVerdict = keyof typeof words.verified;

const VERDICTS: readonly FileVerdict[] = ['genuine', 'withdrawn', 'altered', 'notOurs'];

/** Sends a certificate's bytes to be compared with the plant's seal. Never throws. */
export async function verifyFile(bytes: Blob): Promise<FileVerdict> {
  try {
    const answer = await fetch('/api/certificates/verify', { method: 'POST', headers: { 'content-type': 'application/pdf' }, body: bytes });
    if (!answer.ok) return 'failed';
    const told: unknown = await answer.json();
    const verdict = typeof told === 'object' && told !== null && 'verdict' in told ? told.verdict : null;
    return VERDICTS.find((known) => known === verdict) ?? 'failed';
  } catch {
    // Out of reach, cut off, or no answer of ours: in each case nothing is known about the file.
    return 'failed';
  }
}

/** Fetches a lot's own certificate and has it checked, as a purchaser would. */
export async function verifyCertificateOf(lot: string): Promise<FileVerdict> {
  try {
    const answer = await fetch(`/api/lots/${encodeURIComponent(lot)}/certificate.pdf`);
    return answer.ok ? await verifyFile(await answer.blob()) : 'failed';
  } catch {
    return 'failed';
  }
}
