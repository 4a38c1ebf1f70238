import { releaseDeskWords as words } from '../../shared/words/release-desk.en.ts';

/** What became of checking a certificate; `failed` where nothing could be said about it. */
export type FileVerdict = keyof typeof words.verified;
/** What the seal of a certificate stands for: a page is only its picture, so these are what the paper is compared with. */
export interface Sealed { readonly number: string; readonly lot: string; readonly designation: string; readonly quantity: number; readonly issuedOn: string }
export interface FileCheck { readonly verdict: FileVerdict; readonly sealed: Sealed | null }

const VERDICTS: readonly FileVerdict[] = ['genuine', 'withdrawn', 'altered', 'notOurs'];
const FAILED: FileCheck = { verdict: 'failed', sealed: null };

/** Sends a certificate's bytes to be compared with the plant's seal. Never throws. */
export async function verifyFile(bytes: Blob): Promise<FileCheck> {
  try {
    const answer = await fetch('/api/certificates/verify', { method: 'POST', headers: { 'content-type': 'application/pdf' }, body: bytes });
    if (!answer.ok) return FAILED;
    const told = (await answer.json()) as { readonly verdict?: unknown; readonly certificate?: Sealed | null };
    return { verdict: VERDICTS.find((known) => known === told.verdict) ?? 'failed', sealed: told.certificate ?? null };
  } catch {
    // Out of reach, cut off, or no answer of ours: in each case nothing is known about the file.
    return FAILED;
  }
}

/** Fetches a lot's own certificate and has it checked, as a purchaser would. */
export async function verifyCertificateOf(lot: string): Promise<FileCheck> {
  try {
    const answer = await fetch(`/api/lots/${encodeURIComponent(lot)}/certificate.pdf`);
    return answer.ok ? await verifyFile(await answer.blob()) : FAILED;
  } catch {
    return FAILED;
  }
}
